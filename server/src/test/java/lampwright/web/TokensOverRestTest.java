package lampwright.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.URLEncoder;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.sql.SQLException;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import lampwright.RouteWalk;
import lampwright.TestHouse;
import lampwright.Told;
import lampwright.Visitor;
import lampwright.people.PersonId;
import lampwright.people.Role;
import lampwright.people.StudioId;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a token can be made to do less than its person, tried against what each role may do. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class TokensOverRestTest {

  private static final String STUDIO = "/api/studios/demo";

  @RegisterExtension static final TestHouse house = TestHouse.withDemo();

  private Visitor owner;
  private StudioId second = new StudioId("none");
  private String draft = "";

  @BeforeAll
  void anOwnerOfTwoStudiosHasADraft() {
    owner = house.signedIn("owner@demo.example");
    PersonId person = Newcomer.ownerOfTheDemo(house);
    second = house.database().newStudio(person);
    HttpResponse<String> made =
        owner.post(STUDIO + "/setups", Documents.json(Documents.setup("Quince under tarpaulin")));
    draft = made.headers().firstValue("Location").orElseThrow();
  }

  private HttpResponse<String> ask(String bounds) {
    return owner.post("/api/tokens", "{\"name\":\"a test\"" + bounds + "}");
  }

  private Visitor program(String bounds) {
    HttpResponse<String> made = ask(bounds);
    assertEquals(201, made.statusCode(), made.body());
    return with(made);
  }

  private static Visitor with(HttpResponse<String> made) {
    return house.visitor().with("Authorization", "Bearer " + Visitor.object(made).get("token"));
  }

  private Visitor atMost(Role role) {
    return program(",\"at_most\":\"" + role.word() + "\"");
  }

  @ParameterizedTest
  @EnumSource(Role.class)
  void anOwnersTokenWithACeilingIsAnsweredAsAMemberOfThatRoleOnEveryRoute(Role role) {
    Visitor program = atMost(role);
    Visitor member = house.withToken(role.word() + "@demo.example");
    List<String> different = new ArrayList<>();
    int refused = 0;
    for (RouteWalk.Step step : RouteWalk.of(house)) {
      if (!step.template().startsWith("/api/studios/{studio}")
          || step.template().endsWith("/index/rebuild")) {
        continue;
      }
      String path = step.path("zzzz").replace("/studios/zzzz", "/studios/demo");
      int expected = send(member, step, path).statusCode();
      int actual = send(program, step, path).statusCode();
      refused += actual == 403 ? 1 : 0;
      if (expected != actual) {
        different.add(step + ": " + actual + " and not " + expected);
      }
    }
    assertEquals(List.of(), different);
    assertEquals(role == Role.OWNER, refused == 0, refused + " refused");
  }

  private static HttpResponse<String> send(Visitor who, RouteWalk.Step step, String path) {
    return who.send(step.verb(), path, BodyPublishers.noBody());
  }

  @Test
  void aTokenAtMostReaderOfAnOwnerReadsWhatAReaderReads() {
    Visitor program = atMost(Role.READER);
    Visitor reader = house.withToken("reader@demo.example");
    assertEquals(404, program.get(draft).statusCode());
    assertEquals(200, owner.get(draft).statusCode());
    for (String path :
        List.of(
            "/setups?limit=100",
            "/setups?q=tarpaulin",
            "/setups?facets=mood,state,author,lights&limit=1",
            "/suggestions?q=quin",
            "/builds",
            "/trails",
            "/kits",
            "/locations")) {
      assertEquals(reader.get(STUDIO + path).body(), program.get(STUDIO + path).body(), path);
    }
    String search = STUDIO + "/setups?q=tarpaulin";
    assertNotEquals(
        Visitor.object(program.get(search)).get("total"),
        Visitor.object(owner.get(search)).get("total"));
    assertTrue(program.get("/api/studios").body().contains("\"role\":\"reader\""));
  }

  @Test
  void aCeilingRaisesNobody() {
    HttpResponse<String> made =
        house
            .signedIn("crew@demo.example")
            .post("/api/tokens", "{\"name\":\"a test\",\"at_most\":\"owner\"}");
    assertEquals(403, with(made).post(STUDIO + "/setups", "{}").statusCode());
  }

  @Test
  void aTokenForOneStudioKnowsOfNoOther() {
    Visitor program = program(",\"studio\":\"" + second.text() + "\"");
    assertEquals(404, program.get(STUDIO + "/setups").statusCode());
    assertEquals(404, program.post(STUDIO + "/setups", "{}").statusCode());
    assertEquals(200, program.get("/api/studios/" + second.text() + "/setups").statusCode());
    List<?> studios = Visitor.items(program.get("/api/studios"));
    assertEquals(1, studios.size());
    assertEquals(second.text(), Told.at(studios.getFirst(), "id"));
  }

  @Test
  void aTokenEndsByItself() throws SQLException {
    HttpResponse<String> made = ask(",\"days\":7");
    Map<?, ?> told = Visitor.object(made);
    Instant end = Instant.parse(String.valueOf(told.get("expires_at")));
    assertEquals(
        Duration.ofDays(7),
        Duration.between(Instant.parse(String.valueOf(told.get("created_at"))), end));
    Visitor program = with(made);
    assertEquals(200, program.get("/api/studios").statusCode());
    // A week passes for this token only.
    house
        .database()
        .sqlAsSuperuser(
            "update lampwright.token set expires_at = expires_at - interval '7 days' where id = '"
                + told.get("id")
                + "'");
    assertEquals(401, program.get("/api/studios").statusCode());
    assertTrue(owner.get("/api/tokens").body().contains("\"" + told.get("id") + "\""));
  }

  @Test
  void aListTellsTheBoundsAndTheLastUseAndNoSecret() {
    HttpResponse<String> made = ask(",\"at_most\":\"crew\",\"studio\":\"demo\",\"days\":30");
    Map<?, ?> told = Visitor.object(made);
    with(made).get("/api/studios");
    HttpResponse<String> list = owner.get("/api/tokens");
    Map<?, ?> listed =
        Visitor.items(list).stream()
            .map(one -> (Map<?, ?>) one)
            .filter(one -> Told.at(one, "id").equals(Told.at(told, "id")))
            .findFirst()
            .orElseThrow();
    assertEquals("crew", listed.get("at_most"));
    assertEquals("demo", listed.get("studio"));
    assertEquals(told.get("expires_at"), listed.get("expires_at"));
    assertTrue(listed.containsKey("last_used_at"));
    assertFalse(list.body().contains(String.valueOf(told.get("token"))));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        ",\"studio\":\"zzzz9zzzz9zzzz9z\"",
        ",\"studio\":\"No id\"",
        ",\"at_most\":\"emperor\"",
        ",\"days\":0",
        ",\"days\":367",
        ",\"days\":1.5",
        ",\"scope\":\"all\""
      })
  void aBoundThatThereIsNotMakesNoToken(String bounds) {
    int before = Visitor.items(owner.get("/api/tokens")).size();
    assertEquals(422, ask(bounds).statusCode());
    assertEquals(before, Visitor.items(owner.get("/api/tokens")).size());
  }

  @Test
  void aTokenMakesShowsAndRevokesNoTokens() {
    Visitor program = program("");
    assertEquals(403, program.post("/api/tokens", "{\"name\":\"another\"}").statusCode());
    assertEquals(403, program.get("/api/tokens").statusCode());
    assertEquals(403, program.get("/account/tokens").statusCode());
    assertEquals(403, program.delete("/api/tokens/zzzz").statusCode());
  }

  @Test
  void aTokenIsMadeOnAPageShownOnceAndRevoked() {
    Visitor me = Newcomer.to(house, "Idris Calloway", Role.CREW).signedIn();
    Document page = Jsoup.parse(me.get("/account/tokens").body());
    String csrf =
        URLEncoder.encode(
            page.select("main input[name=csrf]").attr("value"), StandardCharsets.UTF_8);
    String form = "csrf=" + csrf + "&at_most=reader&studio=demo&days=30&name=";
    assertEquals(422, me.postForm("/account/tokens", form).statusCode());
    assertEquals(
        422, me.postForm("/account/tokens", form.replace("=30", "=31") + "x").statusCode());
    HttpResponse<String> made = me.postForm("/account/tokens", form + "packing+list");
    assertEquals(200, made.statusCode());
    assertEquals("no-store", made.headers().firstValue("Cache-Control").orElseThrow());
    Document shown = Jsoup.parse(made.body());
    String secret = shown.select(".token-secret code").text();
    Visitor program = house.visitor().with("Authorization", "Bearer " + secret);
    assertTrue(program.get("/api/studios").body().contains("\"role\":\"reader\""));
    String example = shown.select(".token-example code").text();
    assertTrue(example.endsWith(house.visitor().address("/api/studios").toString()), example);
    Document later = Jsoup.parse(me.get("/account/tokens").body());
    assertFalse(later.text().contains(secret));
    assertTrue(later.select(".token-list").text().contains("packing list"));
    String revoke = later.select(".token-list form").attr("action");
    assertEquals(303, me.postForm(revoke, "csrf=" + csrf).statusCode());
    assertEquals(401, program.get("/api/studios").statusCode());
  }
}
