package lampwright.language;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Map;
import lampwright.engine.unit.Stops;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NotationTest {

  @ParameterizedTest
  @CsvSource({"3.42, 3.4 m", "0.04, 0.0 m", "-0.04, 0.0 m", "-1.26, −1.3 m", "24.4, 24 m"})
  void aLengthInMetresIsSeenToATenth(double metres, String written) {
    assertEquals(written, in(LengthUnit.METRES).length(metres));
  }

  /** One inch is exactly 0.0254 m, one foot 0.3048 m: NIST Special Publication 811, appendix B. */
  @ParameterizedTest
  @CsvSource({
    "0.3048, 1′ 0″",
    "2.3876, 7′ 10″",
    "0.0254, 1″",
    "0, 0″",
    "-0.6096, −2′ 0″",
    "1.8287, 6′ 0″",
    "30.48, 100′"
  })
  void aLengthInFeetIsReadAsATapeIs(double metres, String written) {
    assertEquals(written, in(LengthUnit.FEET).length(metres));
  }

  @ParameterizedTest
  @CsvSource({"-1.26, −1.3, −1⅓", "0.66, +0.7, +⅔", "0.04, 0.0, 0", "-0.1, −0.1, 0", "2, +2.0, +2"})
  void stopsAreSignedInTenthsAndThirds(double value, String tenths, String thirds) {
    Notation usual = in(LengthUnit.METRES);
    assertEquals(tenths, usual.signed(new Stops(value)));
    assertEquals(
        thirds,
        new Notation(usual.phrases(), usual.lengths(), StopFraction.THIRDS)
            .signed(new Stops(value)));
  }

  @ParameterizedTest
  @CsvSource({"-0.5, '−0,5'", "3, '3,0'"})
  void germanWritesACommaBeforeTenths(double value, String written) {
    Phrases german = new Phrases(Language.GERMAN, Map.of());
    assertEquals(
        written, new Notation(german, LengthUnit.METRES, StopFraction.TENTHS).fixed(value, 1));
  }

  private static Notation in(LengthUnit unit) {
    return new Notation(new Phrases(Language.ENGLISH, Map.of()), unit, StopFraction.TENTHS);
  }
}
