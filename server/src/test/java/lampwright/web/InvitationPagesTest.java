package lampwright.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpResponse;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Stream;
import lampwright.TestHouse;
import lampwright.Visitor;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

/** Invitations, links for new passwords, and one's studios, on their pages. */
class InvitationPagesTest {

  private static final String PEOPLE = "/studios/demo/people";
  private static final String ACCOUNT =
      "name=Wim+Fennel&email=%s&password=seven+sandbags&password_again=seven+sandbags";
  private static final String WITH_MINE = "with_mine=yes";

  @RegisterExtension static final TestHouse house = TestHouse.withDemo();

  private static Visitor owner() {
    return house.signedIn("owner@demo.example");
  }

  private static String invite(Visitor owner, String people, String meantFor) {
    HttpResponse<String> made =
        owner.postForm(people + "/invitations", "role=crew&days=7&meant_for=" + meantFor);
    assertEquals(200, made.statusCode(), made.body());
    return handed(made);
  }

  /** The path of the link that a page shows this once. */
  private static String handed(HttpResponse<String> answer) {
    String link = page(answer).select(".handed code").text();
    String here = house.visitor().address("/").toString();
    assertTrue(link.startsWith(here), link);
    return link.substring(here.length() - 1);
  }

  private static Document page(HttpResponse<String> answer) {
    return Jsoup.parse(answer.body());
  }

  private static String location(HttpResponse<String> answer) {
    assertEquals(303, answer.statusCode(), answer.body());
    return answer.headers().firstValue("Location").orElseThrow();
  }

  private static Visitor holding(HttpResponse<String> answer) {
    String cookie = answer.headers().firstValue("Set-Cookie").orElseThrow();
    Visitor visitor = house.visitor().with("Cookie", cookie.substring(0, cookie.indexOf(';')));
    String csrf = page(visitor.get("/studios")).select("input[name=csrf]").attr("value");
    return visitor.with("X-CSRF-Token", csrf);
  }

  /** Somebody new, who belongs to the demo studio. */
  private static Visitor arrive(String name, String email) {
    String account = ACCOUNT.formatted(email).replace("Wim+Fennel", name);
    return holding(house.visitor().postForm(invite(owner(), PEOPLE, name), account));
  }

  private static String pathOf(Visitor visitor, String name) {
    return pathOf(visitor, PEOPLE, name);
  }

  /** Where what is done about a member of that name is sent. */
  private static String pathOf(Visitor visitor, String people, String name) {
    String removal =
        page(visitor.get(people))
            .select(".people > li:contains(" + name + ") form[action$=/removal]")
            .attr("action");
    assertTrue(removal.endsWith("/removal"), name);
    return removal.substring(0, removal.length() - "/removal".length());
  }

  private static String found(Visitor owner, String name) {
    String setups = location(owner.postForm("/studios", "name=" + name));
    return setups.substring(0, setups.length() - "/setups".length());
  }

  @Test
  void whoIsNotSignedInIsOfferedBothWays() {
    String link = invite(owner(), PEOPLE, "both");
    Document offer = page(house.visitor().get(link));
    assertEquals(
        "Maren Tolliver invites you to the studio " + studioName() + ", as crew.",
        offer.select(".lead").text());
    assertEquals(1, offer.select("input[name=email]").size());
    assertEquals("/sign-in?next=" + link, offer.select("a.way").attr("href"));

    HttpResponse<String> differing =
        house.visitor().postForm(link, ACCOUNT.formatted("w@light.example") + "x");
    assertEquals(422, differing.statusCode());
    assertEquals("Wim Fennel", page(differing).select("input[name=name]").attr("value"));
    assertEquals("", page(differing).select("input[name=password]").attr("value"));
    assertEquals(
        401, house.visitor().postForm(link, WITH_MINE).statusCode(), "nobody has no account");
  }

  private static String studioName() {
    return page(owner().get(PEOPLE)).select(".head .studio").text();
  }

  @Test
  void whoHasAnAccountSignsInAndIsLedBackToAccept() {
    Visitor owner = owner();
    String elsewhere = found(owner, "Led+back");
    String link = invite(owner, elsewhere + "/people", "reader");
    HttpResponse<String> signedIn =
        house
            .visitor()
            .postForm(
                "/sign-in",
                "email=reader@demo.example&password=%s&next=%s"
                    .formatted(TestHouse.PASSWORD.replace(' ', '+'), link));
    assertEquals(link, location(signedIn));
    Visitor reader = holding(signedIn);
    Document offer = page(reader.get(link));
    assertEquals(0, offer.select("input[name=email]").size());
    assertTrue(offer.text().contains("You are signed in as "), offer.text());
    assertEquals(
        403, reader.with("X-CSRF-Token", "").postForm(link, WITH_MINE).statusCode(), "not meant");
    assertEquals(elsewhere + "/setups", location(reader.postForm(link, WITH_MINE)));
    assertEquals(404, reader.postForm(link, WITH_MINE).statusCode(), "used up");
    String again = invite(owner, elsewhere + "/people", "again");
    assertEquals(409, reader.postForm(again, WITH_MINE).statusCode(), "a member already");
    assertEquals(200, house.visitor().get(again).statusCode(), "and it stays for another");
  }

