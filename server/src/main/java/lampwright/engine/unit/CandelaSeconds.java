package lampwright.engine.unit;

/**
 * Time-integrated luminous intensity of a flash on its axis (IES: integrated flash intensity). Over
 * distance squared it is the exposure far away.
 *
 * @param value candela seconds, 0 or more
 */
public record CandelaSeconds(double value) implements Comparable<CandelaSeconds> {

  /** Checks the bound. */
  public CandelaSeconds {
    Bounds.requireZeroOrMore("Integrated intensity", value, "cd·s");
  }

  /** Returns so many. */
  public static CandelaSeconds of(double value) {
    return new CandelaSeconds(value);
  }

  /**
   * Returns the light of a flash from its energy, {@code Q = P eta g / (4 pi)}. Good to about a
   * stop: a metered reading is always better (source flash-makers-notes).
   *
   * @param efficacyLmSPerWs luminous efficacy, 15 to 50 lumen seconds for each watt second of
   *     studio flash
   * @param reflectorGain peak intensity against a source that shines alike in all directions: a
   *     bare tube about 1, a standard 65 degree reflector 6 to 9
   */
  public static CandelaSeconds ofEnergy(
      WattSeconds energy, double efficacyLmSPerWs, double reflectorGain) {
    Bounds.requirePositive("Efficacy", efficacyLmSPerWs, "lm·s per W·s");
    Bounds.requirePositive("Reflector gain", reflectorGain, "");
    return new CandelaSeconds(energy.value() * efficacyLmSPerWs * reflectorGain / (4 * Math.PI));
  }

  /**
   * Returns the exposure at a distance by the inverse square law, {@code H = Q / d^2}; holds from
   * about five times the source's largest dimension.
   *
   * @param distance above 0
   */
  public LuxSeconds at(Metres distance) {
    Bounds.requirePositive("Distance", distance.value(), "m");
    return new LuxSeconds(value / (distance.value() * distance.value()));
  }

  @Override
  public int compareTo(CandelaSeconds other) {
    return Double.compare(value, other.value);
  }

  @Override
  public String toString() {
    return Bounds.rounded(value, 4) + " cd·s";
  }
}
