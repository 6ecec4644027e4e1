package lampwright.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import lampwright.TestHouse;
import lampwright.Told;
import lampwright.Visitor;
import lampwright.people.AuditAction;
import lampwright.people.AuditKind;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.extension.RegisterExtension;

/** What was acknowledged stands in the audit trail, and what was refused does not. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class AuditOverRestTest {

  private static final String STUDIO = "/api/studios/demo";
  private static final String AUDIT = STUDIO + "/audit";

  @RegisterExtension static final TestHouse house = TestHouse.withDemo();

  /**
   * As {@link EveryKindOfThing} writes them; a change of shared gear changes the kits that use it.
   */
  private static final String DEEDS =
      """
      made kit
      changed kit
      made kit
      deleted kit
      made gear
      made kit
      changed gear
      changed kit
      made gear
      deleted gear
      made location
      changed location
      made location
      deleted location
      made setup
      changed setup
      changed setup
      changed setup
      deleted setup
      restored setup
      changed setup
      made picture
      changed picture
      made picture
      made picture
      deleted picture
      made take
      changed take
      made take
      deleted take
      made take
      made note
      changed note
      made note
      deleted note
      made setup
      made setup
      deleted setup
      made trail
      changed trail
      made trail
      deleted trail
      """;

  private Visitor owner;
  private Visitor crew;
  private long before;
  private Map<String, String> made = Map.of();
  private List<Object> all = List.of();

  @BeforeAll
  void everyKindOfThingIsMade() {
    owner = house.withToken("owner@demo.example");
    crew = house.withToken("crew@demo.example");
    before = newest();
    made = new EveryKindOfThing(STUDIO, owner, crew).make();
    all = since(before, "");
  }

  private long newest() {
    return Math.round(
        Told.number(Visitor.items(owner.get(AUDIT + "?limit=1")).getFirst(), "number"));
  }

  /** All lines since, the oldest first. */
  private List<Object> since(long number, String query) {
    List<Object> lines = new ArrayList<>();
    String address = AUDIT + "?limit=20" + query;
    while (!address.isEmpty()) {
      HttpResponse<String> answer = owner.get(address);
      assertEquals(200, answer.statusCode(), answer.body());
      for (Object line : Visitor.items(answer)) {
        if (Told.number(line, "number") > number) {
          lines.addFirst(line);
        }
      }
      String link = answer.headers().firstValue("Link").orElse("<>");
      address = link.substring(1, link.indexOf('>'));
    }
    return lines;
  }

  private static String deed(Object line) {
    return Told.at(line, "action") + " " + Told.at(line, "kind");
  }

  @Test
  void everyAcknowledgedWriteHasItsLineInTheOrderOfTheWrites() {
    assertEquals(DEEDS.lines().toList(), all.stream().map(AuditOverRestTest::deed).toList());
    Set<Object> people =
        all.stream().map(line -> Told.at(line, "by", "id")).collect(Collectors.toSet());
    assertEquals(Set.of(EveryKindOfThing.person(owner), EveryKindOfThing.person(crew)), people);
  }

  @Test
  void aLineNamesTheThingAsItWasCalledThen() {
    String setup = String.valueOf(made.get("setup"));
    String id = setup.substring(setup.lastIndexOf('/') + 1);
    List<Object> lines = since(before, "&subject=" + id);
    assertEquals(7, lines.size());
    assertEquals("Rope and rain", Told.at(lines.getFirst(), "subject", "name"));
    assertEquals(7.0, Told.number(lines.getLast(), "detail", "revision"));
    List<Object> kits = since(before, "&kind=kit");
    assertEquals("The van", Told.at(kits.get(0), "subject", "name"));
    assertEquals("The van, new", Told.at(kits.get(1), "subject", "name"));
    List<Object> takes = since(before, "&kind=take");
    assertEquals("Rope and rain", Told.at(takes.getFirst(), "subject", "name"));
  }

  @Test
  void whatWasRefusedHasNone() {
    long last = newest();
    Visitor reader = house.withToken("reader@demo.example");
    String document = Documents.json(Documents.setup("Refused"));
    String setups = STUDIO + "/setups";
    String setup = String.valueOf(made.get("child"));
    assertEquals(403, reader.post(setups, document).statusCode());
    assertEquals(422, owner.post(setups, "{}").statusCode());
    assertEquals(412, owner.with("If-Match", "\"9\"").put(setup, document).statusCode());
    assertEquals(428, owner.delete(setup).statusCode());
    assertEquals(404, owner.with("If-Match", "\"1\"").delete(setups + "/zzzz").statusCode());
    assertEquals(last, newest());
  }

  @Test
  void noLineHoldsWhatSomebodyWroteOrAnyonesAddress() {
    String told = owner.get(AUDIT + "?limit=100").body();
    for (String never :
        List.of("Fog", "Bring rope", "@demo.example", "harbour office", "The quay")) {
      assertFalse(told.contains(never), never);
    }
  }

  @Test
  void onlyOwnersReadIt() {
    for (String email : List.of("author", "crew", "reader")) {
      Visitor other = house.withToken(email + "@demo.example");
      assertEquals(403, other.get(AUDIT).statusCode(), email);
      assertEquals(403, other.get("/studios/demo/audit").statusCode(), email);
    }
    assertEquals(404, owner.get("/api/studios/elsewhere/audit").statusCode());
  }

  @Test
  void itIsFilteredByWhoWhatAndWhen() {
    String person = EveryKindOfThing.person(crew);
    List<Object> crews = since(before, "&person=" + person + "&kind=note");
    assertEquals(
        List.of("made note", "changed note"), crews.stream().map(AuditOverRestTest::deed).toList());
    Object at = Told.at(crews.getFirst(), "at");
    assertTrue(since(before, "&until=" + at).stream().noneMatch(crews::contains));
    assertTrue(since(before, "&from=" + at).contains(crews.getFirst()));
    assertEquals(List.of(), since(before, "&from=2999-01-01T00:00:00Z"));
  }

  @Test
  void whatWasDoneToASetupIsToldWithWhatHangsOnIt() {
    String place = String.valueOf(made.get("setup"));
    String id = place.substring(place.lastIndexOf('/') + 1);
    List<String> kinds =
        since(before, "&setup=" + id).stream()
            .map(line -> String.valueOf(Told.at(line, "kind")))
            .distinct()
            .toList();
    assertEquals(List.of("setup", "picture", "take", "note"), kinds);
    Visitor visitor = house.signedIn("owner@demo.example");
    String page = place.substring("/api".length());
    String way = "/studios/demo/audit?setup=" + id;
    assertEquals(1, Jsoup.parse(visitor.get(page).body()).select("a[href=" + way + "]").size());
    Document audit = Jsoup.parse(visitor.get(way).body());
    assertTrue(audit.select(".audit-only").text().contains("“Rope and rain"), audit.text());
    assertEquals(id, audit.select("input[name=setup]").attr("value"));
    assertTrue(audit.select("a[href=" + page + "]").size() == 1);
    assertTrue(audit.select(".audit li p").eachText().getLast().endsWith(" made the setup"));
    Visitor author = house.signedIn("author@demo.example");
    assertTrue(Jsoup.parse(author.get(page).body()).select("a[href*=/audit]").isEmpty());
  }

  @Test
  void aFirstRevisionIsNotWorthAWord() {
    Document page =
        Jsoup.parse(house.signedIn("owner@demo.example").get("/studios/demo/audit").body());
    assertFalse(page.select(".audit").text().contains("revision 1 "), page.text());
    assertTrue(page.select(".audit .known").eachText().contains("revision 2"));
  }

  @Test
  void signingInAndTokensConcernTheAccountAndNobodyElseReadsThem() throws Exception {
    Visitor author = house.signedInByPassword("author@demo.example");
    String id = EveryKindOfThing.person(author);
    HttpResponse<String> token = author.post("/api/tokens", "{\"name\":\"the meter\"}");
    author.delete("/api/tokens/" + Visitor.object(token).get("id"));
    author.delete("/api/session");
    assertEquals(401, house.signIn("author@demo.example", "not this one").statusCode());
    assertEquals(401, house.signIn("nobody@demo.example", "not this one").statusCode());
    List<String> told =
        house
            .database()
            .sqlAsSuperuser(
                "select action || ' ' || kind from lampwright.audit_entry where studio_id is null"
                    + " and person_id = '"
                    + id
                    + "' order by seq");
    assertEquals(
        List.of(
            "signed_in account",
            "made token",
            "revoked token",
            "signed_out account",
            "sign_in_failed account"),
        told.subList(told.size() - 5, told.size()));
    assertTrue(since(0, "&kind=account").isEmpty() && since(0, "&kind=token").isEmpty());
  }

  @Test
  void whoTakesTheStudioOutIsTold() {
    long last = newest();
    assertEquals(200, owner.bytes(STUDIO + "/archive").statusCode());
    assertEquals(
        List.of("taken_out archive"),
        since(last, "").stream().map(AuditOverRestTest::deed).toList());
  }

  @Test
  void thePageSaysItInSentencesDayByDay() {
    Visitor visitor = house.signedIn("owner@demo.example");
    Document page = Jsoup.parse(visitor.get("/studios/demo/audit?kind=trail").body());
    List<String> said = page.select(".audit li p").eachText();
    assertTrue(
        said.getFirst().endsWith(" took the trail “Given up” away revision 2"), said.toString());
    assertEquals(1, page.select(".audit-day h2").size());
    Document german =
        Jsoup.parse(
            visitor.with("Accept-Language", "de").get("/studios/demo/audit?kind=trail").body());
    assertTrue(german.select(".audit li p").text().contains("hat den Lehrpfad „Given up“"));
    assertEquals(422, visitor.get("/studios/demo/audit?from=yesterday").statusCode());
    assertTrue(
        Jsoup.parse(visitor.get("/studios/demo/people").body())
                .select("a[href=/studios/demo/audit]")
                .size()
            == 1);
  }

  /** Whatever the database's triggers write can be said. */
  @Test
  void theCodeKnowsEveryKindAndActionThatTheTriggersName() throws Exception {
    for (String arguments :
        house
            .database()
            .sqlAsSuperuser(
                "select encode(tgargs, 'escape') from pg_trigger"
                    + " where tgfoid = 'lampwright.audit'::regproc")) {
      String[] parts = arguments.split("\\\\000", -1);
      assertTrue(AuditKind.find(parts[0]).isPresent(), arguments);
      assertTrue(parts.length < 5 || AuditAction.find(parts[3]).isPresent(), arguments);
    }
  }
}
