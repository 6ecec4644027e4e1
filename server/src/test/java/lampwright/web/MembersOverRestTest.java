package lampwright.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpResponse;
import java.util.Map;
import lampwright.TestHouse;
import lampwright.Told;
import lampwright.Visitor;
import lampwright.document.Json;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

/** Members, invitations, further studios and reset links, as programs and links meet them. */
class MembersOverRestTest {

  private static final String STUDIO = "/api/studios/demo";
  private static final String MEMBERS = STUDIO + "/members";
  private static final String INVITATIONS = STUDIO + "/invitations";
  private static final String CHOSEN = "three quiet lamps";

  @RegisterExtension static final TestHouse house = TestHouse.withDemo();

  private static Visitor owner() {
    return house.signedIn("owner@demo.example");
  }

  private static String invite(Visitor owner, String studio, String role) {
    HttpResponse<String> made =
        owner.post(
            "/api/studios/" + studio + "/invitations",
            "{\"role\":\"%s\",\"meant_for\":\"the new one\"}".formatted(role));
    assertEquals(201, made.statusCode(), made.body());
    return "/api" + Visitor.object(made).get("link");
  }

  private static String account(String email) {
    return Json.print(
        Map.of("account", Map.of("name", "Wim Fennel", "email", email, "password", CHOSEN)));
  }

  /** Somebody new in a studio, with the session that their invitation began. */
  private static Visitor arrive(Visitor owner, String studio, String role, String email) {
    HttpResponse<String> answer = house.visitor().post(invite(owner, studio, role), account(email));
    assertEquals(201, answer.statusCode(), answer.body());
    String cookie = answer.headers().firstValue("Set-Cookie").orElseThrow();
    return house
        .visitor()
        .with("Cookie", cookie.substring(0, cookie.indexOf(';')))
        .with("X-CSRF-Token", String.valueOf(Visitor.object(answer).get("csrf_token")));
  }

  private static String id(Visitor visitor) {
    return String.valueOf(Told.at(Visitor.object(visitor.get("/api/session")), "person", "id"));
  }

  @Test
  void membersAreNamedToAllAndTheirAddressesToOwnersOnly() {
    HttpResponse<String> toOwner = owner().get(MEMBERS);
    assertTrue(toOwner.body().contains("crew@demo.example"), toOwner.body());
    HttpResponse<String> toReader = house.withToken("reader@demo.example").get(MEMBERS);
    assertEquals(200, toReader.statusCode());
    assertFalse(toReader.body().contains("crew@demo.example"), toReader.body());
    assertTrue(toReader.body().contains("reader@demo.example"), "one's own");
    assertEquals(Visitor.items(toOwner).size(), Visitor.items(toReader).size());
  }

  @Test
  void anInvitationLetsOnePersonInOnceAndSignsThemIn() {
    Visitor owner = owner();
    String link = invite(owner, "demo", "crew");
    HttpResponse<String> offer = house.visitor().get(link);
    assertEquals(200, offer.statusCode());
    assertEquals("crew", Visitor.object(offer).get("role"));

    HttpResponse<String> weak =
        house.visitor().post(link, account("wim@light.example").replace(CHOSEN, "password1234"));
    assertEquals(422, weak.statusCode());
    assertTrue(weak.body().contains("tried first"), weak.body());
    HttpResponse<String> taken = house.visitor().post(link, account("reader@demo.example"));
    assertEquals(422, taken.statusCode());

    HttpResponse<String> came = house.visitor().post(link, account("Wim@Light.example"));
    assertEquals(201, came.statusCode(), came.body());
    assertEquals(201, house.signIn("wim@light.example", CHOSEN).statusCode());
    assertEquals(404, house.visitor().get(link).statusCode());
    assertEquals(404, house.visitor().post(link, account("wim2@light.example")).statusCode());
    assertEquals(401, house.signIn("wim2@light.example", CHOSEN).statusCode(), "nothing is left");
  }

