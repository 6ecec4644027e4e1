package lampwright.web.pages;

import static org.junit.jupiter.api.Assertions.assertEquals;

import lampwright.setup.signature.Why;
import lampwright.web.http.ProblemKind;
import lampwright.wording.Wording;
import lampwright.wording.WordsForTests;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What programs are told in fixed words stands in the same words on English pages. */
class SameInEnglishTest {

  private static final Wording ENGLISH = WordsForTests.usual();

  @ParameterizedTest
  @EnumSource
  void whatWentWrong(ProblemKind kind) {
    assertEquals(kind.title(), ENGLISH.say("problem.title." + Wording.key(kind)));
    assertEquals(kind.explanation(), ENGLISH.say("problem.about." + Wording.key(kind)));
  }

  @ParameterizedTest
  @EnumSource
  void whyASignatureLacksAPart(Why why) {
    assertEquals(why.text(), ENGLISH.say("signature.why." + Wording.key(why)));
  }
}
