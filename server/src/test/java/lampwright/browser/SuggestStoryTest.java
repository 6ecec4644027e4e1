package lampwright.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import lampwright.TestHouse;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;

/** Completing a search by keyboard and by finger, on a phone. */
class SuggestStoryTest {

  private static final String OPTION = "[role=listbox] [role=option]";

  @RegisterExtension static final Browser browser = Browser.phone();

  @RegisterExtension static final TestHouse house = TestHouse.withDemo();

  @Test
  void aSearchIsCompletedByKeyboardAndByFinger() {
    browser.open(house.visitor().address("/").toString());
    browser.see("input[name=email]").sendKeys("author@demo.example");
    browser.see("input[name=password]").sendKeys(TestHouse.PASSWORD);
    browser.follow(browser.see("main form button"));
    browser.open(house.visitor().address("/studios/demo/setups").toString());
    WebElement box = browser.see("#q[role=combobox]");
    box.sendKeys("harb");
    browser.see(OPTION);
    assertEquals("true", box.getDomAttribute("aria-expanded"));
    assertEquals(0, browser.all(OPTION + "[aria-selected=true]").size(), "Nothing is chosen yet");
    thePageIsSound();
    box.sendKeys(Keys.ARROW_DOWN);
    WebElement chosen = browser.see(OPTION + "[aria-selected=true]");
    assertEquals(chosen.getDomAttribute("id"), box.getDomAttribute("aria-activedescendant"));
    box.sendKeys(Keys.ESCAPE);
    assertFalse(browser.all("[role=listbox]").getFirst().isDisplayed());
    assertEquals("harb", box.getDomProperty("value"), "Escape takes nothing over");
    box.sendKeys(Keys.ARROW_DOWN);
    String promised = browser.see(OPTION + " .suggest-count").getText();
    box.sendKeys(Keys.ARROW_DOWN, Keys.ENTER);
    String completed = String.valueOf(box.getDomProperty("value"));
    assertTrue(completed.contains("[") && completed.contains("]"), completed);
    browser.follow(browser.see("main form[role=search] button"));
    assertEquals(promised, browser.see(".total").getText().split(" ", 2)[0]);
    thePageIsSound();
    browser.see("#q").sendKeys("[place k");
    browser.see(OPTION).click();
    assertEquals("[place kind ", browser.see("#q").getDomProperty("value"));
    browser.see(OPTION + " .suggest-count");
    thePageIsSound();
  }

  private static void thePageIsSound() {
    assertEquals(List.of(), browser.complaints(), browser.address());
    assertEquals(0, browser.overflow(), "The page is wider than the window");
  }
}
