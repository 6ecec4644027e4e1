package lampwright.setup.signature;

/**
 * What the light of two setups is compared by. How much each part counts and which difference
 * counts half are judgements, not measurements; the units are those in which light is worked with.
 */
public enum LikenessPart {
  /** Lights by role: what both have of what either has (Ružička's distance), so it has no half. */
  LIGHTS(0.20, Double.NaN),
  /** The angle between both directions from the nose; see {@link PackedLight#apart}. */
  DIRECTION(0.20, 30),
  /** Degrees by which one key stands higher. */
  HEIGHT(0.10, 20),
  /** Doublings of the angle under which the key's face is seen. */
  SOFTNESS(0.15, 1),
  /** Stops between both ratios of key to fill. */
  RATIO(0.10, 1),
  /** Stops between how far the ambient lies from each exposure. */
  AMBIENT(0.10, 1),
  /** Stops between the flash energies of a picture. */
  ENERGY(0.05, 2),
  /** Steps from "nothing moves" over frozen and slightly soft to blurred. */
  FREEZING(0.04, 1),
  /** Degrees between both suns where both light the picture; a quarter turn where one does. */
  SUN(0.06, 30);

  private final double weight;
  private final double half;

  LikenessPart(double weight, double half) {
    this.weight = weight;
    this.half = half;
  }

  /** How much it counts, of 1 for all together. */
  public double weight() {
    return weight;
  }

  /**
   * How far apart a difference is, 0 to below 1 (for the lights to 1).
   *
   * @param difference not negative, in the part's unit
   */
  double distance(double difference) {
    return this == LIGHTS ? difference : difference / (difference + half);
  }
}