  @Test
  void whoBelongsAlreadyLeavesTheLinkToSomebodyElse() {
    Visitor owner = owner();
    String link = invite(owner, "demo", "owner");
    Visitor reader = house.signedIn("reader@demo.example");
    assertEquals(409, reader.post(link, "{}").statusCode());
    assertEquals(401, house.visitor().post(link, "{}").statusCode());
    assertEquals(403, house.withToken("reader@demo.example").post(link, "{}").statusCode());
    assertEquals(200, house.visitor().get(link).statusCode());
    assertEquals("reader", Told.at(Visitor.object(reader.get("/api/studios")), "items", 0, "role"));
  }

  @Test
  void whatIsWithdrawnUnknownOrOfSomebodyWhoOwnsNothingMoreIsNotFoundAlike() {
    Visitor owner = owner();
    String withdrawn = invite(owner, "demo", "crew");
    String id = String.valueOf(Told.at(Visitor.object(owner.get(INVITATIONS)), "items", 0, "id"));
    assertEquals(403, house.withToken("author@demo.example").get(INVITATIONS).statusCode());
    assertEquals(204, owner.delete(INVITATIONS + "/" + id).statusCode());
    assertEquals(404, owner.delete(INVITATIONS + "/" + id).statusCode());

    Visitor second = arrive(owner, "demo", "owner", "second@light.example");
    String ofSecond = invite(second, "demo", "owner");
    HttpResponse<String> now = owner.get(MEMBERS + "/" + id(second));
    HttpResponse<String> lessened =
        owner
            .with("If-Match", now.headers().firstValue("ETag").orElseThrow())
            .put(MEMBERS + "/" + id(second), "{\"role\":\"author\"}");
    assertEquals(200, lessened.statusCode(), lessened.body());

    for (String link : new String[] {withdrawn, ofSecond, "/api/invitations/AAAA"}) {
      assertEquals(404, house.visitor().get(link).statusCode(), link);
      assertEquals(404, house.visitor().post(link, account("x@light.example")).statusCode(), link);
      assertEquals(404, house.visitor().get(link.substring("/api".length())).statusCode(), link);
    }
  }

  @Test
  void theLastOwnerCanNeitherLeaveNorBecomeLess() {
    Visitor owner = owner();
    HttpResponse<String> founded = owner.post("/api/studios", "{\"name\":\"Second light\"}");
    assertEquals(201, founded.statusCode(), founded.body());
    String one = "/api/studios/" + Visitor.object(founded).get("id") + "/members/" + id(owner);
    Visitor sure = owner.with("If-Match", "*");
    assertEquals(409, sure.put(one, "{\"role\":\"reader\"}").statusCode());
    assertEquals(409, sure.delete(one).statusCode());
    assertEquals(428, owner.delete(one).statusCode());
    assertEquals(
        412, owner.with("If-Match", "\"7\"").put(one, "{\"role\":\"owner\"}").statusCode());
    assertEquals(
        403,
        house
            .signedIn("author@demo.example")
            .post("/api/studios", "{\"name\":\"No\"}")
            .statusCode());
  }

  @Test
  void whoIsTakenOutIsOutAtOnceWithSessionAndToken() {
    Visitor owner = owner();
    Visitor wim = arrive(owner, "demo", "author", "out@light.example");
    HttpResponse<String> made = wim.post("/api/tokens", "{\"name\":\"a test\"}");
    Visitor program =
        house.visitor().with("Authorization", "Bearer " + Visitor.object(made).get("token"));
    assertEquals(200, program.get(STUDIO + "/setups").statusCode());
    String member = MEMBERS + "/" + id(wim);
    assertEquals(
        403,
        house.withToken("author@demo.example").with("If-Match", "*").delete(member).statusCode());
    assertEquals(204, owner.with("If-Match", "*").delete(member).statusCode());
    assertEquals(404, wim.get(STUDIO + "/setups").statusCode());
    assertEquals(404, program.get(STUDIO + "/setups").statusCode());
    assertEquals(404, program.post(STUDIO + "/setups", "{}").statusCode());
    assertEquals(200, wim.get("/api/session").statusCode(), "the session is still theirs");
    assertEquals("[]", Json.print(Visitor.items(wim.get("/api/studios"))));
  }

