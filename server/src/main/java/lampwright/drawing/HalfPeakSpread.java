package lampwright.drawing;

import lampwright.engine.unit.Degrees;
import lampwright.gear.Modifier;

/**
 * How wide a light's wedge is drawn: the modifier's own full angle at half the peak, else what its
 * kind usually has. The usual angles are common practice without one source, and only drawings use
 * them; no figure is computed from one.
 */
final class HalfPeakSpread {

  /** A grid cuts a wide source to about this, a narrow one to less. */
  private static final double GRID_DEG = 35;

  private static final double GRID_SHARE = 0.5;

  private HalfPeakSpread() {}

  static Degrees of(Modifier modifier) {
    return modifier.spread().orElseGet(() -> usual(modifier));
  }

  private static Degrees usual(Modifier modifier) {
    double degrees =
        switch (modifier.kind()) {
          case REFLECTOR -> 65;
          case SOFTBOX, STRIP -> 100;
          case OCTAGON -> 110;
          // A flat diffuse face falls to half at 60 degrees to either side.
          case UMBRELLA, SCRIM -> 120;
          case DISH -> 60;
          case SNOOT -> 20;
          case BARN_DOORS -> 55;
          case BARE -> 160;
        };
    return new Degrees(modifier.grid() ? Math.min(GRID_DEG, degrees * GRID_SHARE) : degrees);
  }
}
