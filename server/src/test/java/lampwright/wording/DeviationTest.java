package lampwright.wording;

import static org.junit.jupiter.api.Assertions.assertEquals;

import lampwright.engine.unit.Stops;
import org.junit.jupiter.api.Test;

class DeviationTest {

  @Test
  void aThirdOfAStopShowsEvenAfterBinaryRounding() {
    assertEquals(new Deviation("+0.3", "over", true), inTenths(0.1 + 0.7 / 3));
    assertEquals(new Deviation("−0.3", "under", true), inTenths(-1.0 / 3));
    assertEquals(new Deviation("+0.3", "over", false), inTenths(0.3));
  }

  @Test
  void nothingIsNeitherUnderNorOver() {
    assertEquals(new Deviation("0.0", "", false), inTenths(-0.04));
  }

  @Test
  void everythingElseIsSigned() {
    assertEquals(new Deviation("−1.0", "under", true), inTenths(-0.98));
    assertEquals(new Deviation("+12.0", "over", true), inTenths(12));
  }

  @Test
  void whoReadsThirdsInGermanReadsItSo() {
    Wording words = WordsForTests.germanFeetAndThirds();
    assertEquals(new Deviation("−1⅓", "unter", true), Deviation.of(new Stops(-1.3), words));
    assertEquals(new Deviation("0", "", false), Deviation.of(new Stops(0.1), words));
  }

  private static Deviation inTenths(double stops) {
    return Deviation.of(new Stops(stops), WordsForTests.usual());
  }
}
