package lampwright;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import lampwright.people.PersonId;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.MethodOrderer;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.TestMethodOrder;
import org.junit.jupiter.api.extension.RegisterExtension;

/** All of the demo studio, as it comes into an empty server. */
@Order(1)
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
@TestMethodOrder(MethodOrderer.MethodName.class)
class WholeDemoTest {

  private static final String DEMO = "/api/studios/demo";

  /** The tests run in {@code server/}. */
  private static final Path SCRIPT = Path.of("../seed-data/load.mjs");

  @RegisterExtension
  static final TestHouse house =
      TestHouse.with(
          Map.of("LAMPWRIGHT_DEMO", "true", "LAMPWRIGHT_DEMO_PASSWORD", TestHouse.PASSWORD));

  private Visitor owner;

  @BeforeAll
  void somebodyComes() {
    owner = house.withToken("owner@demo.example");
  }

  /** The items of all pages of a list. */
  private static List<Map<?, ?>> all(Visitor visitor, String path) {
    List<Map<?, ?>> all = new ArrayList<>();
    String first = path + (path.contains("?") ? "&" : "?") + "limit=50";
    String next = first;
    while (!next.isEmpty()) {
      HttpResponse<String> page = visitor.get(next);
      assertEquals(200, page.statusCode(), page.body());
      Visitor.items(page).forEach(item -> all.add((Map<?, ?>) item));
      Object cursor = Visitor.object(page).get("next");
      next = cursor == null ? "" : first + "&cursor=" + cursor;
    }
    return all;
  }

  private static List<String> setups(Visitor visitor, String studio) {
    return all(visitor, studio + "/setups").stream().map(item -> text(item, "id")).toList();
  }

  private static String text(Map<?, ?> item, String field) {
    return Told.at(item, field).toString();
  }

  @Test
  void anEmptyServerSaysHowFarItIs() {
    assertTrue(house.console().contains("The demo studio comes in: "), house.console());
    assertTrue(
        Pattern.compile("The demo studio: running, \\d+ of \\d+").matcher(house.console()).find(),
        house.console());
  }

  @Test
  void everySetupOpensForWhomeverMaySeeItOnAPageOfAtMostAHundredAndFiftyKilobytes() {
    Visitor author = house.signedIn("author@demo.example");
    Visitor reader = house.signedIn("reader@demo.example");
    PageWeight weight = new PageWeight(author);
    int drafts = 0;
    List<Map<?, ?>> setups = all(author, DEMO + "/setups");
    for (Map<?, ?> setup : setups) {
      String page = "/studios/demo/setups/" + text(setup, "id");
      int bytesWithoutPictures = weight.bytes(page);
      assertTrue(bytesWithoutPictures <= 150_000, page + " weighs " + bytesWithoutPictures);
      boolean isDraft =
          author.get(DEMO + "/setups/" + text(setup, "id") + "/state").body().contains("draft");
      assertEquals(isDraft ? 404 : 200, reader.get(page).statusCode(), page);
      drafts += isDraft ? 1 : 0;
    }
    assertTrue(drafts >= 12, drafts + " drafts");
    assertTrue(setups.size() - drafts >= 60, setups.size() + " setups");
    assertTrue(weight.assets() > 10, weight.assets() + " assets");
  }

  /** Each setup meets two kits, and each kit many setups. */
  @Test
  void everySetupIsAdaptedToKitsOrSaysWhatFallsShort() {
    int adapted = 0;
    int lacking = 0;
    List<String> kits = all(owner, DEMO + "/kits").stream().map(kit -> text(kit, "id")).toList();
    List<String> setups = setups(owner, DEMO);
    for (int i = 0; i < setups.size(); i++) {
      String setup = setups.get(i);
      for (String kit : List.of(kits.get(i % kits.size()), kits.get((i + 3) % kits.size()))) {
        HttpResponse<String> answer =
            owner.post(DEMO + "/setups/" + setup + "/adaptations", "{\"kit\":\"" + kit + "\"}");
        assertEquals(200, answer.statusCode(), setup + " " + kit + answer.body());
        Map<?, ?> told = Visitor.object(answer);
        if ("adapted".equals(told.get("outcome"))) {
          adapted++;
          assertFalse(Told.list(told, "adaptations").isEmpty(), setup + " " + kit);
        } else {
          lacking++;
          assertFalse(Told.list(told, "reasons").isEmpty(), setup + " " + kit);
        }
      }
    }
    assertTrue(adapted > 30 && lacking > 15, adapted + " adapted, " + lacking + " short");
  }

