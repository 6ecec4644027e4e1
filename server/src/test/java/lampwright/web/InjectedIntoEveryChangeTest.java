package lampwright.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import lampwright.TestHouse;
import lampwright.Visitor;
import lampwright.attack.Planted;
import lampwright.document.Json;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

/**
 * What could end a text in SQL, in the place of every text of every change over REST: it is kept as
 * a text or refused, and never taken for a statement, which would sleep (Web Security Testing
 * Guide, INPV-05).
 */
class InjectedIntoEveryChangeTest {

  private static final String SLEEP = "x' or (select 1 from pg_sleep(8)) is null;--\"\\";
  private static final long MOST_NANOS = 6_000_000_000L;

  @RegisterExtension static final TestHouse house = TestHouse.withDemo();

  @Test
  void noTextOfAChangeIsTakenForAStatement() {
    Visitor owner = house.signedIn("owner@demo.example");
    Visitor crew = house.signedIn("crew@demo.example");
    RoleThings things = RoleThings.made(owner, crew, "Injected");
    things.ids().putAll(Map.of("search", "zzzz", "import", "zzzz"));
    things.ids().put("person", EveryKindOfThing.person(crew));
    List<String> wrong = new ArrayList<>();
    int tried = 0;
    for (Map.Entry<String, SoundRequests.Sound> one :
        new SoundRequests(_ -> owner).all().entrySet()) {
      SoundRequests.Sound request = one.getValue();
      String text = new String(request.content().of(things), StandardCharsets.UTF_8);
      if (!request.type().endsWith("json") || text.isEmpty()) {
        continue;
      }
      Object plain = Json.parse(things.filled(text));
      for (int i = 0; i < Planted.texts(plain); i++) {
        tried++;
        if (!isTakenAsText(owner, one.getKey(), request, things, Planted.in(plain, i, SLEEP))) {
          wrong.add(one.getKey() + " at text " + i);
        }
      }
    }
    assertEquals(List.of(), wrong);
    assertTrue(tried > 150, tried + " tries");
  }

  private static boolean isTakenAsText(
      Visitor owner,
      String operation,
      SoundRequests.Sound request,
      RoleThings things,
      Object body) {
    Visitor sender = request.basedOn().isEmpty() ? owner : owner.with("If-Match", "*");
    long begun = System.nanoTime();
    HttpResponse<String> answer =
        sender
            .with("Content-Type", request.type())
            .send(
                operation.substring(0, operation.indexOf(' ')),
                things.path(operation.substring(operation.indexOf(' ') + 1)) + request.query(),
                BodyPublishers.ofString(Json.print(body)));
    return answer.statusCode() < 500
        && System.nanoTime() - begun < MOST_NANOS
        && !answer.body().contains("syntax error");
  }
}
