package lampwright.setup.buildable;

import lampwright.engine.light.LightField;
import lampwright.engine.light.ModifierEffect;
import lampwright.engine.unit.Metres;
import lampwright.gear.Modifier;

/**
 * A modifier of a kit: how large it looks and what it gives in any direction, with a table of what
 * it gives straight before it.
 */
final class ModifierReach {

  /** By how many stops the table may be off; a test holds it to half of that. */
  static final double TABLE_ERROR_STOPS = 0.002;

  private static final int LEAST_DOUBLINGS = -2;
  private static final int MOST_DOUBLINGS = 6;
  private static final int PER_DOUBLING = 32;

  /** Below this share a light only grazes the receiver, as the engine has it. */
  private static final double GRAZING = 1e-9;

  private final LightField field;
  private final double radiusM;
  private final double[] straightStops = new double[span() + 1];

  ModifierReach(Modifier modifier) {
    ModifierEffect effect = modifier.effect();
    field = LightField.of(effect.face(), effect.spread());
    double half = effect.face().angularSize(new Metres(1)).toRadians() / 2;
    radiusM = StrictMath.sin(half) / StrictMath.cos(half);
    for (int i = 0; i <= span(); i++) {
      double distance = StrictMath.pow(2, LEAST_DOUBLINGS + (double) i / PER_DOUBLING);
      straightStops[i] = Doublings.of(field.flat(0, 0, distance, 0, 0, -1));
    }
  }

  private static int span() {
    return (MOST_DOUBLINGS - LEAST_DOUBLINGS) * PER_DOUBLING;
  }

  /** The radius of a disc that looks as large. */
  double radiusM() {
    return radiusM;
  }

  /** The geometry factor in stops above 1/m2, minus infinity where no light arrives. */
  double stops(DemandCatalogue demands, int light, boolean exact) {
    double at = (demands.distanceDoublings[light] - LEAST_DOUBLINGS) * PER_DOUBLING;
    if (exact || !demands.straight[light] || at < 0 || at >= span()) {
      return exactStops(demands.rays, 6 * light);
    }
    int index = (int) at;
    double share = at - index;
    return straightStops[index] + share * (straightStops[index + 1] - straightStops[index]);
  }

  private double exactStops(double[] rays, int at) {
    double x = rays[at];
    double y = rays[at + 1];
    double z = rays[at + 2];
    double geometry = field.flat(x, y, z, rays[at + 3], rays[at + 4], rays[at + 5]);
    return geometry * (x * x + y * y + z * z) < GRAZING
        ? Double.NEGATIVE_INFINITY
        : Doublings.of(geometry);
  }
}
