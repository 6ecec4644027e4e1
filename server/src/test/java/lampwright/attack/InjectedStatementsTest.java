package lampwright.attack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.URLEncoder;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import lampwright.Told;
import lampwright.Visitor;
import lampwright.document.Json;
import lampwright.web.Described;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.extension.RegisterExtension;

/**
 * What could end a text in SQL, a search or a pattern, in every parameter and every text of a
 * document that the description names (Web Security Testing Guide, INPV-05). A statement that ran
 * would sleep for eight seconds, see the rival's rows, or lose a table.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class InjectedStatementsTest {

  private static final String SLEEP =
      "x' or (select 1 from pg_sleep(8)) is null or '1'='1';select pg_sleep(8)--";
  private static final List<String> ODD =
      List.of(SLEEP, "\\'\");drop table lampwright.setup cascade;--", "(((([[{*?~^\"AND NOT:");
  private static final long MOST_NANOS = 6_000_000_000L;

  @RegisterExtension static final AttackedHouse house = new AttackedHouse();

  private final List<String> wrong = new ArrayList<>();
  private Visitor owner;
  private Described described;

  @BeforeAll
  void theDescriptionIsRead() {
    owner = house.withToken("owner@demo.example");
    described = new Described(house.stranger().get("/api/openapi.json").body());
  }

  private static String encoded(String text) {
    return URLEncoder.encode(text, StandardCharsets.UTF_8).replace("+", "%20");
  }

  private HttpResponse<String> send(Visitor visitor, String verb, String path, String body) {
    long begun = System.nanoTime();
    HttpResponse<String> answer = visitor.send(verb, path, BodyPublishers.ofString(body));
    if (answer.statusCode() >= 500
        || System.nanoTime() - begun > MOST_NANOS
        || answer.body().contains("syntax error")
        || answer.body().contains("org.jooq")) {
      wrong.add(verb + " " + path + " " + body + " -> " + answer.statusCode() + answer.body());
    }
    return answer;
  }

  @Test
  void noParameterOfAQueryOrPathIsTakenForAStatement() throws SQLException {
    int tried = 0;
    for (String operation : described.operations()) {
      String verb = operation.substring(0, operation.indexOf(' '));
      String template = operation.substring(operation.indexOf(' ') + 1);
      // What changes something is asked with an empty document, so that nothing comes of it.
      Visitor asker =
          verb.equals("GET")
              ? owner
              : owner.with("If-Match", "\"0\"").with("Content-Type", "application/json");
      String body = verb.equals("GET") ? "" : "{}";
      for (Map<?, ?> parameter : described.parameters(operation, "query")) {
        for (String odd : ODD) {
          send(
              asker,
              verb,
              house.path(template) + "?" + parameter.get("name") + "=" + encoded(odd),
              body);
          tried++;
        }
      }
      for (Map<?, ?> parameter : described.parameters(operation, "path")) {
        String path =
            house.path(template.replace("{" + parameter.get("name") + "}", encoded(SLEEP)));
        assertTrue(send(asker, verb, path, body).statusCode() >= 400, path);
        tried++;
      }
    }
    // Every studio is asked for as well: what the rival's rows hold is nowhere in the answers.
    assertTrue(tried > 200, tried + " tries");
    assertEquals(List.of(), wrong, String.join("\n", wrong));
    assertEquals(
        List.of("t"),
        house.house().database().sqlAsSuperuser("select count(*) > 0 from lampwright.setup"));
  }

  @Test
  void noTextOfADocumentIsTakenForAStatement() {
    Set<String> kinds = new TreeSet<>();
    Map<String, String> collections = new LinkedHashMap<>();
    String setup = "/setups/" + house.thing("setup");
    collections.put("setup", "/setups");
    collections.put("kit", "/kits");
    collections.put("gear", "/gear");
    collections.put("location", "/locations");
    collections.put("trail", "/trails");
    collections.put("note", setup + "/notes");
    collections.put("take", setup + "/takes");
    collections.put("search", "/saved-searches");
    for (Map.Entry<String, String> kind : collections.entrySet()) {
      String path = AttackedHouse.STUDIO + kind.getValue();
      String one = path + "/" + house.thing(kind.getKey());
      HttpResponse<String> read = owner.get(one);
      assertEquals(200, read.statusCode(), one + read.body());
      Object document = Visitor.object(read).get("document");
      Object plain = document == null ? Json.parse(read.body()) : document;
      int texts = Planted.texts(plain);
      assertTrue(texts > 0, one);
      for (int i = 0; i < texts; i++) {
        String body = Json.print(Planted.in(plain, i, SLEEP));
        HttpResponse<String> made =
            send(owner.with("Content-Type", "application/json"), "POST", path, body);
        if (made.statusCode() == 201) {
          kinds.add(kind.getKey());
          String place = made.headers().firstValue("Location").orElseThrow();
          String kept = owner.get(place).body();
          assertTrue(kept.contains("pg_sleep(8)"), kept);
          owner.with("If-Match", "*").delete(place);
        }
      }
    }
    assertEquals(List.of(), wrong, String.join("\n", wrong));
    assertTrue(kinds.size() >= 4, "kept with the text in them: " + kinds);
  }

  @Test
  void aSearchForAStatementFindsWhatItsWordsFind() {
    Object none =
        Told.at(Visitor.object(owner.get(AttackedHouse.STUDIO + "/setups?q=zzqqxx")), "items");
    HttpResponse<String> odd =
        owner.get(AttackedHouse.STUDIO + "/setups?q=" + encoded("zzqqxx' or 1=1--"));
    assertEquals(200, odd.statusCode());
    assertTrue(((List<?>) none).isEmpty());
    assertTrue(!odd.body().contains("Rival"), odd.body());
  }
}
