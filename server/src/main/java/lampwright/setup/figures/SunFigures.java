package lampwright.setup.figures;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import lampwright.engine.Working;
import lampwright.engine.exposure.Ev100;
import lampwright.engine.exposure.MeterConstant;
import lampwright.engine.light.Direction;
import lampwright.engine.light.Pattern;
import lampwright.engine.sun.ClearSky;
import lampwright.engine.sun.Observer;
import lampwright.engine.sun.SunPosition;
import lampwright.engine.unit.Degrees;
import lampwright.engine.unit.Metres;

/**
 * Where the sun stood for a setup, and what it does there.
 *
 * @param observer who saw it
 * @param at when
 * @param ofCamera from the camera; absent where its bearing is not known
 * @param ofSubject from the first subject; absent where that, or the camera's bearing, is not known
 * @param shadow of the first subject on level ground; absent where its height is not known and
 *     while the sun is down
 * @param clearSky an estimate that a reading overrules; absent below {@link ClearSky#DARKEST}
 * @param needs what the setup would have to say for the absent figures, as JSON Pointers
 */
public record SunFigures(
    Observer observer,
    Instant at,
    SunPosition position,
    Optional<OfCamera> ofCamera,
    Optional<OfSubject> ofSubject,
    Optional<Metres> shadow,
    Optional<ClearSky> clearSky,
    List<String> needs) {

  public SunFigures {
    needs = List.copyOf(needs);
  }

  /**
   * The sun seen from the camera.
   *
   * @param relativeAzimuth 0 is in front of the lens, positive to camera right
   * @param angleToAxis between the lens's axis and the sun
   */
  public record OfCamera(Degrees relativeAzimuth, Degrees angleToAxis) {}

  /**
   * The sun as a light, seen from a subject.
   *
   * @param direction measured from the camera
   * @param pattern on the face as it is turned; absent while the sun is down
   */
  public record OfSubject(Direction direction, Optional<Pattern> pattern) {}

  /** What the clear sky gives on a level plane, as an incident meter with a flat receptor. */
  public Optional<Ev100> clearSkyLevel() {
    return clearSky.map(sky -> sky.ev100(MeterConstant.FLAT));
  }

  /** How the elevation came about; made when asked for. */
  public Working elevationWorking() {
    return observer.elevationWorking(at);
  }

  /** How the clear sky's level came about; made when asked for. */
  public Optional<Working> clearSkyWorking() {
    return clearSky.map(sky -> sky.working(MeterConstant.FLAT));
  }
}
