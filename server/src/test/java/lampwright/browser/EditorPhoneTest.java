package lampwright.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import lampwright.TestHouse;
import lampwright.Told;
import lampwright.Visitor;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.openqa.selenium.WebElement;

/** An author moves a light with a thumb, on a small phone. */
class EditorPhoneTest {

  @RegisterExtension static final Browser browser = Browser.smallPhone();

  @RegisterExtension static final TestHouse house = TestHouse.withDemo();

  @Test
  void aLightIsMovedOnThePlanRaisedInTheElevationAndSaved() {
    browser.open(house.visitor().address("/sign-in").toString());
    browser.see("input[name=email]").sendKeys("author@demo.example");
    browser.see("input[name=password]").sendKeys(TestHouse.PASSWORD);
    browser.follow(browser.see("main form button"));
    Visitor author = house.withToken("author@demo.example");
    String setup =
        Visitor.items(author.get("/api/studios/demo/setups")).stream()
            .filter(item -> String.valueOf(Told.at(item, "title")).startsWith("Last boat out"))
            .map(item -> String.valueOf(Told.at(item, "id")))
            .findFirst()
            .orElseThrow();
    browser.open(house.visitor().address("/studios/demo/setups/" + setup + "/edit").toString());
    WebElement key = browser.see(".desk-view-plan .handle[data-piece='light/key']");
    assertFalse(browser.all(".desk-view-side").getFirst().isDisplayed(), "One drawing at a time");
    browser.drag(key, -30, -40);
    browser.await(() -> browser.see("[data-state]").getText().startsWith("Kept on this device"));
    assertEquals("light/key", browser.see("[data-pieces]").getDomProperty("value"));
    thePageIsSound();

    browser.press(browser.see("[data-views] label:nth-of-type(2)"));
    browser.drag(browser.see(".desk-view-side .handle[data-piece='light/key']"), 0, -60);
    browser.await(() -> height() > 2.3);
    for (WebElement handle : browser.all(".desk-view-side .handle")) {
      assertTrue(handle.getSize().width >= 24, "A thumb finds it: " + handle.getSize());
    }
    thePageIsSound();
    browser.press(browser.see("[data-save]"));
    browser.await(() -> browser.see("[data-state]").getText().startsWith("Saved as revision"));
    thePageIsSound();
  }

  private static double height() {
    String written = String.valueOf(browser.see("#piece-place-z_m").getDomProperty("value"));
    return Double.parseDouble(written.replace('−', '-'));
  }

  private static void thePageIsSound() {
    assertEquals(List.of(), browser.complaints(), browser.address());
    assertEquals(0, browser.overflow(), "The page is wider than the window");
  }
}
