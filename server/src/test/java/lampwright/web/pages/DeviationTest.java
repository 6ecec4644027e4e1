package lampwright.web.pages;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class DeviationTest {

  @Test
  void aThirdOfAStopShowsEvenAfterBinaryRounding() {
    assertEquals(new Deviation("+0.3", "over", true), Deviation.ofTenths(0.1 + 0.7 / 3));
    assertEquals(new Deviation("−0.3", "under", true), Deviation.ofTenths(-1.0 / 3));
    assertEquals(new Deviation("+0.3", "over", false), Deviation.ofTenths(0.3));
  }

  @Test
  void nothingIsNeitherUnderNorOver() {
    assertEquals(new Deviation("0.0", "", false), Deviation.ofTenths(-0.04));
  }

  @Test
  void everythingElseIsSigned() {
    assertEquals(new Deviation("−1.0", "under", true), Deviation.ofTenths(-0.98));
    assertEquals(new Deviation("+12.0", "over", true), Deviation.ofTenths(12));
  }
}
