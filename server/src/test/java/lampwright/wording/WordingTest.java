package lampwright.wording;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.List;
import java.util.Locale;
import lampwright.engine.Known;
import lampwright.engine.exposure.Ev100;
import lampwright.engine.exposure.FNumber;
import lampwright.engine.unit.Metres;
import lampwright.engine.unit.Seconds;
import lampwright.engine.unit.Stops;
import lampwright.setup.Role;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class WordingTest {

  private final Wording words = WordsForTests.usual();
  private final Wording german = WordsForTests.germanFeetAndThirds();

  @Test
  void aHeadThatRecyclesInNoTimeIsReadyAtOnce() {
    assertEquals("Ready again in 1.4 s.", words.readyAgain(new Seconds(1.4)));
    assertEquals("Ready again at once.", words.readyAgain(new Seconds(0.04)));
    assertEquals("Wieder bereit in 1,4 s.", german.readyAgain(new Seconds(1.4)));
  }

  @Test
  void aLevelIsShownAsAMeterShowsIt() {
    assertEquals("7.1", words.level(new Ev100(7.1)));
    assertEquals("−2.0", words.level(new Ev100(-2)));
    assertEquals("0.0", words.level(new Ev100(-0.04)));
    assertEquals("7⅓", german.level(new Ev100(7.3)));
    assertEquals("−2", german.level(new Ev100(-2)));
  }

  /** Thirds between full stops as meters print them: f/6.3 and f/7.1 (ISO 517 rounded marks). */
  @ParameterizedTest
  @CsvSource({
    "5.6, f/5.6, 'f/5,6'",
    "6.3, f/5.6 + 0.3, 'f/5,6 + ⅓'",
    "7.1, f/5.6 + 0.7, 'f/5,6 + ⅔'",
    "8, f/8, f/8"
  })
  void aReadingIsAFullStopAndWhatIsOver(double value, String inTenths, String inThirds) {
    assertEquals(inTenths, words.reading(new FNumber(value)));
    assertEquals(inThirds, german.reading(new FNumber(value)));
  }

  @Test
  void whatIsSurerThanTheFractionShowsAsOne() {
    assertEquals("±0.1", words.giveOrTake(new Stops(0.02)));
    assertEquals("±⅓", german.giveOrTake(new Stops(0.02)));
    assertEquals("±⅔", german.giveOrTake(new Stops(0.6)));
  }

  @Test
  void oneStopAndLessIsSaidInTheSingular() {
    assertEquals("0.7 stop", words.stops(0.7));
    assertEquals("1.0 stop", words.stops(1.04));
    assertEquals("1.1 stops", words.stops(1.06));
    assertEquals("⅔ Blende", german.stops(0.7));
    assertEquals("1⅓ Blenden", german.stops(1.3));
  }

  @Test
  void aLengthBesideItsNameStandsInThePersonsUnit() {
    assertEquals(Figure.of("3.40", "m", "far"), words.length(new Metres(3.4), 2, "far"));
    assertEquals(Figure.of("11′ 2″", "", "far"), german.length(new Metres(3.4), 2, "far"));
  }

  @Test
  void thingsInARowAreJoinedAsTheLanguageJoinsThem() {
    assertEquals("a, b and c", words.listed(List.of("a", "b", "c")));
    assertEquals("a und b", german.listed(List.of("a", "b")));
    assertEquals("a", german.listed(List.of("a")));
  }

  @ParameterizedTest
  @EnumSource
  void everyRoleHasAName(Role role) {
    assertEquals(role.name(), words.role(role).toUpperCase(Locale.ROOT));
    assertFalse(german.role(role).isBlank());
  }

  @ParameterizedTest
  @EnumSource
  void howAFigureIsKnownHasAWordAndAMeaning(Known known) {
    assertEquals(known.name(), words.known(known).toUpperCase(Locale.ROOT));
    for (Wording each : List.of(words, german)) {
      assertFalse(each.knownMeaning(known).isBlank());
    }
  }
}
