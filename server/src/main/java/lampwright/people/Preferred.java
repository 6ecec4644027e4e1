package lampwright.people;

import java.util.Optional;
import lampwright.language.Language;
import lampwright.language.LengthUnit;
import lampwright.language.Preferences;
import lampwright.language.StopFraction;

/**
 * How a person has chosen to read.
 *
 * @param language empty where it is to be as their browser asks
 * @param lengths the unit of their tape
 * @param stops the fraction of a stop on their meter
 */
public record Preferred(Optional<Language> language, LengthUnit lengths, StopFraction stops) {

  /** Of who has chosen nothing. */
  public static final Preferred NOTHING =
      new Preferred(Optional.empty(), Preferences.USUAL.lengths(), Preferences.USUAL.stops());

  /**
   * How they read.
   *
   * @param asked the language that their browser asks for
   */
  public Preferences in(Language asked) {
    return new Preferences(language.orElse(asked), lengths, stops);
  }
}
