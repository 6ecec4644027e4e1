package lampwright.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Objects;
import lampwright.TestHouse;
import lampwright.Visitor;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;

/** Somebody who is new moves a light away, on a small phone, by its keys. */
class GlossaryStoryTest {

  private static final String BOOK = "#inverse-square ";

  @RegisterExtension static final Browser browser = Browser.smallPhone();

  @RegisterExtension static final TestHouse house = TestHouse.withDemo();

  @BeforeEach
  void theReaderComesFromALink() {
    browser.open(house.visitor().address("/sign-in").toString());
    Visitor reader = house.signedIn("reader@demo.example");
    String[] cookie = reader.header("Cookie").split("=", 2);
    browser.takeCookie(cookie[0], cookie[1]);
    browser.open(house.visitor().address("/glossary#inverse-square").toString());
  }

  @Test
  void aSliderMovesTheDrawingAndItsFigures() {
    WebElement slider = browser.see(BOOK + "input[type=range]");
    assertEquals("Distance of the light", slider.getAccessibleName());
    assertEquals("2 m: 2.0 stops under the light at 1 m.", said());
    String before = drawing();

    browser.run("document.querySelector('" + BOOK + "input').focus()");
    browser.type(Keys.ARROW_RIGHT, Keys.ARROW_RIGHT, Keys.ARROW_RIGHT);
    browser.await(() -> !drawing().equals(before));
    assertEquals("2.83 m: 3.0 stops under the light at 1 m.", said());
    assertEquals("2.83 m", plain(browser.see(BOOK + "output").getText()));
    assertEquals(said(), plain(attribute(slider, "aria-valuetext")));

    browser.type(Keys.END);
    browser.await(() -> said().startsWith("4 m: 4.0 stops"));
    browser.type(Keys.HOME);
    browser.await(() -> said().equals("1 m: the exposure is set here."));
    assertEquals(List.of(), browser.complaints());
  }

  @Test
  void aThumbFindsEverySliderAndNothingIsTooWide() {
    List<WebElement> sliders = browser.all(".flip-turn input");
    assertEquals(7, sliders.size());
    sliders.forEach(slider -> assertTrue(slider.getSize().getHeight() >= 44));
    assertEquals(0, browser.overflow());
    assertEquals(
        7, browser.all(".flip-leaf").stream().filter(WebElement::isDisplayed).toList().size());
  }

  private static List<WebElement> shown() {
    return browser.all(BOOK + ".flip-leaf").stream().filter(WebElement::isDisplayed).toList();
  }

  private static String said() {
    List<WebElement> leaves = shown();
    assertEquals(1, leaves.size());
    return plain(attribute(leaves.getFirst(), "innerText").strip().lines().toList().getLast());
  }

  private static String drawing() {
    return attribute(shown().getFirst(), "innerHTML");
  }

  private static String attribute(WebElement element, String name) {
    String property = element.getDomProperty(name);
    return property == null
        ? Objects.requireNonNull(element.getDomAttribute(name), name)
        : property;
  }

  private static String plain(String text) {
    return text.replace('\u00a0', ' ');
  }
}
