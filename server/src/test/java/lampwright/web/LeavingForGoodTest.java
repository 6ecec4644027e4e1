package lampwright.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.URLEncoder;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.sql.SQLException;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import lampwright.TestHouse;
import lampwright.Told;
import lampwright.Visitor;
import lampwright.people.Asker;
import lampwright.people.PersonId;
import lampwright.people.Role;
import lampwright.people.StudioId;
import lampwright.store.Members;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.extension.RegisterExtension;

/** Somebody leaves, and what they wrote stays. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class LeavingForGoodTest {

  private static final String STUDIO = "/api/studios/demo";
  private static final String NAMELESS = "a former member";

  /** What people wrote names them for ever, by an id that tells nothing. */
  private static final Set<String> WROTE =
      Set.of("created_by", "changed_by", "decided_by", "judged_by");

  @RegisterExtension static final TestHouse house = TestHouse.withDemo();

  private Visitor owner;

  @BeforeAll
  void somebodyStays() {
    owner = house.withToken("owner@demo.example");
  }

  private static HttpResponse<String> leave(Visitor who, String password, String names) {
    return who.with("Content-Type", "application/json")
        .send(
            "DELETE",
            "/api/account",
            BodyPublishers.ofString(
                "{\"password\":\"%s\",\"names\":\"%s\"}".formatted(password, names)));
  }

  private static String setup(Visitor who, String title) {
    HttpResponse<String> made =
        who.post(STUDIO + "/setups", Documents.json(Documents.setup(title)));
    assertEquals(201, made.statusCode(), made.body());
    return made.headers().firstValue("Location").orElseThrow();
  }

  private Object total(String author) {
    String filter = URLEncoder.encode("author " + author, StandardCharsets.UTF_8);
    HttpResponse<String> found = owner.get(STUDIO + "/setups?limit=1&filter=" + filter);
    assertEquals(200, found.statusCode(), found.body());
    return Told.at(Visitor.object(found), "total");
  }

  private String authorsOfTheArchive() throws IOException {
    byte[] zip = owner.bytes(STUDIO + "/archive").body();
    return new String(
        UnpackedBag.entries(zip).get("studio-demo/data/archive.json"), StandardCharsets.UTF_8);
  }

  @Test
  void whoLeavesComesInNoMoreAndTheirNameStaysWhereTheyWantIt() throws Exception {
    Newcomer newcomer = Newcomer.to(house, "Wilmot Eskeland", Role.AUTHOR);
    Visitor me = newcomer.signedIn();
    String kept = setup(me, "Kept under a name");
    me.post(STUDIO + "/saved-searches", "{\"name\":\"Mine\",\"question\":\"q=a\"}");
    Object token = Visitor.object(me.post("/api/tokens", "{\"name\":\"script\"}")).get("token");
    Visitor program = house.visitor().with("Authorization", "Bearer " + token);
    assertEquals(200, program.get("/api/studios").statusCode());
    HttpResponse<String> left = leave(me, Newcomer.PASSWORD, "keep");
    assertEquals(204, left.statusCode(), left.body());
    assertEquals(401, me.get("/api/session").statusCode());
    assertEquals(401, program.get("/api/studios").statusCode());
    assertEquals(401, house.signIn(newcomer.email(), Newcomer.PASSWORD).statusCode());
    assertEquals("Wilmot Eskeland", Visitor.object(owner.get(kept)).get("changed_by"));
    assertEquals(1.0, total("Wilmot Eskeland"));
    assertTrue(authorsOfTheArchive().contains("Wilmot Eskeland"));
    assertEquals(List.of(), leftBehind(newcomer));
    assertEquals(
        List.of("null"),
        house
            .database()
            .sqlAsSuperuser(
                "select coalesce(email, password_hash, language) from lampwright.person where id ="
                    + " '%s' and left_at is not null".formatted(newcomer.id())));
  }

  @Test
  void whoWantsNoNameIsNamelessInPagesSearchesAndArchives() throws Exception {
    Newcomer newcomer = Newcomer.to(house, "Ottoline Vance", Role.AUTHOR);
    Visitor me = newcomer.signedIn();
    String written = setup(me, "Written by somebody");
    String told = setup(owner, "After an idea of Ottoline Vance");
    assertEquals(1.0, total("Ottoline Vance"));
    Object before = total(NAMELESS);
    assertEquals(204, leave(me, Newcomer.PASSWORD, "nameless").statusCode());
    assertEquals(NAMELESS, Visitor.object(owner.get(written)).get("changed_by"));
    assertEquals(0.0, total("Ottoline Vance"));
    assertNotEquals(before, total(NAMELESS));
    Object facets = Told.at(Visitor.object(owner.get(STUDIO + "/setups?facets=author")), "facets");
    assertFalse(facets.toString().contains("Ottoline"), facets.toString());
    assertTrue(facets.toString().contains(NAMELESS), facets.toString());
    assertFalse(authorsOfTheArchive().contains("Ottoline"));
    String page = written.substring("/api".length());
    Visitor reading = house.signedIn("owner@demo.example");
    assertFalse(reading.get(page).body().contains("Ottoline"));
    assertFalse(reading.get(page + "/revisions").body().contains("Ottoline"));
    String german = reading.with("Accept-Language", "de").get(page).body();
    assertTrue(german.contains("von einem früheren Mitglied"), german);
    assertFalse(german.contains(NAMELESS));
    // What people wrote into their texts is theirs.
    assertTrue(owner.get(told).body().contains("Ottoline Vance"));
    assertEquals(
        List.of(NAMELESS),
        house
            .database()
            .sqlAsSuperuser(
                "select name from lampwright.person where id = '" + newcomer.id() + "'"));
  }

  /** Rows that refer to somebody who left, but for what they wrote and that they were here. */
  private static List<String> leftBehind(Newcomer newcomer) throws SQLException {
    List<String> references =
        house
            .database()
            .sqlAsSuperuser(
                "select distinct c.conrelid::regclass || ' ' || a.attname from pg_constraint c join"
                    + " pg_attribute a on a.attrelid = c.conrelid and a.attnum = any (c.conkey)"
                    + " where c.contype = 'f' and c.confrelid in ('lampwright.person'::regclass,"
                    + " 'lampwright.member'::regclass) and a.atttypid = 'text'::regtype and"
                    + " a.attname <> 'studio_id'");
    Set<String> left = new TreeSet<>();
    for (String reference : references) {
      String[] part = reference.split(" ", -1);
      if (!WROTE.contains(part[1])
          && !part[0].endsWith("former_member")
          && !house
              .database()
              .sqlAsSuperuser(
                  "select 1 from %s where %s = '%s' limit 1"
                      .formatted(part[0], part[1], newcomer.id()))
              .isEmpty()) {
        left.add(reference);
      }
    }
    assertTrue(references.size() > 15, references.toString());
    return List.copyOf(left);
  }

  @Test
  void whoIsTheOnlyOwnerFindsAnotherFirst() {
    Newcomer newcomer = Newcomer.alone(house, "Casimir Holt");
    StudioId own = house.database().newStudio(newcomer.id());
    Visitor me = newcomer.signedIn();
    HttpResponse<String> refused = leave(me, Newcomer.PASSWORD, "keep");
    assertEquals(409, refused.statusCode());
    assertTrue(refused.body().contains("Studio " + own), refused.body());
    Document page = Jsoup.parse(me.get("/account/leaving").body());
    assertEquals(1, page.select("main a[href=/studios/" + own + "/people]").size());
    assertTrue(page.select("a[href=/account/leaving/question]").isEmpty());
    assertEquals(200, me.get("/api/session").statusCode());
    PersonId other = house.database().newPerson();
    house.database().join(own, newcomer.id(), other, Role.OWNER);
    assertEquals(204, leave(me, Newcomer.PASSWORD, "keep").statusCode());
    List<PersonId> owners =
        house
            .database()
            .open()
            .inStudio(own, Asker.whole(other), in -> new Members(in).listOwnersAndHold());
    assertEquals(List.of(other), owners);
  }

  @Test
  void theSameAddressIsSomebodyNewAfterwards() {
    Newcomer first = Newcomer.to(house, "Juno Albright", Role.AUTHOR);
    setup(first.signedIn(), "By the first of the two");
    assertEquals(204, leave(first.signedIn(), Newcomer.PASSWORD, "nameless").statusCode());
    Newcomer second =
        Newcomer.withAddress(
            house, "Juno Albright", first.email(), new PersonId(house.database().ids().next()));
    second.join(new StudioId("demo"), Newcomer.ownerOfTheDemo(house), Role.READER);
    Visitor again = second.signedIn();
    assertEquals(List.of(), Visitor.items(again.get("/api/tokens")));
    assertEquals(0.0, total("Juno Albright"));
    assertEquals("reader", Told.at(Visitor.items(again.get("/api/studios")).getFirst(), "role"));
  }

  @Test
  void aWrongPasswordIsRefusedAndSoonTooMany() {
    Visitor me = Newcomer.to(house, "Petra Lunde", Role.CREW).signedIn();
    HttpResponse<String> refused = leave(me, "not the password", "keep");
    assertEquals(422, refused.statusCode());
    assertTrue(refused.body().contains("\"/password\""), refused.body());
    assertEquals(422, leave(me, Newcomer.PASSWORD, "perhaps").statusCode());
    int status = 422;
    for (int i = 0; i < 10 && status == 422; i++) {
      status = leave(me, "guess " + i, "keep").statusCode();
    }
    assertEquals(429, status);
    assertEquals(200, me.get("/api/session").statusCode());
  }

  @Test
  void neitherProgramsNorTheMembersOfTheDemoLeave() {
    assertEquals(403, leave(owner, TestHouse.PASSWORD, "keep").statusCode());
    Visitor reader = house.signedIn("reader@demo.example");
    assertEquals(403, leave(reader, TestHouse.PASSWORD, "keep").statusCode());
    assertEquals(200, reader.get("/api/session").statusCode());
    Document page = Jsoup.parse(reader.get("/account/leaving").body());
    assertTrue(page.select("a[href=/account/leaving/question]").isEmpty());
    assertEquals(1, page.select("a[href=/api/account/data]").size());
  }

  @Test
  void thePageSaysWhatHappensAndAsksOnceMore() {
    Newcomer newcomer = Newcomer.to(house, "Lennox Fairweather", Role.CREW);
    Visitor me = newcomer.signedIn();
    Document first = Jsoup.parse(me.get("/account/leaving").body());
    String question = first.select("main a[href$=question]").attr("href");
    Document asked = Jsoup.parse(me.get(question).body());
    String text = asked.select("main").text();
    assertTrue(text.contains("It stays: Lennox Fairweather"), text);
    assertTrue(text.contains("You no longer belong to"), text);
    String csrf =
        URLEncoder.encode(
            asked.select("main input[name=csrf]").attr("value"), StandardCharsets.UTF_8);
    HttpResponse<String> wrong =
        me.postForm(question, "csrf=" + csrf + "&names=nameless&password=wrong");
    assertEquals(422, wrong.statusCode());
    Document again = Jsoup.parse(wrong.body());
    assertEquals("nameless", again.select("input[name=names][checked]").attr("value"));
    assertEquals(1, again.select(".errors a[href=#password]").size());
    String right = URLEncoder.encode(Newcomer.PASSWORD, StandardCharsets.UTF_8);
    HttpResponse<String> left =
        me.postForm(question, "csrf=" + csrf + "&names=keep&password=" + right);
    assertEquals(200, left.statusCode());
    assertTrue(Jsoup.parse(left.body()).select("h1").text().contains("You have left"));
    assertEquals(401, me.get("/api/session").statusCode());
    Set<String> members =
        Jsoup.parse(house.signedIn("owner@demo.example").get("/studios/demo/people").body())
            .select(".people tbody th")
            .stream()
            .map(cell -> cell.text())
            .collect(Collectors.toSet());
    assertFalse(members.contains("Lennox Fairweather"));
  }
}
