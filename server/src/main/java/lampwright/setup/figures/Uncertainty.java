package lampwright.setup.figures;

import lampwright.engine.light.EmittingFace;
import lampwright.engine.light.LightAtTarget;
import lampwright.engine.unit.Stops;
import lampwright.setup.Known;

/**
 * How sure a level is, as one standard deviation in stops. The single contributions are common
 * practice of the trade (source trade-practice); independent ones add in quadrature.
 */
final class Uncertainty {

  private static final double METER = 0.1;
  private static final double ESTIMATE = 0.5;
  private static final double DIAL = 0.2;
  private static final double MAKERS_GUIDE_NUMBER = 0.5;
  private static final double MODEL = 0.3;
  private static final double MODEL_INSIDE_ONE_DIAGONAL = 0.5;

  private Uncertainty() {}

  /** Of a value that somebody read, set or judged. */
  static Stops of(Known known) {
    return new Stops(
        switch (known) {
          case METERED -> METER;
          case SET -> DIAL;
          case ESTIMATED, COMPUTED -> ESTIMATE;
        });
  }

  /**
   * Of a level computed from a head's output, its modifier and the distance.
   *
   * @param metered whether a meter found the output, which is surer than a maker's word
   */
  static Stops ofModel(boolean metered, LightAtTarget light) {
    double source = metered ? METER : MAKERS_GUIDE_NUMBER;
    EmittingFace face = light.modifier().face();
    boolean close = light.distance().value() < face.largestDimension().value();
    double model = close ? MODEL_INSIDE_ONE_DIAGONAL : MODEL;
    return new Stops(Math.sqrt(source * source + model * model + DIAL * DIAL));
  }
}
