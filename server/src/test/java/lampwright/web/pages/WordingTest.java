package lampwright.web.pages;

import static org.junit.jupiter.api.Assertions.assertEquals;

import lampwright.engine.exposure.Ev100;
import lampwright.engine.unit.Seconds;
import org.junit.jupiter.api.Test;

class WordingTest {

  @Test
  void aHeadThatRecyclesInNoTimeIsReadyAtOnce() {
    assertEquals("Ready again in 1.4 s.", Wording.readyAgain(new Seconds(1.4)));
    assertEquals("Ready again at once.", Wording.readyAgain(new Seconds(0.04)));
  }

  @Test
  void aLevelIsShownInTenthsAsAMeterShowsIt() {
    assertEquals("7.1", Wording.level(new Ev100(7.1)));
    assertEquals("−2.0", Wording.level(new Ev100(-2)));
    assertEquals("0.0", Wording.level(new Ev100(-0.04)));
  }
}