  @Test
  void usedWithdrawnExpiredAndUnknownAreOneAndTheSame() throws SQLException {
    Visitor owner = owner();
    String used = invite(owner, PEOPLE, "used");
    location(house.visitor().postForm(used, ACCOUNT.formatted("used@light.example")));
    String withdrawn = invite(owner, PEOPLE, "withdrawn");
    String withdrawal =
        page(owner.get(PEOPLE))
            .select(".open-invitations li:contains(withdrawn) form")
            .attr("action");
    assertEquals(PEOPLE, location(owner.postForm(withdrawal, "")));
    String expired = invite(owner, PEOPLE, "expired");
    house
        .database()
        .sqlAsSuperuser(
            "update lampwright.invitation set expires_at = now() where meant_for = 'expired'");
    String unknown = "/invitations/AAAA";
    List<String> said =
        Stream.of(used, withdrawn, expired, unknown)
            .map(
                link -> {
                  HttpResponse<String> shown = house.visitor().get(link);
                  assertEquals(404, shown.statusCode(), link);
                  HttpResponse<String> sent =
                      house.visitor().postForm(link, ACCOUNT.formatted("late@light.example"));
                  assertEquals(404, sent.statusCode(), link);
                  return page(shown).select("h1, .lead").text();
                })
            .distinct()
            .toList();
    assertEquals(1, said.size(), said.toString());
  }

  @Test
  void ofTwoWhoAcceptAtOnceOneComesIn() throws InterruptedException, ExecutionException {
    String link = invite(owner(), PEOPLE, "one");
    CountDownLatch start = new CountDownLatch(1);
    List<Future<Integer>> answers = new ArrayList<>();
    try (ExecutorService both = Executors.newFixedThreadPool(2)) {
      for (String email : List.of("left@light.example", "right@light.example")) {
        answers.add(
            both.submit(
                () -> {
                  start.await();
                  return house.visitor().postForm(link, ACCOUNT.formatted(email)).statusCode();
                }));
      }
      start.countDown();
    }
    List<Integer> statuses = new ArrayList<>();
    for (Future<Integer> answer : answers) {
      statuses.add(answer.get());
    }
    assertEquals(List.of(303, 404), statuses.stream().sorted().toList());
    long accounts =
        Stream.of("left@light.example", "right@light.example")
            .filter(email -> house.signIn(email, "seven sandbags").statusCode() == 201)
            .count();
    assertEquals(1, accounts, "who came too late has no account either");
  }

  @Test
  void fiftyInvitationsAreOpenAtMost() throws SQLException {
    Visitor owner = owner();
    String people = found(owner, "Fifty") + "/people";
    invite(owner, people, "first");
    house
        .database()
        .sqlAsSuperuser(
            "insert into lampwright.invitation select studio_id, 'copy' || n, sha256(('copy' ||"
                + " n)::bytea), role, meant_for, invited_by, created_at, expires_at from"
                + " lampwright.invitation, generate_series(1, 49) as n where studio_id = '%s'"
                    .formatted(people.split("/", -1)[2]));
    HttpResponse<String> refused =
        owner.postForm(people + "/invitations", "role=crew&days=7&meant_for=more");
    assertEquals(409, refused.statusCode());
    Document page = page(refused);
    assertTrue(page.select(".errors").text().contains("50 invitations are open"), page.text());
    assertEquals("more", page.select("#meant_for").attr("value"), "nothing to type again");
    owner.postForm(people + "/invitations/copy7/withdrawal", "");
    invite(owner, people, "more");
  }

