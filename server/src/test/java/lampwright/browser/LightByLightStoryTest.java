package lampwright.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import lampwright.TestHouse;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;

/** A new assistant turns lights off on a phone: by touch, by keyboard, one after another. */
class LightByLightStoryTest {

  private static final String LIGHTS = "/studios/demo/setups/lastboatout/lights";
  private static final String LINES = "path.plan-contour-zero";

  @RegisterExtension static final Browser browser = Browser.phone();

  @RegisterExtension static final TestHouse house = TestHouse.withDemo();

  private static String state() {
    return browser.see("#without-state").getText();
  }

  private static String lines() {
    return browser
        .list("return [document.querySelector('" + LINES + "').getAttribute('d')]")
        .get(0);
  }

  private static void awaitState(String words) {
    browser.await(() -> state().equals(words));
  }

  private static boolean isInSight(String css) {
    return browser
        .list(
            "const {top, bottom} = document.querySelector(arguments[0]).getBoundingClientRect();"
                + " return [String(top >= -1 && bottom <= innerHeight)]",
            css)
        .equals(List.of("true"));
  }

  private static void thePageIsSound() {
    assertEquals(List.of(), browser.complaints(), browser.address());
    assertEquals(0, browser.overflow(), "The page is wider than the window");
  }

  @Test
  void lightsAreTurnedByTouchAndByKeyboardAndTheMapFollows() {
    String here = house.visitor().address(LIGHTS).toString();
    browser.open(house.visitor().address("/sign-in").toString());
    String[] cookie = house.signedIn("reader@demo.example").header("Cookie").split("=", 2);
    browser.takeCookie(cookie[0], cookie[1]);
    browser.open(here);
    String whole = lines();
    browser.run("window.sameWindow = true");
    assertFalse(browser.all("[data-unscripted]").getFirst().isDisplayed());

    browser.see("label[for=burns-4]").click();
    awaitState("Without 4 Fill");
    assertNotEquals(whole, lines(), "the lines of level are others");
    assertEquals("4", browser.see(".plan-ring-figure").getText());
    assertTrue(browser.see(".without-levels tbody").getText().contains("Fill"));
    assertEquals(here + "?off=fill", browser.address());
    browser.await(
        () ->
            browser
                .list("return [document.querySelector('[data-status]').textContent]")
                .get(0)
                .startsWith("Without 4 Fill. "));
    thePageIsSound();

    WebElement rim = browser.see("#burns-2");
    assertEquals("burns-4", browser.focused().getDomAttribute("id"), "the focus stays");
    rim.sendKeys(Keys.SPACE);
    awaitState("Without 2 Rim and 4 Fill");
    assertEquals("burns-2", browser.focused().getDomAttribute("id"));
    browser.run("history.back()");
    awaitState("Without 4 Fill");
    assertTrue(browser.see("#burns-2").isSelected());

    browser.press(browser.see("#light-3-only"));
    awaitState("Only 3 Key");
    browser.await(() -> "without-state".equals(browser.focused().getDomAttribute("id")));
    assertTrue(isInSight("#without-map"), "who turns it far below is brought to the map");
    browser.see("#without-begin").sendKeys(Keys.ENTER);
    awaitState("The ambient alone");
    assertEquals(0, browser.all(LINES).size(), "the ambient alone draws no lines");
    browser.see("#without-next").sendKeys(Keys.ENTER);
    awaitState("1 Background is added");
    assertEquals("without-next", browser.focused().getDomAttribute("id"));
    browser.see("#without-all").click();
    awaitState("Everything burns");
    assertEquals(whole, lines());
    assertEquals(List.of("true"), browser.list("return [String(window.sameWindow)]"));
    thePageIsSound();

    browser.run(
        "document.getElementById('burns-4').checked = false;"
            + " HTMLFormElement.prototype.submit.call(document.querySelector('form.without-switches'))");
    browser.await(() -> browser.address().equals(here + "?off=fill"));
    assertEquals("Without 4 Fill", state(), "sent plainly, the form leads there too");
  }
}
