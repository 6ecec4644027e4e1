package lampwright.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import lampwright.TestHouse;
import lampwright.Visitor;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.openqa.selenium.WebElement;

/** A day is logged with one thumb, on a small phone, with a connection that comes and goes. */
class TakesPhoneTest {

  private static final String LOG = "/studios/demo/setups/overthecut/takes";

  /** What cold fingers hit, in CSS pixels: a judgement, above the 44 of WCAG 2.2 (2.5.5, AAA). */
  private static final int THUMB = 48;

  private static final String SMALL_TARGETS =
      """
      const [least] = arguments;
      const target = (control) => control.closest("label") ?? control;
      return [...document.querySelectorAll("main :is(button, summary, input:not([type=hidden]), textarea)")]
        .map(target)
        .filter((one) => one.checkVisibility() && one.getBoundingClientRect().height < least - 0.1)
        .map((one) => one.outerHTML.slice(0, 80));
      """;

  @RegisterExtension static final Browser browser = Browser.smallPhone();

  @RegisterExtension static final TestHouse house = TestHouse.withDemo();

  @BeforeEach
  void theCrewStandsByThePlan() {
    browser.open(address("/sign-in"));
    Visitor crew = house.signedIn("crew@demo.example");
    String[] cookie = crew.header("Cookie").split("=", 2);
    browser.takeCookie(cookie[0], cookie[1]);
    // Another test's draft is in this tab.
    browser.run("sessionStorage.clear()");
    browser.open(address(LOG));
  }

  @Test
  void whatIsJudgedLiesUnderTheThumbAndIsLargeEnough() {
    for (WebElement choice : browser.all(".deciding-row .of-take")) {
      assertTrue(choice.getLocation().y > 740 / 2, "In the lower half: " + choice.getLocation());
    }
    browser.press(browser.see(".deciding-why summary"));
    assertEquals(8, browser.all(".reason").stream().filter(WebElement::isDisplayed).count());
    assertEquals(List.of(), browser.list(SMALL_TARGETS, THUMB));
    assertEquals(0, browser.overflow(), "The page is wider than the window");
    browser.see(".deciding-why summary").click();
    browser.press(browser.see("[value=run_through]"));
    assertEquals("Log the run-through", shownChoices());
  }

  @Test
  void aTakeWithoutAConnectionWaitsInItsFormAndIsLoggedOnce() {
    assertEquals("decimal", browser.see("#reading-key").getDomAttribute("inputmode"));
    browser.see("#reading-key").sendKeys("2.8");
    browser.see("[name=tenths-key]").sendKeys("7");
    browser.see(".deciding-why summary").click();
    browser.see(".reason:has([name=reason-eyes])").click();
    browser.connect(false);
    browser.see(".deciding-row [value=no]").click();
    browser.await(() -> state().startsWith("Not sent yet"));
    assertEquals("2.8", browser.see("#reading-key").getDomProperty("value"));
    browser.connect(true);
    browser.complaints();

    browser.open(address(LOG));
    assertTrue(state().startsWith("Not sent yet: typed before"), state());
    assertEquals("2.8", browser.see("#reading-key").getDomProperty("value"));
    browser.see(".deciding-row [value=no]").click();
    browser.await(() -> browser.see(".last-take h2").getText().equals("Take 1\nNot kept"));
    assertEquals(browser.see(".last-take h2"), browser.focused());
    String said = browser.see(".last-take").getText();
    // From f/4 + 0.2, which is expected, to f/2.8 + 0.7 it is half a stop; the rest is rounding.
    assertTrue(said.contains("Eyes shut.") && said.contains("Key\n−0.5\nstops under"), said);
    assertEquals("", browser.see("#reading-key").getDomProperty("value"));
    assertEquals(1, browser.all(".take").size(), "Sent twice, it is one take");
    assertEquals(List.of(), browser.complaints());

    browser.press(browser.see(".last-take .mending details:nth-of-type(2) summary"));
    browser.follow(browser.see(".last-take form[action$=withdrawal] button"));
    assertEquals("Number 1 is taken back.", browser.see(".kept").getText());
    assertEquals(List.of(), browser.all(".take"));
  }

  private static String state() {
    return browser.all("[data-state]").getFirst().getText();
  }

  private static String shownChoices() {
    return browser.all(".deciding-row button").stream()
        .filter(WebElement::isDisplayed)
        .map(WebElement::getText)
        .reduce("", String::concat);
  }

  private static String address(String path) {
    return house.visitor().address(path).toString();
  }
}
