package lampwright.web;

import static lampwright.web.GearForTests.GEAR;
import static lampwright.web.GearForTests.KITS;
import static lampwright.web.GearForTests.head;
import static lampwright.web.GearForTests.id;
import static lampwright.web.GearForTests.kept;
import static lampwright.web.GearForTests.kitOf;
import static lampwright.web.GearForTests.octagon;
import static lampwright.web.GearForTests.told;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import lampwright.TestHouse;
import lampwright.Told;
import lampwright.Visitor;
import lampwright.gear.stock.GearKind;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.extension.RegisterExtension;

/** Gear is made, changed and retired by forms in a browser without scripts. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class GearFormsTest {

  private static final String PAGES = "/studios/demo/gear";

  @RegisterExtension static final TestHouse house = TestHouse.withDemo();

  private Visitor author;
  private Visitor browser;

  @BeforeAll
  void anAuthorSignsIn() {
    author = house.withToken("author@demo.example");
    browser = house.signedIn("author@demo.example").with("X-CSRF-Token", "");
  }

  private static Document page(HttpResponse<String> answer) {
    assertEquals(200, answer.statusCode(), answer.body());
    return Jsoup.parse(answer.body());
  }

  private Element form(String path) {
    return page(browser.get(path)).expectFirst("form.gear-form");
  }

  private HttpResponse<String> send(Element form, Map<String, String> typed) {
    Map<String, String> fields = new LinkedHashMap<>();
    form.select("input, textarea").forEach(field -> fields.put(field.attr("name"), field.val()));
    form.select("select").forEach(field -> fields.put(field.attr("name"), chosen(field)));
    fields.putAll(typed);
    return browser.postForm(
        form.attr("action"),
        fields.entrySet().stream()
            .map(of -> of.getKey() + "=" + URLEncoder.encode(of.getValue(), StandardCharsets.UTF_8))
            .collect(Collectors.joining("&")));
  }

  private static String chosen(Element select) {
    Element option = select.selectFirst("option[selected]");
    return option == null ? select.expectFirst("option").val() : option.val();
  }

  private static String place(HttpResponse<String> answer) {
    assertEquals(303, answer.statusCode(), answer.body());
    return URI.create(answer.headers().firstValue("Location").orElseThrow()).getPath();
  }

  /** What each kind cannot do without. */
  private static Map<String, String> needed(GearKind kind) {
    return switch (kind) {
      case HEAD -> Map.of("piece-energy_ws", "400", "piece-output-guide_number_m", "64,5");
      case PACK -> Map.of("piece-energy_ws", "1200", "piece-outlets", "2");
      case MODIFIER ->
          Map.of(
              "piece-kind",
              "softbox",
              "piece-face-shape",
              "rectangle",
              "piece-face-width_m",
              "0.9",
              "piece-face-height_m",
              "1,2");
      case BODY -> Map.of("piece-width_mm", "36", "piece-height_mm", "24", "piece-sync", "1/200");
      case LENS -> Map.of("piece-focal_length_mm", "85");
      case GEL -> Map.of("piece-shift_mired", "65", "piece-loss_stops", "0.5");
      case NEUTRAL_DENSITY -> Map.of("piece-loss_stops", "3");
      case STAND -> Map.of("piece-highest_m", "2.6");
    };
  }

  @Test
  void gearOfEachKindIsKeptByAFormAndOpensAgainAsItWas() {
    Document list = page(browser.get(PAGES));
    for (GearKind kind : GearKind.values()) {
      String way = PAGES + "/new?kind=" + kind.word();
      assertEquals(1, list.select("a[href=" + way + "]").size(), kind.word());
      Map<String, String> typed = new LinkedHashMap<>(needed(kind));
      typed.put("piece-name", "New <" + kind.word() + ">");
      typed.put("count", "3");
      String place = place(send(form(way), typed));
      Map<?, ?> gear = told(author, "/api" + place);
      assertEquals(3, Told.number(gear, "document", "count"));
      assertEquals(kind.word(), Told.at(gear, "document", "kind"));
      Element again = form(place + "/change");
      assertEquals("New <" + kind.word() + ">", again.expectFirst("#piece-name").val());
      assertEquals(303, send(again, Map.of("out_of_order", "1")).statusCode());
      Map<?, ?> changed = told(author, "/api" + place);
      assertEquals(1, Told.number(changed, "document", "out_of_order"));
      assertEquals(
          Told.at(gear, "document", kind.word()), Told.at(changed, "document", kind.word()));
    }
  }

  @Test
  void readingsAndConditionAreTypedInAndTheReadingsCalibrateIt() {
    String gear = kept(author, GEAR, head("Metered head", 64));
    String place = PAGES + "/" + id(gear);
    Map<String, String> typed = new LinkedHashMap<>();
    // Worked by the inverse square law: f/32 at 2 m is f/16 at 4 m and f/8 at 8 m.
    List<String> marks = List.of("32", "16", "8");
    for (int row = 0; row < marks.size(); row++) {
      typed.put("readings-" + row + "-metered", marks.get(row));
      typed.put("readings-" + row + "-distance_m", String.valueOf(2 << row));
    }
    typed.put("readings-2-metered", "8 + 0,1");
    typed.put("condition-0-date", "2026-10-03");
    typed.put("condition-0-note", "Its tube is grey.");
    assertEquals(place, place(send(form(place + "/change"), typed)));
    Document page = page(browser.get(place));
    assertTrue(page.text().contains("Its tube is grey."), page.text());
    assertFalse(page.select("#calibration").isEmpty());
    Map<?, ?> now = told(author, gear);
    assertEquals(3, Told.list(now, "document", "readings").size());
    assertEquals("Metered head", Told.at(now, "document", "readings", 0, "head"));
    assertEquals(1, Told.number(now, "document", "readings", 2, "tenths"));
    Element form = form(place + "/change");
    assertEquals("8 + 0.1", form.expectFirst("#readings-2-metered").val());
    Map<String, String> emptied =
        Map.of("readings-1-metered", "", "readings-1-distance_m", "", "piece-name", "Renamed head");
    assertEquals(303, send(form, emptied).statusCode());
    Map<?, ?> renamed = told(author, gear);
    assertEquals(2, Told.list(renamed, "document", "readings").size());
    assertEquals("Renamed head", Told.at(renamed, "document", "readings", 1, "head"));
    assertEquals(1, Told.number(renamed, "document", "readings", 1, "tenths"));
  }

  @Test
  void whatIsWrongStandsAtItsFieldAndWhatWasTypedStands() {
    Element form = form(PAGES + "/new?kind=head");
    HttpResponse<String> wrong =
        send(
            form,
            Map.of(
                "piece-name", "",
                "piece-energy_ws", "many",
                "piece-output-kind", "reading",
                "piece-output-f_number", "900",
                "readings-1-metered", "soon",
                "readings-1-distance_m", "2",
                "condition-1-note", "When?"));
    assertEquals(422, wrong.statusCode());
    Document again = Jsoup.parse(wrong.body());
    for (String field :
        List.of(
            "piece-name",
            "piece-energy_ws",
            "piece-output-f_number",
            "piece-output-distance_m",
            "readings-1-metered",
            "condition-1-date")) {
      assertFalse(again.select(".errors a[href=#" + field + "]").isEmpty(), field);
      assertFalse(again.select("#" + field + "-error").isEmpty(), field);
    }
    assertEquals("many", again.expectFirst("#piece-energy_ws").val());
    assertEquals("reading", chosen(again.expectFirst("#piece-output-kind")));
  }

  @Test
  void whatTheFormDoesNotAskStaysWithAllItsDigits() {
    Map<String, Object> box = octagon("Exact box");
    box = GearForTests.withPiece(box, "face", Map.of("shape", "disc", "diameter_m", 1.23456));
    String gear = kept(author, GEAR, box);
    String place = PAGES + "/" + id(gear);
    Map<?, ?> before = (Map<?, ?>) Told.at(told(author, gear), "document", "modifier", "face");
    assertEquals(303, send(form(place + "/change"), Map.of("piece-note", "Heavy.")).statusCode());
    Map<?, ?> now = told(author, gear);
    assertEquals(before, Told.at(now, "document", "modifier", "face"));
    assertEquals("Heavy.", Told.at(now, "document", "modifier", "note"));
  }

  @Test
  void whoSavesSecondIsToldOnceAndMayKeepTheirsOverIt() {
    String gear = kept(author, GEAR, head("Shared head", 50));
    String place = PAGES + "/" + id(gear);
    Element mine = form(place + "/change");
    assertEquals(303, send(form(place + "/change"), Map.of("piece-note", "Theirs")).statusCode());
    HttpResponse<String> late = send(mine, Map.of("piece-note", "Mine"));
    assertEquals(412, late.statusCode());
    Document again = Jsoup.parse(late.body());
    assertTrue(again.select(".errors").text().contains("since you opened it"));
    assertEquals("Mine", again.expectFirst("#piece-note").val());
    assertEquals(303, send(again.expectFirst("form.gear-form"), Map.of()).statusCode());
    assertEquals("Mine", Told.at(told(author, gear), "document", "head", "note"));
  }

  @Test
  void gearIsRetiredUnlessAKitTakesItAndItsRevisionsAreKept() {
    String gear = kept(author, GEAR, head("Old head", 50));
    String place = PAGES + "/" + id(gear);
    String kit = kept(author, KITS, kitOf("Takes it", gear));
    HttpResponse<String> held = retire(place);
    assertEquals(409, held.statusCode());
    assertTrue(Jsoup.parse(held.body()).select(".errors").text().contains("Takes it"));
    assertEquals(204, author.with("If-Match", "\"1\"").delete(kit).statusCode());
    assertEquals(PAGES, place(retire(place)));
    assertEquals(404, browser.get(place).statusCode());
  }

  private HttpResponse<String> retire(String place) {
    Element removal = page(browser.get(place + "/change")).expectFirst(".removal form");
    return browser.postForm(
        removal.attr("action"),
        removal.select("input").stream()
            .map(field -> field.attr("name") + "=" + field.val())
            .collect(Collectors.joining("&")));
  }

  @Test
  void onlyAuthorsAndOwnersComeToTheForms() {
    String gear = kept(author, GEAR, head("Closed head", 50));
    String place = PAGES + "/" + id(gear);
    for (String who : List.of("crew", "reader")) {
      Visitor member = house.signedIn(who + "@demo.example");
      assertEquals(403, member.get(place + "/change").statusCode(), who);
      assertEquals(403, member.get(PAGES + "/new").statusCode(), who);
      assertTrue(page(member.get(place)).select("a[href$=/change]").isEmpty(), who);
      assertTrue(page(member.get(PAGES)).select("a[href*=/new]").isEmpty(), who);
    }
  }
}
