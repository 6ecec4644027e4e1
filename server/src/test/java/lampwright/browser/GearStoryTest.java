package lampwright.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import lampwright.TestHouse;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;

/** On a small phone an assistant who may writes down a new head and what a meter gave of it. */
class GearStoryTest {

  @RegisterExtension static final Browser browser = Browser.smallPhone();

  @RegisterExtension static final TestHouse house = TestHouse.withDemo();

  @Test
  void aNewHeadIsKeptPutRightAndMetered() {
    browser.open(house.visitor().address("/sign-in").toString());
    browser.see("input[name=email]").sendKeys("author@demo.example");
    browser.see("input[name=password]").sendKeys(TestHouse.PASSWORD);
    browser.follow(browser.see("main form button"));
    browser.open(house.visitor().address("/studios/demo/gear").toString());
    browser.follow(browser.see(".gear-ways a[href$='kind=head']"));
    type("piece-name", "Borrowed head");
    type("piece-output-guide_number_m", "50");
    thePageIsSound();
    browser.follow(browser.see(".gear-form > button"));
    WebElement wrong = browser.see(".errors a[href='#piece-energy_ws']");
    browser.press(wrong);
    assertEquals("piece-energy_ws", browser.focused().getDomAttribute("id"));
    browser.complaints();
    type("piece-energy_ws", "250");
    type("readings-0-metered", "22 + 0.3");
    type("readings-0-distance_m", "2");
    type("condition-0-note", "The knob is loose.");
    browser.run("document.querySelector('#condition-0-date').value = '2026-10-03'");
    browser.follow(browser.see(".gear-form > button"));
    assertTrue(browser.see("h1").getText().startsWith("Borrowed head"));
    assertTrue(browser.see("main").getText().contains("The knob is loose."));
    assertTrue(browser.see("#calibration").isDisplayed());
    thePageIsSound();
    browser.follow(browser.see("a[href$='/change']"));
    assertEquals("22 + 0.3", browser.see("#readings-0-metered").getDomProperty("value"));
    thePageIsSound();
  }

  private static void type(String field, String text) {
    browser.see("#" + field).sendKeys(Keys.chord(Keys.CONTROL, "a"), text, Keys.TAB);
  }

  private static void thePageIsSound() {
    assertEquals(List.of(), browser.complaints(), browser.address());
    assertEquals(0, browser.overflow(), "The page is wider than the window");
  }
}
