package lampwright.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.time.Duration;
import java.util.Map;
import java.util.concurrent.locks.LockSupport;
import lampwright.TestHouse;
import lampwright.Told;
import lampwright.Visitor;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

/** An owner looks at the search index and has it made anew; others may not. */
class IndexOverRestTest {

  private static final String PAGE = "/studios/demo/index";
  private static final String INDEX = "/api" + PAGE;
  private static final Duration BETWEEN_LOOKS = Duration.ofMillis(20);

  @RegisterExtension static final TestHouse house = TestHouse.withDemo();

  @Test
  void aRebuildTakesInEverySetupAndTheServerStaysReady() {
    Visitor owner = house.withToken("owner@demo.example");
    int setups = number(told(owner), "setups");
    assertTrue(setups > 0);
    HttpResponse<String> started = owner.send("POST", INDEX + "/rebuild", BodyPublishers.noBody());
    assertEquals(202, started.statusCode(), started.body());
    assertEquals(200, house.visitor().get("/health/ready").statusCode());
    Map<?, ?> after = awaitLast(owner);
    assertEquals("finished", Told.at(after, "last_rebuild", "ending"));
    assertTrue(number((Map<?, ?>) Told.at(after, "last_rebuild"), "setups") >= setups);
    assertEquals(setups, number(after, "indexed"));
    assertEquals("current", Told.at(after, "state"));
    assertFalse(Visitor.items(owner.get("/api/studios/demo/setups")).isEmpty());
    assertEquals(204, owner.delete(INDEX + "/rebuild").statusCode(), "There is nothing to stop");
  }

  @Test
  void thePageTellsTheSameWithoutScripts() {
    Visitor owner = house.signedIn("owner@demo.example").with("X-CSRF-Token", "");
    Document page = Jsoup.parse(owner.get(PAGE).body());
    String csrf = page.select("form[action$=rebuild] [name=csrf]").val();
    assertEquals(303, owner.postForm(PAGE + "/rebuild", "csrf=" + csrf).statusCode());
    Map<?, ?> last = awaitLast(house.withToken("owner@demo.example"));
    assertEquals("finished", Told.at(last, "last_rebuild", "ending"));
    Document after = Jsoup.parse(owner.get(PAGE).body());
    assertTrue(after.text().contains("Made anew at"), after.text());
    assertTrue(after.text().contains("It shows everything that is kept."), after.text());
    assertEquals(303, owner.postForm(PAGE + "/stop", "csrf=" + csrf).statusCode(), "Late is fine");
    Document archive = Jsoup.parse(owner.get("/studios/demo/archive").body());
    assertEquals(1, archive.select("main a[href=" + PAGE + "]").size());
  }

  @Test
  void onlyOwnersSeeIt() {
    for (String member : new String[] {"author", "crew", "reader"}) {
      Visitor other = house.signedIn(member + "@demo.example");
      assertEquals(403, other.get(PAGE).statusCode(), member);
      assertEquals(403, other.get(INDEX).statusCode(), member);
      assertEquals(403, other.delete(INDEX + "/rebuild").statusCode(), member);
      Document archive = Jsoup.parse(other.get("/studios/demo/archive").body());
      assertTrue(archive.select("a[href=" + PAGE + "]").isEmpty(), member);
    }
  }

  private static Map<?, ?> told(Visitor owner) {
    HttpResponse<String> answer = owner.get(INDEX);
    assertEquals(200, answer.statusCode(), answer.body());
    return Visitor.object(answer);
  }

  private static int number(Map<?, ?> told, String field) {
    return ((Number) Told.at(told, field)).intValue();
  }

  /** Waits until none is being made and one was, and the index has caught up. */
  static Map<?, ?> awaitLast(Visitor owner) {
    long end = System.nanoTime() + Duration.ofSeconds(30).toNanos();
    Map<?, ?> told = told(owner);
    while (told.containsKey("rebuild")
        || !told.containsKey("last_rebuild")
        || !"current".equals(told.get("state"))) {
      assertTrue(System.nanoTime() < end, "Not made within 30 s: " + told);
      LockSupport.parkNanos(BETWEEN_LOOKS.toNanos());
      told = told(owner);
    }
    return told;
  }
}
