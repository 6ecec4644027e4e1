package lampwright.web;

import static lampwright.web.GearForTests.GEAR;
import static lampwright.web.GearForTests.KITS;
import static lampwright.web.GearForTests.head;
import static lampwright.web.GearForTests.id;
import static lampwright.web.GearForTests.kept;
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
import java.util.stream.Stream;
import lampwright.TestHouse;
import lampwright.Told;
import lampwright.Visitor;
import lampwright.people.Permission;
import lampwright.people.Role;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.extension.RegisterExtension;

/** The pages of kits, gear and people in a browser without scripts. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class KitPagesTest {

  private static final String STUDIO = "/studios/demo";

  @RegisterExtension static final TestHouse house = TestHouse.withDemo();

  private Visitor author;
  private Visitor browser;
  private Visitor reader;

  @BeforeAll
  void theMembersSignIn() {
    author = house.withToken("author@demo.example");
    browser = house.signedIn("author@demo.example").with("X-CSRF-Token", "");
    reader = house.signedIn("reader@demo.example").with("X-CSRF-Token", "");
  }

  private static Document page(HttpResponse<String> answer) {
    assertEquals(200, answer.statusCode(), answer.body());
    return Jsoup.parse(answer.body());
  }

  private static String filled(Element form, Map<String, String> typed) {
    Map<String, String> fields = new LinkedHashMap<>();
    form.select("input, textarea").forEach(field -> fields.put(field.attr("name"), field.val()));
    fields.putAll(typed);
    return fields.entrySet().stream()
        .map(of -> of.getKey() + "=" + URLEncoder.encode(of.getValue(), StandardCharsets.UTF_8))
        .collect(Collectors.joining("&"));
  }

  private static HttpResponse<String> send(Visitor who, Element form, Map<String, String> typed) {
    return who.postForm(form.attr("action"), filled(form, typed));
  }

  private Element newForm() {
    return page(browser.get(STUDIO + "/kits/new")).expectFirst("form.form");
  }

  private static String place(HttpResponse<String> answer) {
    assertEquals(303, answer.statusCode(), answer.body());
    return URI.create(answer.headers().firstValue("Location").orElseThrow()).getPath();
  }

  @Test
  void aKitIsMadeOfTheStudiosGearByAFormAndIsThatKitForPrograms() {
    String gear = kept(author, GEAR, Documents.with(head("Lent head <1>", 50), "count", 3.0));
    String place =
        place(
            send(
                browser,
                newForm(),
                Map.of("name", "Two of <three>", "note", "For the quay", "gear-" + id(gear), "2")));
    Document page = page(browser.get(place));
    assertEquals("Two of <three>", page.expectFirst("h1").text());
    assertTrue(page.text().contains("2 × Lent head <1>"), page.text());
    assertTrue(page.text().contains("800 W·s"), page.text());
    assertEquals(1, page.select("a[href=" + STUDIO + "/gear/" + id(gear) + "]").size());
    Map<?, ?> kit = told(author, "/api" + place);
    assertEquals("For the quay", Told.at(kit, "document", "note"));
    assertEquals(2, Told.number(kit, "document", "gear", 0, "count"));
    String makes = page.expectFirst("a:containsOwn(Setups that it makes)").attr("href");
    assertEquals(200, browser.get(makes).statusCode());
  }

  @Test
  void aFormThatIsWrongSaysWhereAndKeepsWhatWasTyped() {
    String gear = kept(author, GEAR, head("Counted head", 50));
    HttpResponse<String> wrong =
        send(browser, newForm(), Map.of("name", "Kept words", "gear-" + id(gear), "two"));
    assertEquals(422, wrong.statusCode());
    Document again = Jsoup.parse(wrong.body());
    assertEquals("Kept words", again.expectFirst("#name").val());
    assertEquals("two", again.expectFirst("#gear-" + id(gear)).val());
    assertEquals(1, again.select(".errors a[href=#gear-" + id(gear) + "]").size());
    assertEquals(422, send(browser, newForm(), Map.of("name", " ")).statusCode());
  }

  @Test
  void whatIsWrittenOutInAKitStaysWhenItsGearIsChangedByTheForm() {
    String gear = kept(author, GEAR, head("Added head", 50));
    String kit = kept(author, KITS, Documents.kit("Written out"));
    String page = kit.substring("/api".length());
    Element form = page(browser.get(page + "/change")).expectFirst("form.form");
    Object before = Told.at(told(author, kit), "document", "heads");
    place(send(browser, form, Map.of("gear-" + id(gear), "1")));
    assertEquals(before, Told.at(told(author, kit), "document", "heads"));
    assertEquals(id(gear), Told.at(told(author, kit), "document", "gear", 0, "id"));

    HttpResponse<String> late = send(browser, form, Map.of("name", "Too late"));
    assertEquals(412, late.statusCode());
    assertEquals("Too late", Jsoup.parse(late.body()).expectFirst("#name").val());
    assertEquals("Written out", Told.at(told(author, kit), "document", "name"));

    Element removal = page(browser.get(page + "/change")).expectFirst("form[action$=removal]");
    assertEquals(STUDIO + "/kits", place(send(browser, removal, Map.of())));
    assertEquals(404, browser.get(page).statusCode());
  }

  @Test
  void aReaderSeesKitsAndGearAndChangesNone() {
    String kit = kept(author, KITS, Documents.kit("Only looked at")).substring("/api".length());
    assertTrue(page(reader.get(STUDIO + "/kits")).select("a[href$=/kits/new]").isEmpty());
    assertTrue(page(reader.get(kit)).select("a[href$=change]").isEmpty());
    assertEquals(403, reader.get(kit + "/change").statusCode());
    String csrf = page(reader.get(STUDIO + "/kits")).expectFirst("input[name=csrf]").val();
    String body = "name=Mine&revision=1&csrf=" + csrf;
    assertEquals(403, reader.postForm(kit + "/change", body).statusCode());
    assertEquals(403, reader.postForm(kit + "/removal", body).statusCode());
    assertEquals(403, reader.postForm(STUDIO + "/kits/new", body).statusCode());
    assertEquals(403, browser.postForm(kit + "/removal", "revision=1").statusCode());
    assertEquals(200, browser.get(kit).statusCode());
  }

  @Test
  void gearShowsItsReadingsBesideTheFitAndAdoptsThemByAButton() {
    String name = "Metered on its page";
    List<Map<String, Object>> readings =
        Stream.of(List.of(32.0, 2.0, 0.0), List.of(16.0, 4.0, 0.0), List.of(11.0, 2.0, 3.0))
            .map(
                one ->
                    Map.<String, Object>of(
                        "head",
                        name,
                        "f_number",
                        one.get(0),
                        "distance_m",
                        one.get(1),
                        "stops_down",
                        one.get(2)))
            .toList();
    String gear = kept(author, GEAR, Documents.with(head(name, 76), "readings", readings));
    String path = gear.substring("/api".length());
    Document page = page(browser.get(path));
    assertEquals(3, page.select(".figures-table tbody tr").size());
    // f/32 at 2 m is a guide number of 64, to the scatter of marks.
    double guideNumber = Double.parseDouble(page.expectFirst(".figures dd").ownText().strip());
    assertEquals(64, guideNumber, 1.5);
    assertTrue(page(reader.get(path)).select("form[action$=calibration]").isEmpty());
    Element adopt = page.expectFirst("form[action$=calibration]");
    assertEquals(path, place(send(browser, adopt, Map.of())));
    assertTrue(page(browser.get(path)).expectFirst(".lead").text().contains("metered"));
    assertEquals(412, send(browser, adopt, Map.of()).statusCode());
    assertTrue(page(browser.get(STUDIO + "/gear")).text().contains("3 readings"));
  }

  @Test
  void thePeopleOfAStudioSeeWhoTheyAreAndWhatEachRoleMayDo() {
    Document page = page(reader.get(STUDIO + "/people"));
    assertEquals(1, page.select(".people .known").size());
    assertFalse(page.text().contains("@demo.example"));
    for (Permission permission : Permission.values()) {
      Element row =
          page.select(".roles tbody tr").get(List.of(Permission.values()).indexOf(permission));
      List<Boolean> may = row.select("td span").stream().map(mark -> mark.hasClass("may")).toList();
      assertEquals(Stream.of(Role.values()).map(role -> role.may(permission)).toList(), may);
    }
    String other = "/studios/zzzz9zzzz9zzzz9z";
    for (String room : List.of("/people", "/kits", "/gear", "/archive")) {
      assertEquals(404, reader.get(other + room).statusCode(), room);
    }
  }
}
