package lampwright.tasks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import lampwright.language.Language;
import lampwright.language.LengthUnit;
import lampwright.language.Notation;
import lampwright.language.PhraseFiles;
import lampwright.language.StopFraction;
import lampwright.tasks.ImportTrouble.Why;
import lampwright.wording.Wording;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class ImportTroubleTest {

  private static ImportTrouble trouble(Why why) {
    return switch (why) {
      case KIT_NOT_WHOLE -> ImportTrouble.of(why, "Quay, \"all\" {0} [of it]");
      case TOO_MANY_KITS, TOO_MUCH_GEAR, TOO_MANY_LOCATIONS -> ImportTrouble.of(why, 2001, 2000);
      default -> ImportTrouble.of(why);
    };
  }

  private static String said(Language language, ImportTrouble trouble) {
    return new Wording(
            new Notation(PhraseFiles.read(language), LengthUnit.METRES, StopFraction.TENTHS))
        .say(trouble.said());
  }

  @ParameterizedTest
  @EnumSource
  void eachReasonIsASentenceInEachLanguageAlsoWhenAnotherServerTellsIt(Why why) {
    ImportTrouble trouble = trouble(why);
    assertEquals(trouble, ImportText.trouble(ImportText.ofTrouble(trouble)));
    String english = said(Language.ENGLISH, trouble);
    String german = said(Language.GERMAN, trouble);
    assertFalse(english.equals(german), german);
    for (String sentence : List.of(english, german)) {
      assertTrue(sentence.endsWith("."), sentence);
      trouble.parts().forEach(part -> assertTrue(sentence.contains(part), sentence));
    }
  }

  /** What a server of another version may have written. */
  @ParameterizedTest
  @ValueSource(
      strings = {"", "It was stopped.", "[]", "{}", "[\"A_REASON_OF_TOMORROW\",[\"x\"]]", "[1,2]"})
  void aReasonThatNobodyHereKnowsIsStillATrouble(String text) {
    assertEquals(ImportTrouble.of(Why.NOT_BROUGHT_IN), ImportText.trouble(text));
  }
}
