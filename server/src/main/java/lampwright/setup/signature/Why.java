package lampwright.setup.signature;

import java.util.Arrays;

/** Why a signature lacks a part. */
public enum Why {
  AMBIENT_UNKNOWN("The ambient is not known."),
  NOTHING_TOWARD_CAMERA(
      "What the lights give toward the camera is nothing at any target, or not known."),
  POWER_UNKNOWN("The power of a light is not known."),
  SPEED_UNKNOWN("How fast a subject moves is not known."),
  CAMERA_UNKNOWN("Body, lens and focus together tell how a movement shows."),
  DURATION_UNKNOWN("How long a light on the subject flashes is not known."),
  KEY_UNTOLD("No light is called the key, and how strong the lights are is not known."),
  NO_SUBJECT("No subject is written down, so there is no face that the key could come from."),
  KEY_ON_SURFACE("The key is metered on a surface, so it has no direction from a face."),
  KEY_UNKNOWN("Which light is the key is not known."),
  NO_FILL("No light is a fill."),
  NOT_BOTH_AT_TARGET(
      "Key and fill do not both reach the key’s target from before it, or how strong they are is"
          + " not known."),
  ALL_POINTS("Every light is so small that it counts as a point."),
  OCCASION_UNKNOWN("Where and when it was is not known, so neither is the sun."),
  OTHER("What it needs is not known.");

  private final String text;

  Why(String text) {
    this.text = text;
  }

  /** As documents and programs have it. */
  public String text() {
    return text;
  }

  static Why ofText(String text) {
    return Arrays.stream(values()).filter(why -> why.text.equals(text)).findFirst().orElse(OTHER);
  }
}
