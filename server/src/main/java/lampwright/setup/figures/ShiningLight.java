package lampwright.setup.figures;

import java.util.Optional;
import lampwright.engine.light.Point;
import lampwright.engine.light.UnitVector;
import lampwright.engine.unit.Stops;

/**
 * A light with the strength that it has in the picture: less what the shutter takes. A reading
 * calibrates the model; without one the head's power tells.
 *
 * @param intensityCdS on its axis, far away; 0 where nothing tells it
 */
record ShiningLight(LightFigures figures, PlacedLight placed, double intensityCdS) {

  static ShiningLight of(LightFigures figures, PlacedLight placed) {
    Optional<Level> level = figures.level();
    if (level.isPresent() && placed.geometry() > 0) {
      return new ShiningLight(
          figures, placed, inPicture(figures, level.get().exposure().value()) / placed.geometry());
    }
    double intensity = figures.light().stopsDown().map(placed::intensityCdS).orElse(0.0);
    return new ShiningLight(figures, placed, inPicture(figures, intensity));
  }

  private static double inPicture(LightFigures figures, double value) {
    Stops loss = figures.shutter().map(ShutterEffect::wholeFrameOrNone).orElse(Stops.ZERO);
    return loss.value() == 0 ? value : value * loss.negated().toFactor();
  }

  boolean isKnown() {
    return intensityCdS > 0;
  }

  /** On a flat receptor, in lux seconds. */
  double flat(Point at, UnitVector normal) {
    return isKnown() ? intensityCdS * placed.flat(at, normal) : 0;
  }

  /** On a dome, in lux seconds. */
  double dome(Point at, UnitVector axis) {
    return isKnown() ? intensityCdS * placed.dome(at, axis) : 0;
  }
}
