package lampwright.web.http;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import lampwright.language.Language;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What browsers ask for, by the grammar and the weights of RFC 9110, section 12.5.4. */
class AskedLanguageTest {

  @ParameterizedTest
  @ValueSource(
      strings = {"de", "de-AT", "DE-de,en;q=0.5", "en;q=0.4, de;q=0.9", "fr, de;q=0.5, en;q=0.4"})
  void germanIsSpokenToWhoAsksForItFirst(String header) {
    assertEquals(Optional.of(Language.GERMAN), AskedLanguage.find(header));
  }

  @ParameterizedTest
  @ValueSource(strings = {"en", "en-GB,de;q=0.9", "de;q=0, en"})
  void englishToWhoAsksForThat(String header) {
    assertEquals(Optional.of(Language.ENGLISH), AskedLanguage.find(header));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "fr", "*", "x;q=9", "de;q=zero", ";;;", "tlh-Latn"})
  void whatIsNotSpokenOrCannotBeReadAsksForNothing(String header) {
    assertEquals(Optional.empty(), AskedLanguage.find(header));
  }

  @Test
  void neitherDoesAHeaderThatNoBrowserSends() {
    assertEquals(Optional.empty(), AskedLanguage.find("de," + "x".repeat(10_000)));
    assertEquals(Optional.empty(), AskedLanguage.find(null));
  }
}
