package lampwright.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.OffsetDateTime;
import java.util.HashSet;
import java.util.List;
import java.util.stream.IntStream;
import lampwright.TestHouse;
import lampwright.Told;
import lampwright.Visitor;
import lampwright.document.Json;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.extension.RegisterExtension;

/**
 * A day on location with two phones whose signal is cut in the middle: one loses it while it sends,
 * and its browser is killed; the other has none from the beginning.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
@Order(2)
class FieldStoryTest {

  private static final int EACH = 25;
  private static final int WITH_SIGNAL = 8;
  private static final String SETUP = "/studios/demo/setups/overthecut";
  private static final String READY = "[data-field][data-ready=yes]";

  /**
   * Taps "Kept" with a word for each, and waits each time until the page says that it is logged.
   */
  private static final String LOG =
      """
      const [first, last, phone] = arguments;
      const form = document.querySelector("[data-take-now]");
      const latest = () => document.querySelector("[data-entries] .said")?.textContent ?? "";
      const become = (text) => new Promise((resolve) => {
        const look = () => latest() === text ? resolve() : requestAnimationFrame(look);
        look();
      });
      return (async () => {
        for (let i = first; i < last; i += 1) {
          form.elements.words.value = `${phone} ${i}`;
          form.querySelector("[value=yes]").click();
          await become(`${phone} ${i}`);
        }
        return [];
      })();
      """;

  /** Logs one more, which nobody sends. */
  private static final String LOG_ONLY =
      """
      const data = JSON.parse(document.querySelector("[data-field]").dataset.field);
      const { log } = await import(data.assets[0].replace(/[^/]*$/, "field-outbox.js"));
      await log(data, { kind: "take", setup_revision: data.revision, kept: "yes" });
      return [];
      """;

  /** Begins to keep, and forgets everything while an answer is on its way. */
  private static final String KEEP_AND_FORGET =
      """
      const [setup] = arguments;
      const from = document.querySelector("[data-field]").dataset.field;
      const folder = JSON.parse(from).assets[0].replace(/[^/]*$/, "");
      const usual = window.fetch;
      return (async () => {
        const { keep } = await import(`${folder}field-keeping.js`);
        const { forgetAll, ourCaches } = await import(`${folder}field-caches.js`);
        let isAsked;
        const asked = new Promise((resolve) => { isAsked = resolve; });
        let goOn;
        const held = new Promise((resolve) => { goOn = resolve; });
        window.fetch = async (address, request) => {
          isAsked();
          await held;
          return usual(address, request);
        };
        const kept = keep([setup], JSON.parse(from).person).then(() => "kept", (failure) => failure.reason);
        await asked;
        await forgetAll();
        goOn();
        const reason = await kept;
        window.fetch = usual;
        return [reason, (await ourCaches()).length];
      })();
      """;

  /** How many caches, kept setups and entries are left. */
  private static final String LEFT =
      """
      return (async () => {
        const names = (await caches.keys()).filter((name) => name.startsWith("lampwright-kept-"));
        const database = await new Promise((resolve) => {
          const request = indexedDB.open("lampwright-field");
          request.onsuccess = () => resolve(request.result);
        });
        const count = (store) => new Promise((resolve) => {
          const request = database.transaction(store).objectStore(store).count();
          request.onsuccess = () => resolve(request.result);
        });
        const left = [names.length, await count("kept"), await count("entries")];
        database.close();
        return left;
      })();
      """;

  @RegisterExtension static final TestHouse house = TestHouse.withDemo();
  @RegisterExtension static final Signal signal = new Signal();
  @RegisterExtension static final Browser one = Browser.smallPhoneThatKeeps();
  @RegisterExtension static final Browser two = Browser.smallPhone();

  @BeforeAll
  void theSignalLeadsToTheHouse() {
    signal.leadTo(house.port());
  }

  @BeforeEach
  void thePhonesAreNew() {
    signal.become(Signal.State.THERE);
    for (Browser phone : List.of(one, two)) {
      phone.open(signal.address("/sign-in"));
      phone.forget();
    }
  }

  private static void keep(Browser phone, String email) {
    phone.open(signal.address("/sign-in"));
    String[] cookie = house.signedIn(email).header("Cookie").split("=", 2);
    phone.takeCookie(cookie[0], cookie[1]);
    phone.open(signal.address(SETUP + "/field"));
    phone.see(READY);
    assertTrue(copy(phone).startsWith("With drawings, sheet, kits"), copy(phone));
    phone.press(phone.see("[data-copy] button"));
    phone.await(() -> copy(phone).startsWith("Copy of "));
    phone.press(phone.see("a[href='#takes']"));
  }

  private static String copy(Browser phone) {
    return phone.see("[data-copy] p").getText();
  }

  private static String waiting(Browser phone) {
    return phone.see("[data-waiting] p").getText();
  }

  @Test
  void aDayWithoutSignalArrivesWholeAndOnce() {
    keep(one, "crew@demo.example");
    keep(two, "author@demo.example");
    one.list(LOG, 0, WITH_SIGNAL, "one");
    one.await(() -> !one.all(".entry").isEmpty() && one.all(".entry-waiting").isEmpty());
    signal.become(Signal.State.LOSES_ANSWERS);
    one.list(LOG, WITH_SIGNAL, WITH_SIGNAL + 1, "one");
    one.await(() -> logged().size() == WITH_SIGNAL + 1);
    signal.become(Signal.State.NONE);
    one.await(() -> waiting(one).startsWith("One entry waits on this phone. No signal."));

    itOpensAndComputes(two);
    two.list(LOG, 0, EACH, "two");
    one.list(LOG, WITH_SIGNAL + 1, EACH, "one");
    one.kill();
    one.begin();
    itOpensAndComputes(one);
    assertTrue(waiting(one).startsWith((EACH - WITH_SIGNAL) + " entries wait"), waiting(one));
    assertEquals(WITH_SIGNAL + 1, logged().size(), "the server has no more than it could get");

    signal.become(Signal.State.THERE);
    two.press("[data-waiting] button");
    signInAgain(one);
    for (Browser phone : List.of(one, two)) {
      phone.await(() -> phone.all(".entry-waiting").isEmpty());
    }
    eachIsThereOnceAndInItsOrder();
  }

  @Test
  void aRunThroughIsMeteredWalkedAndLoggedThoughItsTabIsLost() {
    keep(two, "crew@demo.example");
    signal.become(Signal.State.NONE);
    two.press(two.see("a[href='#build']"));
    two.press(two.see("[data-next]"));
    two.press(two.see("[data-next]"));
    two.see("#reading-face-of-stone").sendKeys("2");
    two.see("[name=tenths-face-of-stone]").sendKeys("2");
    two.press(two.see("[data-step]:not([hidden]) [data-meter] button"));
    String says = two.see("[data-step]:not([hidden]) .met-says").getText();
    two.press(two.see("a[href='#walk']"));
    two.press(two.see("[data-focus]"));
    two.press(two.see("[data-mark] .walk-checked"));
    two.see("#mark-1").sendKeys("4");
    two.press(two.see("[data-mark]:nth-child(2) [data-on-mark] button"));
    two.await(() -> two.see("[data-mark]:nth-child(2) .met-off").getText().equals("−0.5 under"));

    two.loseTheTab();
    two.open(signal.address(SETUP + "/field"));
    two.await(() -> two.see("[data-mark] [name=walked]").isSelected());
    two.press(two.see("a[href='#build']"));
    assertEquals("Step 3 of 10", two.see("[data-at]").getText());
    two.await(() -> two.see("[data-step]:not([hidden]) .met-says").getText().equals(says));
    two.press(two.see("a[href='#takes']"));
    two.press(two.see("[data-run-through]"));
    two.see(".entry-waiting");
    signal.become(Signal.State.THERE);
    two.press("[data-waiting] button");
    two.see(".entry-sent");

    Object logged =
        Json.parse(
            house.withToken("author@demo.example").get("/api" + SETUP + "/takes?limit=1").body());
    Object take = Told.at(logged, "items", 0);
    assertEquals("run_through", Told.at(take, "document", "kind"));
    assertEquals("Walked: start; cue: f/4. Focus checked.", Told.at(take, "document", "why"));
    assertEquals(says, Told.at(take, "readings", 0, "sentence"), "in the server's words");
  }

  @Test
  void whoeverSignsOutLeavesNothingButWhatNobodyElseHas() {
    keep(one, "crew@demo.example");
    // What is kept while somebody signs out is not kept.
    assertEquals(List.of("copy.signedOut", "0"), one.list(KEEP_AND_FORGET, SETUP));
    keep(one, "crew@demo.example");
    one.list(LOG_ONLY);
    one.follow(one.see(".head-member button"));
    assertEquals(List.of("0", "0", "1"), one.list(LEFT));
    keep(one, "author@demo.example");
    assertTrue(waiting(one).startsWith("Entries of somebody else wait"), waiting(one));
    assertEquals(List.of(), one.all(".entry"));
  }

  /** A session may go with the browser that had it; what waits stays. */
  private static void signInAgain(Browser phone) {
    phone.loseCookies();
    phone.press("[data-waiting] button");
    phone.await(() -> waiting(phone).contains("Sign in to send it"));
    phone.follow(phone.see("[data-waiting] a"));
    phone.see("input[name=email]").sendKeys("crew@demo.example");
    phone.see("input[name=password]").sendKeys(TestHouse.PASSWORD);
    phone.follow(phone.see("main form button"));
    phone.see(READY);
  }

  /** The copy opens without signal, says so, and its engine answers. */
  private static void itOpensAndComputes(Browser phone) {
    phone.open(signal.address(SETUP + "/field"));
    phone.see(READY);
    phone.await(() -> copy(phone).endsWith("revision 1. No signal."));
    phone.press(phone.see("a[href='#now']"));
    phone.press(phone.see("[data-now] [value=falls-1]"));
    phone.await(
        () ->
            phone.all("[data-now-answer] .now-turns").stream()
                .anyMatch(turns -> turns.getText().equals("Shutter 1/500 → 1/250")));
    phone.open(signal.address("/studios/demo/kits"));
    assertEquals(
        "There is no signal, and that page is not kept on this phone. These are.",
        phone.see("[data-away]").getText());
    phone.see(READY);
    phone.follow(phone.see(".kept-list a"));
    phone.see(READY);
    phone.press(phone.see("a[href='#build']"));
    phone.press(phone.see("[data-next]"));
    phone.open(signal.address(SETUP + "/sheet"));
    assertTrue(phone.see(".fs-kind").getText().equals("Field sheet"));
    phone.open(signal.address(SETUP + "/field#takes"));
    phone.see(READY);
  }

  private static void eachIsThereOnceAndInItsOrder() {
    List<?> takes = logged();
    assertEquals(2 * EACH, takes.size());
    assertEquals(
        2 * EACH,
        new HashSet<>(takes.stream().map(t -> Told.at(t, "document", "client_key")).toList())
            .size());
    List<OffsetDateTime> times =
        takes.stream()
            .map(t -> OffsetDateTime.parse(Told.at(t, "document", "at").toString()))
            .toList();
    assertEquals(times.stream().sorted().toList(), times, "in the order of the taps");
    for (String phone : List.of("one", "two")) {
      assertEquals(
          IntStream.range(0, EACH).mapToObj(i -> phone + " " + i).toList(),
          takes.stream()
              .map(t -> Told.at(t, "document", "why").toString())
              .filter(why -> why.startsWith(phone))
              .toList());
    }
  }

  /** What the two phones logged on that day; the last is on top of the server's list. */
  private static List<?> logged() {
    Visitor programs = house.withToken("author@demo.example");
    return Visitor.items(programs.get("/api" + SETUP + "/takes?limit=100")).stream()
        .filter(take -> Told.at(take, "document", "why").toString().matches("(one|two) \\d+"))
        .toList()
        .reversed();
  }
}