  @Test
  void whatWasMeteredOfEachHeadScattersAsMetersDo() {
    for (Map<?, ?> gear : all(owner, DEMO + "/gear?kind=head")) {
      String place = DEMO + "/gear/" + text(gear, "id");
      HttpResponse<String> answer = owner.post(place + "/calibration", "");
      assertEquals(200, answer.statusCode(), place + answer.body());
      double scatter = Told.number(Visitor.object(answer), "calibration", "scatter_stops");
      assertTrue(scatter > 0.02 && scatter < 0.2, place + " scatters by " + scatter);
    }
  }

  @Test
  void historiesTakesAndNotesAreByManyHandsOverTenYears() {
    Map<String, Integer> written = new TreeMap<>();
    TreeSet<String> years = new TreeSet<>();
    for (String setup : setups(owner, DEMO)) {
      String at = DEMO + "/setups/" + setup;
      for (Map<?, ?> revision : all(owner, at + "/revisions")) {
        written.merge(text(revision, "changed_by"), 1, Integer::sum);
        years.add(text(revision, "changed_at").substring(0, 4));
      }
      for (Map<?, ?> take : all(owner, at + "/takes")) {
        written.merge(text(take, "logged_by"), 1, Integer::sum);
      }
      for (Map<?, ?> note : all(owner, at + "/notes")) {
        written.merge(text(note, "by"), 1, Integer::sum);
      }
    }
    assertEquals(8, written.size(), written.toString());
    assertTrue(written.values().stream().allMatch(count -> count >= 5), written.toString());
    assertTrue(years.containsAll(List.of("2016", "2021", "2026")), years.toString());
  }

  @Test
  void openedAgainItBringsNothingTwiceAndLeavesWhatWasChanged() {
    int before = setups(owner, DEMO).size();
    String setup = setups(owner, DEMO).getFirst();
    HttpResponse<String> now = owner.get(DEMO + "/setups/" + setup);
    HttpResponse<String> renamed =
        owner
            .with("If-Match", now.headers().firstValue("ETag").orElseThrow())
            .patch(DEMO + "/setups/" + setup, "{\"title\":\"Somebody's own title\"}");
    assertEquals(200, renamed.statusCode(), renamed.body());
    house.reopen();
    somebodyComes();
    assertEquals(before, setups(owner, DEMO).size());
    assertTrue(owner.get(DEMO + "/setups/" + setup).body().contains("Somebody's own title"));
  }

  @Test
  void theSameFilesComeInByTheScriptThatSpeaksToTheApi() throws Exception {
    assumeTrue(
        Stream.of("/usr/bin/node", "/usr/local/bin/node").anyMatch(at -> Files.exists(Path.of(at))),
        "No node here: apt-get install nodejs");
    PersonId person =
        new PersonId(Told.at(Visitor.object(owner.get("/api/session")), "person", "id").toString());
    String studio = house.database().newStudio(person).text();
    String own = "/api/studios/" + studio;
    assertEquals(0, run(owner, studio));
    List<String> titles = titles(owner, own);
    assertEquals(10, titles.size());
    assertTrue(titles(owner, DEMO).containsAll(titles), titles.toString());
    assertEquals(3, all(owner, own + "/kits").size());
    assertEquals(0, run(owner, studio));
    assertEquals(titles, titles(owner, own));
    for (String kind : List.of("/gear", "/locations")) {
      assertEquals(all(owner, DEMO + kind).size(), all(owner, own + kind).size(), kind);
    }
    String first =
        text(
            (Map<?, ?>) Visitor.items(owner.get(own + "/setups?q=last+boat+out")).getFirst(), "id");
    assertEquals(1, all(owner, own + "/setups/" + first + "/pictures").size());
    assertFalse(all(owner, own + "/setups/" + first + "/takes").isEmpty());
  }

  private static List<String> titles(Visitor visitor, String studio) {
    return all(visitor, studio + "/setups").stream()
        .map(item -> text(item, "title"))
        .sorted()
        .toList();
  }

  private static int run(Visitor visitor, String studio) throws Exception {
    ProcessBuilder script =
        new ProcessBuilder(
            "node", SCRIPT.toString(), visitor.address("").toString(), studio, "few");
    script
        .environment()
        .put("LAMPWRIGHT_TOKEN", visitor.header("Authorization").substring("Bearer ".length()));
    Path said = Files.createTempFile("load", ".txt");
    Process process = script.redirectErrorStream(true).redirectOutput(said.toFile()).start();
    int code = process.waitFor();
    if (code != 0) {
      System.err.println(Files.readString(said, StandardCharsets.UTF_8));
    }
    Files.delete(said);
    return code;
  }
}
