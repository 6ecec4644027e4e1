package lampwright.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpResponse;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import lampwright.TestHouse;
import lampwright.Told;
import lampwright.Visitor;
import lampwright.web.Documents;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;

/** A photographer changes a setup at a desk: by mouse, by keyboard alone, and not alone. */
@Order(1)
class EditorStoryTest {

  private static final String KEY = ".desk-view-plan .handle[data-piece='light/key']";
  private static final String SETUPS = "/studios/demo/setups/";

  @RegisterExtension static final Browser browser = Browser.desktop();

  @RegisterExtension static final TestHouse house = TestHouse.withDemo();

  private static Visitor owner;
  private String setup = "";

  @BeforeAll
  static void anAuthorIsSignedIn() {
    owner = house.withToken("owner@demo.example");
    browser.open(house.visitor().address("/sign-in").toString());
    browser.see("input[name=email]").sendKeys("author@demo.example");
    browser.see("input[name=password]").sendKeys(TestHouse.PASSWORD);
    browser.follow(browser.see("main form button"));
  }

  @BeforeEach
  void aSetupIsOpen() {
    Map<String, Object> document = Documents.setup("Quay at dusk");
    Map<String, Object> fill = Documents.light("fill");
    fill.put("role", "fill");
    fill.put("place", Map.of("x_m", 2, "y_m", -2.5, "z_m", 1.8));
    document.put("lights", List.of(Documents.light("key"), fill));
    document.put("subjects", List.of(Map.of("name", "ferryman", "place", place(0, 0, 0))));
    document.put("camera", Map.of("place", place(0, -4, 1.5), "aim", place(0, 0, 1.3)));
    HttpResponse<String> made = owner.post("/api/studios/demo/setups", Documents.json(document));
    assertEquals(201, made.statusCode(), made.body());
    setup = String.valueOf(Told.at(Visitor.object(made), "id"));
    browser.complaints();
    openIt();
  }

  private static Map<String, Object> place(double x, double y, double z) {
    return Map.of("x_m", x, "y_m", y, "z_m", z);
  }

  private void openIt() {
    browser.open(house.visitor().address(SETUPS + setup + "/edit").toString());
    browser.see(KEY);
  }

  private Map<?, ?> stored() {
    return Visitor.object(owner.get("/api" + SETUPS + setup));
  }

  private static String row(int number) {
    return browser.see("[data-lights] tr:nth-child(" + number + ")").getText().strip();
  }

  private static String state() {
    return browser.see("[data-state]").getText();
  }

  private static void waitForState(String beginning) {
    browser.await(() -> state().startsWith(beginning));
  }

  private static void thePageIsSound() {
    assertEquals(List.of(), browser.complaints(), browser.address());
    assertEquals(0, browser.overflow(), "The page is wider than the window: " + browser.address());
    String here = house.visitor().address("/").toString();
    assertTrue(
        browser.loadedFrom().stream().allMatch(from -> from.startsWith(here)),
        "Everything comes from here: " + browser.loadedFrom());
  }

  @Test
  void aLightThatIsDraggedChangesItsFigureToWhatTheServerThenPrints() {
    String before = row(1);
    browser.drag(browser.see(KEY), -60, 90);
    browser.await(() -> !row(1).equals(before));
    waitForState("Kept on this device");
    assertTrue(browser.see("[data-result]").getText().contains("camera left"));
    browser.press(browser.see("[data-save]"));
    waitForState("Saved as revision 2");
    String shown = row(1).replaceAll("\\s+", " ");
    double x = Told.number(stored(), "document", "lights", 0, "place", "x_m");
    assertTrue(x < -1.2, "x: " + x);
    thePageIsSound();
    browser.follow(browser.see(".crumb a"));
    String printed = browser.all("table.lights tbody tr").getFirst().getText();
    assertEquals(shown, printed.replaceAll("\\s+", " ").strip());
  }

  @Test
  void allOfItGoesByTheKeyboardAlone() {
    browser.see("[data-save]").sendKeys("");
    for (int i = 0; i < 12 && !"light/key".equals(focusedPiece()); i++) {
      browser.type(Keys.TAB);
    }
    assertEquals("light/key", focusedPiece());
    browser.type(Keys.ARROW_LEFT, Keys.ARROW_LEFT);
    browser.chord(Keys.SHIFT, Keys.ARROW_DOWN);
    browser.chord(Keys.ALT, Keys.ARROW_RIGHT);
    browser.type(Keys.PAGE_UP);
    browser.await(() -> value("piece-place-x_m").equals("−1.39"));
    assertEquals("−2.1", value("piece-place-y_m"));
    assertEquals("1.7", value("piece-place-z_m"));
    browser.await(() -> told().startsWith("1 Key: 2.5 m at 34° camera left, 1.7 m up: f/"));
    browser.type("r");
    browser.await(() -> !value("piece-aim-x_m").equals("0"));
    browser.type(Keys.TAB);
    assertEquals("light/fill", focusedPiece(), "Tab goes on to the next piece");
    browser.type(Keys.DELETE);
    browser.await(() -> browser.all("[data-lights] tr").size() == 1);
    browser.chord(Keys.CONTROL, "s");
    waitForState("Saved as revision 2");
    assertEquals(1, Told.list(stored(), "document", "lights").size());
    assertEquals(-1.39, Told.number(stored(), "document", "lights", 0, "place", "x_m"));
    thePageIsSound();
  }