  @Test
  void anybodyLeavesThemself() {
    Visitor wim = arrive(owner(), "demo", "reader", "leaves@light.example");
    assertEquals(204, wim.with("If-Match", "*").delete(MEMBERS + "/" + id(wim)).statusCode());
    assertEquals(404, wim.get(MEMBERS).statusCode());
  }

  @Test
  void aStudioIsRenamedByItsOwnersOnly() {
    Visitor owner = owner();
    String place =
        "/api/studios/"
            + Visitor.object(owner.post("/api/studios", "{\"name\":\"Old\"}")).get("id");
    HttpResponse<String> renamed =
        owner.with("If-Match", "\"1\"").patch(place, "{\"name\":\"New\"}");
    assertEquals(200, renamed.statusCode(), renamed.body());
    assertEquals("New", Visitor.object(owner.get(place)).get("name"));
    assertEquals(
        403,
        house
            .withToken("author@demo.example")
            .with("If-Match", "\"1\"")
            .patch(STUDIO, "{\"name\":\"Mine\"}")
            .statusCode());
  }

  @Test
  void aResetLinkWorksOnceAndSignsThePersonOutEverywhere() {
    Visitor owner = owner();
    Visitor wim = arrive(owner, "demo", "crew", "forgot@light.example");
    String made = MEMBERS + "/" + id(wim) + "/reset-links";
    assertEquals(403, house.withToken("owner@demo.example").post(made, "").statusCode());
    assertEquals(403, house.signedIn("author@demo.example").post(made, "").statusCode());
    HttpResponse<String> answer = owner.post(made, "");
    assertEquals(201, answer.statusCode(), answer.body());
    String link = String.valueOf(Visitor.object(answer).get("link"));
    assertEquals(200, house.visitor().get(link).statusCode());
    assertEquals(200, house.visitor().get(link).statusCode(), "looking does not use it up");
    String form = "password=%s&password_again=%s";
    assertEquals(
        422, house.visitor().postForm(link, form.formatted("short", "short")).statusCode());
    assertEquals(
        422,
        house
            .visitor()
            .postForm(link, form.formatted("other+quiet+lamps", "other+quiet+lamp"))
            .statusCode());
    String sound = form.formatted("other+quiet+lamps", "other+quiet+lamps");
    assertEquals(200, house.visitor().postForm(link, sound).statusCode());
    assertEquals(404, house.visitor().postForm(link, sound).statusCode());
    assertEquals(404, house.visitor().get(link).statusCode());
    assertEquals(401, wim.get("/api/session").statusCode());
    assertEquals(401, house.signIn("forgot@light.example", CHOSEN).statusCode());
    assertEquals(201, house.signIn("forgot@light.example", "other quiet lamps").statusCode());
  }

  @Test
  void anOwnerCannotTakeOverWhoBelongsToAStudioOfSomebodyElse() {
    Visitor owner = owner();
    Visitor other = arrive(owner, "demo", "owner", "rival@light.example");
    String elsewhere =
        String.valueOf(
            Visitor.object(other.post("/api/studios", "{\"name\":\"Elsewhere\"}")).get("id"));
    Visitor wim = arrive(owner, "demo", "crew", "both@light.example");
    String made = MEMBERS + "/" + id(wim) + "/reset-links";
    String early = String.valueOf(Visitor.object(owner.post(made, "")).get("link"));
    assertEquals(200, house.visitor().get(early).statusCode());

    assertEquals(201, wim.post(invite(other, elsewhere, "reader"), "{}").statusCode());
    HttpResponse<String> refused = owner.post(made, "");
    assertEquals(409, refused.statusCode());
    assertTrue(refused.body().contains("reset-link"), refused.body());
    assertEquals(404, house.visitor().get(early).statusCode(), "made before, and void since");
    assertEquals(201, other.post(made, "").statusCode(), "who owns both may");
    assertEquals(409, owner.post(MEMBERS + "/" + id(owner) + "/reset-links", "").statusCode());
  }
}
