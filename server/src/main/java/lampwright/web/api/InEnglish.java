package lampwright.web.api;

import java.util.List;
import lampwright.language.Language;
import lampwright.language.LengthUnit;
import lampwright.language.Notation;
import lampwright.language.PhraseFiles;
import lampwright.language.Said;
import lampwright.language.StopFraction;
import lampwright.wording.SlipWords;
import lampwright.wording.Wording;

/** Says sentences to programs: always in English, in metres and tenths of a stop. */
final class InEnglish {

  static final Notation NOTATION =
      new Notation(PhraseFiles.read(Language.ENGLISH), LengthUnit.METRES, StopFraction.TENTHS);

  private static final Wording WORDS = new Wording(NOTATION);

  private InEnglish() {}

  static String say(Said said) {
    return WORDS.say(said);
  }

  /** What was likely wrong; the key itself where nobody says that any more. */
  static String slip(String key) {
    return SlipWords.find(key, WORDS).orElse(key);
  }

  static List<String> say(List<Said> said) {
    return WORDS.say(said);
  }
}
