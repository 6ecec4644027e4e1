package lampwright.setup;

import java.util.Locale;

/** What a picture of a setup shows. */
public enum PictureKind {
  /** The picture that the setup is about, as it was published. */
  FINAL,
  /** The same before any work on it. */
  UNTOUCHED,
  /** One of the frames around it. */
  CONTACT_FRAME,
  /** The set with its lights. */
  BEHIND_THE_SCENES,
  /** Somebody's idea of how it should look. */
  REFERENCE;

  /** The kind as documents and the database write it. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** Whether it is made on the day, so that the crew adds it. */
  public boolean isOfTheDay() {
    return this == CONTACT_FRAME || this == BEHIND_THE_SCENES;
  }
}
