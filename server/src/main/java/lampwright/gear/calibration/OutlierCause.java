package lampwright.gear.calibration;

/** What usually makes a reading wrong (common practice, no source). */
public enum OutlierCause {
  POWER_DIAL("power dial"),
  DISTANCE("distance"),
  ISO("ISO on the meter"),
  FEET("feet written as metres"),
  RECEPTOR("dome for flat receptor"),
  OTHER_LIGHT("other light, or a head that was not ready");

  private final String words;

  OutlierCause(String words) {
    this.words = words;
  }

  /** Returns it as a question would name it. */
  public String words() {
    return words;
  }
}
