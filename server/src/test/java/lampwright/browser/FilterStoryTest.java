package lampwright.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import lampwright.TestHouse;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.openqa.selenium.By;
import org.openqa.selenium.WebElement;

/** Narrowing the list on a phone: by choices, by brackets, and back again. */
class FilterStoryTest {

  @RegisterExtension static final Browser browser = Browser.phone();

  @RegisterExtension static final TestHouse house = TestHouse.withDemo();

  @Test
  void aPhotographerNarrowsTheListTakesMarksOffAndIsToldWhatThereIsInstead() {
    browser.open(house.visitor().address("/").toString());
    browser.see("input[name=email]").sendKeys("author@demo.example");
    browser.see("input[name=password]").sendKeys(TestHouse.PASSWORD);
    browser.follow(browser.see("main form button"));
    browser.open(house.visitor().address("/studios/demo/setups").toString());
    chooseAndTakeOff();
    chooseBehindMore();
    typeABracket();
    followAnOffer();
    learnFromAnExample();
  }

  private void chooseAndTakeOff() {
    int all = total();
    WebElement choice = browser.see("nav.facets a");
    int promised = Integer.parseInt(choice.findElement(css(".facet-count")).getText());
    browser.follow(choice);
    assertEquals(promised, total());
    assertTrue(browser.address().contains("filter="), browser.address());
    assertEquals(1, browser.all("a.chip").size());
    thePageIsSound();
    browser.follow(browser.see("a.chip"));
    assertEquals(all, total());
    assertEquals(0, browser.all("a.chip").size());
  }

  private void chooseBehindMore() {
    assertFalse(browser.all(".more-facets a").getFirst().isDisplayed());
    browser.press(browser.see(".more-facets > summary"));
    WebElement choice = browser.see(".more-facets a");
    int promised = Integer.parseInt(choice.findElement(css(".facet-count")).getText());
    browser.follow(choice);
    assertEquals(promised, total());
    assertTrue(
        browser.see(".more-facets a[aria-current]").isDisplayed(), "What is chosen can be seen");
    thePageIsSound();
    browser.follow(browser.see("a.chip"));
  }

  private void typeABracket() {
    browser.see("#q").sendKeys("light [lights 1 to 9] [lihgts 2]");
    browser.follow(browser.see("main form[role=search] button"));
    assertTrue(browser.see(".faults").getText().contains("Maybe lights?"));
    assertEquals("1 to 9 lights×", browser.see("a.chip").getText().replace("\n", ""));
    assertEquals("light [lihgts 2]", browser.see("#q").getDomProperty("value"));
    thePageIsSound();
  }

  private void followAnOffer() {
    browser.see("#q").clear();
    browser.see("#q").sendKeys("[lights 40]");
    browser.follow(browser.see("main form[role=search] button"));
    assertTrue(browser.see(".nothing .lack").getText().startsWith("No setup with"));
    thePageIsSound();
    WebElement offer = browser.see(".nothing .way");
    int promised = Integer.parseInt(offer.findElement(css(".facet-count")).getText());
    browser.follow(offer);
    assertEquals(promised, total());
  }

  private void learnFromAnExample() {
    browser.press(browser.see(".how > summary"));
    List<WebElement> examples = browser.all(".how dt a");
    assertEquals(5, examples.size());
    thePageIsSound();
    browser.follow(examples.getFirst());
    assertFalse(browser.all("ol.hits > li").isEmpty());
    assertEquals(1, browser.all("a.chip").size());
  }

  private static By css(String selector) {
    return By.cssSelector(selector);
  }

  private int total() {
    return Integer.parseInt(browser.see(".total").getText().split(" ", 2)[0]);
  }

  private void thePageIsSound() {
    assertEquals(List.of(), browser.complaints(), browser.address());
    assertEquals(0, browser.overflow(), "The page is wider than the window: " + browser.address());
  }
}
