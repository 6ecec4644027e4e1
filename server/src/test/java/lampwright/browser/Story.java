package lampwright.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import lampwright.TestHouse;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.support.ui.Select;

/** The main job as a photographer does it, on whatever screen. */
final class Story {

  private final TestHouse house;
  private final Browser browser;

  Story(TestHouse house, Browser browser) {
    this.house = house;
    this.browser = browser;
  }

  /** Signs in, finds a setup by mood, opens it, and sees it recomputed for another kit. */
  void walk() {
    browser.open(house.visitor().address("/").toString());
    signIn();
    find("cold lonely first light");
    String title = openTheFirst();
    recomputeFor("Satchel kit");
    assertTrue(browser.see("h1").getText().startsWith(title), browser.see("h1").getText());
    everyLightIsThereTwice();
    browser.follow(browser.see("p.crumb a"));
    assertEquals(title, browser.see("h1").getText());
    thePageIsSound();
  }

  private void signIn() {
    assertTrue(browser.title().startsWith("Sign in"), browser.title());
    browser.see("input[name=email]").sendKeys("author@demo.example");
    browser.see("input[name=password]").sendKeys(TestHouse.PASSWORD);
    thePageIsSound();
    browser.follow(browser.see("main form button"));
  }

  private void find(String words) {
    thePageIsSound();
    WebElement box = browser.see("main input[name=q]");
    box.sendKeys(words);
    browser.follow(browser.see("main form[role=search] button"));
    List<WebElement> hits = browser.all("ol.hits > li");
    assertTrue(hits.size() >= 2, "Found: " + hits.size());
    // The first says it in these words, the second in others: a bleak harbour before dawn.
    assertTrue(hits.get(0).getText().contains("Last boat out"), hits.get(0).getText());
    assertTrue(hits.get(1).getText().contains("Ebb and iron"), hits.get(1).getText());
    assertTrue(hits.get(1).getText().contains("Found by"), hits.get(1).getText());
    thePageIsSound();
  }

  private String openTheFirst() {
    WebElement link = browser.see("ol.hits h2 a");
    String title = link.getText();
    browser.follow(link);
    assertEquals(title, browser.see("h1").getText());
    assertTrue(browser.see("svg .plan-light").isDisplayed(), "The plan shows the lights");
    assertEquals(
        browser.all("table.lights tbody").size(),
        browser.all("svg[data-view=plan] .plan-disc").size(),
        "Every light of the table has its number on the plan");
    assertFalse(browser.all("table.lights .ruler").isEmpty());
    thePageIsSound();
    return title;
  }

  private void recomputeFor(String kit) {
    WebElement kits = browser.see("select[name=kit]");
    kits.sendKeys(kit);
    assertTrue(
        new Select(kits).getFirstSelectedOption().getText().startsWith(kit),
        "A kit is chosen by the beginning of its name");
    browser.follow(browser.see(".kit-form button"));
    assertTrue(browser.address().contains("/adapted?kit="), browser.address());
    thePageIsSound();
  }

  private void everyLightIsThereTwice() {
    int lights = browser.all("table.compare tbody").size();
    assertTrue(lights >= 4, "Lights: " + lights);
    assertEquals(lights, browser.all("table.compare tr.row-now").size());
    assertEquals(lights, browser.all("table.compare tr.row-was").size());
    for (WebElement now : browser.all("table.compare tr.row-now")) {
      assertTrue(now.getText().contains("f/"), now.getText());
    }
    // The shutter of this kit syncs slower: that difference must be marked by more than a colour.
    List<WebElement> differs = browser.all("table.settings tr.differs");
    assertFalse(differs.isEmpty());
    assertTrue(
        differs.stream().anyMatch(row -> row.getText().contains("stop")),
        "A difference says its stops");
  }

  private void thePageIsSound() {
    assertEquals(List.of(), browser.complaints(), browser.address());
    assertEquals(0, browser.overflow(), "The page is wider than the window: " + browser.address());
    String here = house.visitor().address("/").toString();
    assertTrue(
        browser.loadedFrom().stream().allMatch(from -> from.startsWith(here)),
        "Everything comes from here: " + browser.loadedFrom());
  }
}
