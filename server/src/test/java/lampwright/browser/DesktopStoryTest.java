package lampwright.browser;

import static org.junit.jupiter.api.Assertions.assertTrue;

import lampwright.TestHouse;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

class DesktopStoryTest {

  @RegisterExtension static final Browser browser = Browser.desktop();

  @RegisterExtension static final TestHouse house = TestHouse.withDemo();

  @Test
  void aPhotographerFindsASetupByMoodAndSeesItRecomputedForAnotherKit() {
    new Story(house, browser).walk();
  }

  @Test
  void anAddressThatLeadsNowhereIsAPageWithAWayOn() {
    browser.open(house.visitor().address("/no/such/page").toString());
    assertTrue(browser.see("h1").isDisplayed());
    assertTrue(browser.see("main a").isDisplayed());
    // The browser itself notes that the page was answered with 404.
    browser.complaints();
  }
}
