package lampwright.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import lampwright.TestHouse;
import lampwright.Told;
import lampwright.Visitor;
import lampwright.document.Json;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.extension.RegisterExtension;

/** What happened with a person's account is told to that person, and to nobody else. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class AccountEventsTest {

  private static final String EVENTS = "/api/account/events";
  private static final String CREW = "crew@demo.example";
  private static final String NEW_PASSWORD = "seven lamps in a row";

  @RegisterExtension static final TestHouse house = TestHouse.withDemo();

  private Visitor crew;

  @BeforeAll
  void muchHappens() {
    house.signedInByPassword("author@demo.example");
    for (int i = 0; i < 3; i++) {
      assertEquals(401, house.signIn(CREW, "not this one").statusCode());
    }
    String form = "email=crew%40demo.example&password=" + TestHouse.PASSWORD.replace(' ', '+');
    assertEquals(303, house.visitor().postForm("/sign-in", form).statusCode());
    Visitor here = house.signedInByPassword(CREW);
    HttpResponse<String> token = here.post("/api/tokens", "{\"name\":\"the meter\"}");
    here.delete("/api/tokens/" + Visitor.object(token).get("id"));
    here.delete("/api/account/sessions");
    HttpResponse<String> changed =
        here.put(
            "/api/account/password",
            "{\"current\":\"%s\",\"new\":\"%s\"}".formatted(TestHouse.PASSWORD, NEW_PASSWORD));
    crew = AccountAsDescribed.goesOn(here, changed);
  }

  /** The oldest first. */
  private static List<String> told(Visitor person) {
    return Visitor.items(person.get(EVENTS)).reversed().stream()
        .map(line -> Told.at(line, "action") + " " + Told.at(line, "kind"))
        .toList();
  }

  @Test
  void aPersonReadsWhatHappenedWithTheirAccount() {
    assertEquals(
        List.of(
            "sign_in_failed account",
            "sign_in_failed account",
            "sign_in_failed account",
            "signed_in account",
            "signed_in account",
            "made token",
            "revoked token",
            "sessions_ended account",
            "password_changed account"),
        told(crew));
    List<?> lines = Visitor.items(crew.get(EVENTS));
    assertEquals("the meter", Told.at(lines.get(2), "subject", "name"));
    assertEquals(1.0, Told.number(lines.get(1), "detail", "sessions"));
    assertEquals(true, Told.at(lines.get(5), "detail", "new_browser"));
  }

  @Test
  void itComesInParts() {
    HttpResponse<String> first = crew.get(EVENTS + "?limit=4");
    Object next = Visitor.object(first).get("next");
    assertEquals(4, Visitor.items(first).size());
    List<?> rest = Visitor.items(crew.get(EVENTS + "?limit=100&cursor=" + next));
    assertEquals(5, rest.size());
    assertEquals("signed_in", Told.at(rest.getFirst(), "action"));
  }

  @Test
  void nobodyElseReadsIt() {
    assertEquals(
        List.of("signed_in account"), told(house.signedIn("author@demo.example")).subList(0, 1));
    Visitor owner = house.signedInByPassword("owner@demo.example");
    assertEquals(List.of("signed_in account"), told(owner));
    assertFalse(owner.get("/api/studios/demo/audit?limit=100").body().contains("sign_in_failed"));
    assertEquals(401, house.visitor().get(EVENTS).statusCode());
    assertEquals(403, house.withToken("reader@demo.example").get(EVENTS).statusCode());
  }

  @Test
  void thePageSaysItInSentencesAndGuessesInOne() {
    Document page = Jsoup.parse(crew.get("/account/events").body());
    List<String> said = page.select(".audit li p").eachText();
    assertEquals(
        List.of(
            "The password was changed",
            "Signed out in 1 other place",
            "The token “the meter” was revoked",
            "The token “the meter” was made",
            "Signed in",
            "Signed in, in a browser that was new here",
            "A wrong password or code was given, 3 times"),
        said);
    Document account = Jsoup.parse(crew.get("/account").body());
    assertEquals(said.subList(0, 4), account.select(".own-events li > p:first-child").eachText());
    assertEquals(1, account.select("a[href=/account/events]").size());
    Document german = Jsoup.parse(crew.with("Accept-Language", "de").get("/account/events").body());
    assertTrue(german.text().contains("falscher Code wurde eingegeben, 3 Mal"));
  }

  @Test
  void itIsPartOfWhatAPersonTakesOut() throws IOException {
    List<Object> lines = new ArrayList<>();
    byte[] all = crew.bytes("/api/account/data").body();
    try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(all))) {
      for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
        if (entry.getName().endsWith("account-events.json")) {
          String text = new String(zip.readAllBytes(), StandardCharsets.UTF_8);
          lines.addAll((List<?>) Json.parse(text));
        }
      }
    }
    assertEquals(9, lines.size());
    assertEquals("sign_in_failed", Told.at(lines.getFirst(), "action"));
    assertEquals("password_changed", Told.at(lines.getLast(), "action"));
  }
}
