package lampwright.engine.colour;

/** Whether a picture lives in its darks or its lights; common practice, no standard. */
public enum Key {
  /** Mostly dark: the median L* is below 30 and half or more lies below 25. */
  LOW,
  /** Neither. */
  MIDDLE,
  /** Mostly light: the median L* is above 70 and half or more lies above 75. */
  HIGH;

  /** Returns the word: "low key", "middle key", "high key". */
  public String tradeName() {
    return switch (this) {
      case LOW -> "low key";
      case MIDDLE -> "middle key";
      case HIGH -> "high key";
    };
  }
}
