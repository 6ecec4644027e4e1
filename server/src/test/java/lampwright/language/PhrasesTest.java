package lampwright.language;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class PhrasesTest {

  private static final Pattern PLACE = Pattern.compile("\\{\\d}");

  private final Phrases phrases =
      new Phrases(
          Language.ENGLISH,
          Map.of("by", "By {0}, {1}", "lights.one", "one light", "lights.other", "{0} lights"));

  @Test
  void partsStandInTheirPlaces() {
    assertEquals("By Ida, 4 May", phrases.of("by", "Ida", "4 May"));
  }

  @Test
  void aCountChoosesItsPhrase() {
    assertEquals("one light", phrases.counted("lights", 1));
    assertEquals("0 lights", phrases.counted("lights", 0));
    assertEquals("12 lights", phrases.counted("lights", 12));
  }

  @Test
  void aSlipInOurOwnCodeIsToldAtOnce() {
    assertThrows(IllegalArgumentException.class, () -> phrases.of("nowhere"));
    assertThrows(IllegalArgumentException.class, () -> phrases.of("by", "Ida"));
    assertThrows(IllegalArgumentException.class, () -> phrases.of("by", "Ida", "May", "more"));
  }

  @Test
  void bracesInWhatPeopleWroteStayAsTheyAre() {
    assertEquals("By {1}, {0}", phrases.of("by", "{1}", "{0}"));
  }

  @ParameterizedTest
  @EnumSource
  void eachLanguageSaysEverythingWithTheSameParts(Language language) {
    Phrases english = PhraseFiles.read(Language.ENGLISH);
    Phrases other = PhraseFiles.read(language);
    assertEquals(new TreeSet<>(english.keys()), new TreeSet<>(other.keys()));
    for (String key : english.keys()) {
      assertEquals(places(english, key), places(other, key), key);
    }
    assertTrue(english.keys().size() > 0);
  }

  private static Set<String> places(Phrases phrases, String key) {
    Set<String> places = new TreeSet<>();
    PLACE.matcher(phrases.pattern(key)).results().forEach(found -> places.add(found.group()));
    if (key.endsWith(".one")) {
      places.remove("{0}");
    }
    return places;
  }
}
