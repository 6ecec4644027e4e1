package lampwright.language;

/** How a person wants to read: kept with the person, or guessed for who has not signed in. */
public record Preferences(Language language, LengthUnit lengths, StopFraction stops) {

  /** For who has not chosen. */
  public static final Preferences USUAL =
      new Preferences(Language.ENGLISH, LengthUnit.METRES, StopFraction.TENTHS);
}