  private static String focusedPiece() {
    return String.valueOf(browser.focused().getDomAttribute("data-piece"));
  }

  private static String value(String field) {
    return String.valueOf(browser.see("#" + field).getDomProperty("value"));
  }

  private static String told() {
    return String.valueOf(browser.all("[data-told]").getFirst().getDomProperty("textContent"));
  }

  @Test
  void figuresAreTypedUndoneAndRedone() {
    String before = row(1);
    WebElement distance = browser.see("#piece-distance");
    distance.sendKeys(Keys.chord(Keys.CONTROL, "a"), "4", Keys.ENTER);
    browser.await(() -> !row(1).equals(before));
    String after = row(1);
    assertEquals("−2.4", value("piece-place-x_m"));
    browser.press(browser.see("[data-undo]"));
    browser.await(() -> row(1).equals(before));
    waitForState("Saved as revision 1");
    browser.press(browser.see("[data-redo]"));
    browser.await(() -> row(1).equals(after));

    WebElement power = browser.see("#piece-power");
    power.sendKeys(Keys.chord(Keys.CONTROL, "a"), "much", Keys.TAB);
    assertTrue(browser.see("#piece-power-error").getText().contains("Escape"));
    power.sendKeys(Keys.ESCAPE);
    assertEquals("3", value("piece-power"));
    power.sendKeys(Keys.chord(Keys.CONTROL, "a"), "9", Keys.TAB);
    assertTrue(browser.see("[data-problems]").getText().contains("Stops down"));
    browser.press(browser.see("[data-save]"));
    waitForState("Not saved: something is not right");
    thePageNotesARefusal();
    browser.press(browser.see("[data-undo]"));
    browser.await(() -> browser.all("[data-problems] li").isEmpty());
    thePageIsSound();
  }

  /** The browser itself notes each answer that is no success. */
  private static void thePageNotesARefusal() {
    assertEquals(1, browser.complaints().size());
  }

  @Test
  void whatWasNotSavedOutlivesTheTab() {
    browser.drag(browser.see(KEY), -80, 0);
    waitForState("Kept on this device");
    String changed = row(1);
    browser.loseTheTab();
    openIt();
    assertTrue(browser.see("[data-kept]").getText().contains("have not saved"));
    assertNotEquals(changed, row(1));
    thePageIsSound();
    browser.type(Keys.TAB, Keys.ENTER);
    browser.await(() -> row(1).equals(changed));
    browser.press(browser.see("[data-save]"));
    waitForState("Saved as revision 2");
    openIt();
    assertFalse(browser.all("[data-kept]").getFirst().isDisplayed());
    thePageIsSound();
  }

  @Test
  void aSecondTabIsToldOfWhatTheFirstHasNotSavedAndNothingIsLost() {
    String first = browser.tab();
    String second = browser.openTab();
    openIt();
    browser.go(first);
    browser.drag(browser.see(KEY), -80, 0);
    waitForState("Kept on this device");
    String ofFirst = row(1);
    browser.go(second);
    browser.await(() -> browser.see("[data-kept] h2").getText().contains("in another window"));
    assertNotEquals(ofFirst, row(1));
    thePageIsSound();
    browser.press(browser.all("[data-kept] button").getFirst());
    browser.await(() -> row(1).equals(ofFirst));
    WebElement right = browser.see("#piece-place-x_m");
    right.sendKeys(Keys.chord(Keys.CONTROL, "a"), "-3", Keys.TAB);
    browser.await(() -> !row(1).equals(ofFirst));
    String ofSecond = row(1);
    browser.go(first);
    browser.await(() -> browser.see("[data-kept] h2").getText().contains("saved neither"));
    browser.press(browser.all("[data-kept] button").getLast());
    assertEquals(ofFirst, row(1), "What stood here still stands");
    browser.go(second);
    browser.await(() -> browser.see("[data-kept] h2").getText().contains("saved neither"));
    assertEquals(ofSecond, row(1), "What stood there still stands");
    thePageIsSound();
    browser.run("window.addEventListener('beforeunload', e => e.stopImmediatePropagation(), true)");
    browser.closeFor(first);
    browser.press(browser.see("[data-save]"));
    waitForState("Saved as revision 2");
  }

