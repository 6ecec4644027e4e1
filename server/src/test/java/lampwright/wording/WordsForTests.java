package lampwright.wording;

import java.util.List;
import lampwright.language.Language;
import lampwright.language.LengthUnit;
import lampwright.language.Notation;
import lampwright.language.PhraseFiles;
import lampwright.language.Phrases;
import lampwright.language.Said;
import lampwright.language.StopFraction;

/** The words of two readers who differ in everything. */
public final class WordsForTests {

  private static final Phrases ENGLISH = PhraseFiles.read(Language.ENGLISH);
  private static final Phrases GERMAN = PhraseFiles.read(Language.GERMAN);

  private WordsForTests() {}

  /** English, metres and tenths, as for who has not chosen. */
  public static Wording usual() {
    return new Wording(new Notation(ENGLISH, LengthUnit.METRES, StopFraction.TENTHS));
  }

  /** A sentence as programs get it. */
  public static String english(Said said) {
    return usual().say(said);
  }

  /** Sentences as programs get them. */
  public static List<String> english(List<Said> said) {
    return usual().say(said);
  }

  /** German, feet and thirds. */
  public static Wording germanFeetAndThirds() {
    return new Wording(new Notation(GERMAN, LengthUnit.FEET, StopFraction.THIRDS));
  }
}
