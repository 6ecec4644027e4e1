package lampwright.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import lampwright.TestHouse;
import lampwright.Told;
import lampwright.Visitor;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.support.ui.Select;

/** A photographer with borrowed heads wishes, compares, decides and lets go again, on a phone. */
class AdaptingStoryTest {

  @RegisterExtension static final Browser browser = Browser.phone();

  @RegisterExtension static final TestHouse house = TestHouse.withDemo();

  @BeforeAll
  static void anAuthorIsSignedIn() {
    browser.open(house.visitor().address("/sign-in").toString());
    browser.see("input[name=email]").sendKeys("author@demo.example");
    browser.see("input[name=password]").sendKeys(TestHouse.PASSWORD);
    browser.follow(browser.see("main form button"));
  }

  @Test
  void wishesAndDecisionsStandInTheAddressAndCanBeLetGo() {
    openTheBoatWithTheSatchel();
    browser.see("#wish-iso").sendKeys("400");
    browser.follow(browser.see(".wishes button"));
    thePageIsSound();
    assertTrue(browser.address().endsWith("&iso=400"), browser.address());
    assertEquals(List.of("ISO 400 at most"), chips());

    WebElement keep = browser.see(".compare .keep");
    assertEquals("keep this head", keep.getText());
    browser.follow(keep);
    thePageIsSound();
    assertEquals(2, chips().size(), chips().toString());
    assertTrue(browser.address().contains("head."), browser.address());

    browser.follow(browser.all(".wished .chip").getFirst());
    browser.follow(browser.all(".wished .chip").getFirst());
    assertEquals(List.of(), chips());
    thePageIsSound();
  }

  @Test
  void whatWasUsedOfTheFormStandsOpenAndTheRestIsFolded() {
    openTheBoatWithTheSatchel();
    assertEquals(0, browser.all(".wishes details[open]").size());
    assertFalse(browser.all("#wish-heads").getFirst().isDisplayed());
    browser.press(browser.see(".wishes details:has(#wish-heads) summary"));
    browser.see("#wish-move").sendKeys(Keys.SPACE);
    browser.follow(browser.see(".wishes button"));
    assertEquals(1, browser.all(".wishes details[open]").size());
    assertTrue(browser.see("#wish-move").isSelected());
    thePageIsSound();
  }

  @Test
  void anotherKitIsChosenWithoutTheDecisionsOfTheFirst() {
    openTheBoatWithTheSatchel();
    browser.follow(browser.see(".compare .keep"));
    assertEquals(1, chips().size());
    new Select(browser.see("#wish-kit")).selectByVisibleText("Van kit: four strong battery heads");
    browser.follow(browser.see(".wishes button"));
    assertEquals(List.of(), chips());
    assertTrue(browser.see("h1").getText().contains("Van kit"));
    thePageIsSound();
  }

  @Test
  void theWaysScrollWithinTheirTableAndLeadToEachOther() {
    openTheBoatWithTheSatchel();
    String first = browser.see(".comparison thead .way-shown").getText();
    assertTrue(first.startsWith("A"), first);
    browser.follow(browser.see(".comparison thead a"));
    assertTrue(browser.see(".comparison thead .way-shown").getText().startsWith("B"));
    thePageIsSound();
  }

  private static void openTheBoatWithTheSatchel() {
    Visitor author = house.withToken("author@demo.example");
    String setup = id(author, "setups", "title", "Last boat out");
    String kit = id(author, "kits", "name", "Satchel kit");
    browser.open(
        house
            .visitor()
            .address("/studios/demo/setups/" + setup + "/adapted?kit=" + kit)
            .toString());
    thePageIsSound();
  }

  private static String id(Visitor author, String what, String field, String beginning) {
    return Visitor.items(author.get("/api/studios/demo/" + what)).stream()
        .filter(item -> String.valueOf(Told.at(item, field)).startsWith(beginning))
        .map(item -> String.valueOf(Told.at(item, "id")))
        .findFirst()
        .orElseThrow();
  }

  /** What is wished, without the sign that lets it go. */
  private static List<String> chips() {
    return browser.all(".wished .chip").stream()
        .map(chip -> chip.getText().replace("✕", "").strip())
        .toList();
  }

  private static void thePageIsSound() {
    browser.see("h1");
    assertEquals(List.of(), browser.complaints(), browser.address());
    assertEquals(0, browser.overflow(), "The page is wider than the window: " + browser.address());
  }
}