  @Test
  void aNewPasswordIsSetOnceAndEndsEverySession() {
    Visitor owner = owner();
    Visitor edda = arrive("Edda", "edda@light.example");
    HttpResponse<String> made = owner.postForm(pathOf(owner, "Edda") + "/reset-links", "");
    assertEquals(200, made.statusCode(), made.body());
    String link = handed(made);
    assertTrue(page(house.visitor().get(link)).text().contains("account of Edda"));
    assertEquals(200, edda.get("/account").statusCode(), "looking does nothing");

    String form = "password=eight+sandbags&password_again=eight+sandbags";
    assertEquals(422, house.visitor().postForm(link, form + "x").statusCode());
    HttpResponse<String> done = house.visitor().postForm(link, form);
    assertEquals(200, done.statusCode(), done.body());
    assertEquals(0, page(done).select("input[name=password]").size());
    assertEquals(401, edda.get("/api/session").statusCode());
    assertEquals(404, house.visitor().get(link).statusCode());
    assertEquals(404, house.visitor().postForm(link, form).statusCode());
    assertEquals(401, house.signIn("edda@light.example", "seven sandbags").statusCode());
    assertEquals(201, house.signIn("edda@light.example", "eight sandbags").statusCode());
  }

  @Test
  void anOwnerMakesNoSuchLinkForWhoIsInAStudioOfSomebodyElse() {
    Visitor owner = owner();
    Visitor gil = arrive("Gil", "gil@light.example");
    String elsewhere = found(owner, "Of+another") + "/people";
    Visitor keeper = arrive("Tova", "tova@light.example");
    location(keeper.postForm(invite(owner, elsewhere, "Tova"), WITH_MINE));
    location(gil.postForm(invite(owner, elsewhere, "Gil"), WITH_MINE));
    assertEquals(
        200, owner.postForm(pathOf(owner, "Gil") + "/reset-links", "").statusCode(), "owns both");

    String tova = pathOf(owner, elsewhere, "Tova");
    assertEquals(
        elsewhere, location(owner.postForm(tova + "/role", "role=owner&revision=1")), "an owner");
    HttpResponse<String> refused =
        keeper.postForm(pathOf(keeper, elsewhere, "Gil") + "/reset-links", "");
    assertEquals(409, refused.statusCode());
    Document page = page(refused);
    assertTrue(page.select(".errors").text().contains("a studio that you do not own"), page.text());
    assertEquals(0, page.select(".handed").size());
  }

  @Test
  void anOwnerFoundsAndRenamesAStudio() {
    Visitor owner = owner();
    for (String bad : List.of("", "+++", "x".repeat(201))) {
      HttpResponse<String> refused = owner.postForm("/studios", "name=" + bad);
      assertEquals(422, refused.statusCode(), bad);
      assertEquals(1, page(refused).select(".errors").size(), bad);
    }
    String name = "North+window";
    String studio = found(owner, name);
    assertTrue(page(owner.get("/studios")).select(".own-studios").text().contains("North window"));
    String rename = form(owner, studio).attr("action");
    String revision = form(owner, studio).select("input[name=revision]").attr("value");
    assertEquals(
        422, owner.postForm(rename, "name=&revision=" + revision).statusCode(), "no name at all");
    assertEquals(
        "/studios", location(owner.postForm(rename, "name=South+window&revision=" + revision)));
    assertEquals(
        412,
        owner.postForm(rename, "name=West+window&revision=" + revision).statusCode(),
        "somebody has changed it since");
    assertEquals("South window", form(owner, studio).select("input[name=name]").attr("value"));

    Visitor author = house.signedIn("author@demo.example");
    assertEquals(0, page(author.get("/studios")).select("main form").size(), "owners only");
    assertEquals(403, author.postForm("/studios", "name=Mine").statusCode());
  }

  /** The form by which a studio gets another name. */
  private static Element form(Visitor owner, String studio) {
    return page(owner.get("/studios"))
        .expectFirst("li:has(a[href^=" + studio + "]) form.own-studio-name");
  }

  @Test
  void homeIsTheOneStudioOrTheListOfSeveralOrOfNone() {
    Visitor owner = owner();
    Visitor otto = arrive("Otto", "otto@light.example");
    assertEquals("/studios/demo/setups", location(otto.get("/")));
    assertEquals(0, page(otto.get(PEOPLE)).select(".head a.studio").size());

    String second = found(owner, "Two+doors") + "/people";
    location(otto.postForm(invite(owner, second, "Otto"), WITH_MINE));
    assertEquals("/studios", location(otto.get("/")));
    assertEquals("/studios", page(otto.get(PEOPLE)).select(".head a.studio").attr("href"));
    assertEquals(2, page(otto.get("/studios")).select(".own-studios > li").size());

    for (String people : List.of(PEOPLE, second)) {
      location(otto.postForm(pathOf(otto, people, "Otto") + "/removal", "revision=1"));
      assertEquals(404, otto.get(people).statusCode());
    }
    assertEquals("/studios", location(otto.get("/")));
    Document none = page(otto.get("/studios"));
    assertTrue(none.text().contains("You belong to no studio"), none.text());
    assertFalse(none.select("main form").hasAttr("action"), "nothing to found either");
    assertEquals("/sign-in", location(house.visitor().get("/")));
  }
}