  @Test
  void whatStandsOnNoDrawingIsWrittenByKeyboardAndSaved() {
    open("cautions");
    type("record-cautions-text-0", "Wet stone: nobody runs.");
    type("record-cautions-text-1", "Cables along the wall.");
    browser.press(browser.all("[data-part=cautions] [data-does='act.up']").get(1));
    open("build_order");
    type("record-build-what-0", "Read the ambient first.");
    open("occasion");
    type("record-place-name", "The old quay");
    browser.press(browser.see("[data-add-surface]"));
    type("piece-reflectance", "0.4");
    type("piece-name", "sail");
    thePageIsSound();
    browser.chord(Keys.CONTROL, "s");
    waitForState("Saved as revision 2");
    Map<?, ?> document = (Map<?, ?>) Told.at(stored(), "document");
    assertEquals(
        List.of("Cables along the wall.", "Wet stone: nobody runs."),
        Told.list(document, "cautions"));
    assertEquals("Read the ambient first.", Told.at(document, "build_order", 0, "what"));
    assertEquals("The old quay", Told.at(document, "occasion", "place", "name"));
    assertEquals(0.4, Told.number(document, "surfaces", 0, "reflectance"));
    assertEquals("sail", Told.at(document, "surfaces", 0, "name"));
  }

  private static void open(String part) {
    browser.press(browser.see("[data-part=" + part + "] summary"));
  }

  private static void type(String field, String text) {
    WebElement input = browser.see("#" + field);
    input.sendKeys(Keys.chord(Keys.CONTROL, "a"), text, Keys.TAB);
  }

  @Test
  void withoutAConnectionItIsKeptAndSavedOnceItIsBack() {
    browser.drag(browser.see(KEY), -80, 0);
    browser.connect(false);
    browser.press(browser.see("[data-save]"));
    waitForState("No connection. Kept on this device");
    browser.connect(true);
    waitForState("Saved as revision 2");
    browser.complaints();
  }

  @Test
  void whoSavesSecondSeesBothSidesAndChooses() {
    HttpResponse<String> first =
        owner.with("If-Match", "\"1\"").put("/api" + SETUPS + setup, Documents.json(theirs()));
    assertEquals(200, first.statusCode(), first.body());
    WebElement right = browser.see("#piece-place-x_m");
    right.sendKeys(Keys.chord(Keys.CONTROL, "a"), "-3", Keys.TAB);
    browser.press(browser.see("[data-save]"));
    assertTrue(browser.see("[data-differences] h2").getText().contains("saved revision 2"));
    assertEquals(2, browser.all(".differences tbody tr").size());
    WebElement open = browser.see(".differences tr.is-open");
    assertTrue(open.getText().contains("camera right"), open.getText());
    thePageNotesARefusal();
    browser.press(browser.see("[data-does=save-merged]"));
    browser.type(Keys.SPACE);
    browser.await(() -> browser.all(".differences tr.is-open").isEmpty());
    browser.press(browser.see(".differences .side-mine input"));
    thePageIsSound();
    browser.press(browser.see("[data-does=save-merged]"));
    waitForState("Saved as revision 3");
    assertEquals("Quay before dawn", Told.at(stored(), "document", "title"));
    assertEquals(-3.0, Told.number(stored(), "document", "lights", 0, "place", "x_m"));
    assertEquals("Quay before dawn", browser.see("h1").getText());
    thePageIsSound();
  }

  private Map<String, Object> theirs() {
    Map<String, Object> document = new LinkedHashMap<>();
    ((Map<?, ?>) Told.at(stored(), "document"))
        .forEach((field, value) -> document.put(String.valueOf(field), value));
    document.put("title", "Quay before dawn");
    Map<String, Object> key = Documents.light("key");
    key.put("place", place(1.5, -1.5, 2));
    document.put("lights", List.of(key, Told.at(document, "lights", 1)));
    return document;
  }

  @Test
  void aNewSetupIsMadeFromNothing() {
    browser.open(house.visitor().address(SETUPS + "new").toString());
    browser.see(KEY);
    browser.see("#title").sendKeys(Keys.chord(Keys.CONTROL, "a"), "Made by hand");
    browser.press(browser.see("[data-add-light]"));
    browser.await(() -> browser.all("[data-lights] tr").size() == 2);
    thePageIsSound();
    browser.follow(browser.see("[data-save]"));
    browser.see(KEY);
    assertTrue(browser.address().endsWith("/edit"), browser.address());
    assertEquals("Made by hand", browser.see("h1").getText());
    waitForState("Saved as revision 1");
    thePageIsSound();
  }
}
