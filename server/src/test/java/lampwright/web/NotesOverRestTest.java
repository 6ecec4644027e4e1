package lampwright.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import lampwright.TestHouse;
import lampwright.Told;
import lampwright.Visitor;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class NotesOverRestTest {

  private static final String SETUPS = "/api/studios/demo/setups";

  @RegisterExtension static final TestHouse house = TestHouse.withDemo();

  private Visitor author;
  private Visitor crew;
  private String notes = "";

  @BeforeAll
  void aSetupIsThere() {
    author = house.withToken("author@demo.example");
    crew = house.withToken("crew@demo.example");
    notes = made(author.post(SETUPS, Documents.json(Documents.setup("Noted")))) + "/notes";
  }

  private static String made(HttpResponse<String> answer) {
    assertEquals(201, answer.statusCode(), answer.body());
    return answer.headers().firstValue("Location").orElseThrow();
  }

  private static String note(String text) {
    return Documents.json(Map.of("text", text));
  }

  @Test
  void aNoteIsWrittenReadChangedAndTakenAway() {
    String place = made(crew.post(notes, note("Sandbag the boom.\n<b>Twice</b>.")));
    Map<?, ?> told = Visitor.object(author.get(place));
    assertEquals("Sandbag the boom.\n<b>Twice</b>.", Told.at(told, "document", "text"));
    assertTrue(told.containsKey("by") && told.containsKey("at"));
    assertEquals(428, crew.put(place, note("Three.")).statusCode());
    assertEquals(200, crew.with("If-Match", "\"1\"").put(place, note("Three.")).statusCode());
    assertEquals(412, crew.with("If-Match", "\"1\"").put(place, note("Four.")).statusCode());
    assertEquals(204, crew.with("If-Match", "\"2\"").delete(place).statusCode());
    assertEquals(404, crew.get(place).statusCode());
  }

  @Test
  void oneChangesOnesOwnNotesAndAnAuthorAny() {
    String authors = made(author.post(notes, note("The author's.")));
    Visitor first = crew.with("If-Match", "\"1\"");
    assertEquals(403, first.put(authors, note("Mine.")).statusCode());
    assertEquals(403, first.delete(authors).statusCode());
    String crews = made(crew.post(notes, note("The crew's.")));
    assertEquals(200, author.with("If-Match", "\"1\"").put(crews, note("Put right.")).statusCode());
    assertEquals(204, author.with("If-Match", "\"2\"").delete(crews).statusCode());
    Visitor reader = house.withToken("reader@demo.example");
    assertEquals(404, reader.get(notes).statusCode());
    Proven.by(author, notes);
    assertEquals(200, reader.get(notes).statusCode());
    assertEquals(403, reader.post(notes, note("Mine.")).statusCode());
    assertEquals(401, house.visitor().get(notes).statusCode());
    assertEquals(404, crew.get(SETUPS + "/zzzz9zzzz9zzzz9z/notes").statusCode());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "{\"text\":\" \"}|/text",
        "{\"text\":7}|/text",
        "{\"text\":\"a\",\"about\":{\"kind\":\"light\",\"light\":\"rim\"}}|/about/light",
        "{\"text\":\"a\",\"about\":{\"kind\":\"picture\",\"picture\":\"pic1\",\"x\":1.1,\"y\":0}}|/about/x",
        "{\"text\":\"a\",\"about\":{\"kind\":\"picture\",\"picture\":\"PIC\",\"x\":1,\"y\":0}}|/about/picture",
        "{\"text\":\"a\",\"about\":{\"kind\":\"mood\"}}|/about/kind",
        "{\"text\":\"a\",\"to\":\"b\"}|/to"
      })
  void whatCannotBeMeantIsPointedAt(String body, String pointer) {
    HttpResponse<String> answer = crew.post(notes, body);
    assertEquals(422, answer.statusCode(), answer.body());
    assertEquals(pointer, Told.at(Visitor.object(answer), "errors", 0, "pointer"));
  }

  @Test
  void aNoteIsAsLongAsFourThousandCharactersAndNoLonger() {
    made(crew.post(notes, note("é".repeat(4_000))));
    assertEquals(422, crew.post(notes, note("é".repeat(4_001))).statusCode());
  }

  @Test
  void aNoteMayBeAboutALightOrAPointInAPicture() {
    for (Map<String, Object> about :
        List.<Map<String, Object>>of(
            Map.of("kind", "light", "light", "key"),
            Map.of("kind", "picture", "picture", "picture1", "x", 0.25, "y", 1))) {
      String place =
          made(crew.post(notes, Documents.json(Map.of("text", "Here.", "about", about))));
      assertEquals(
          about.get("kind"), Told.at(Visitor.object(crew.get(place)), "document", "about", "kind"));
    }
  }

  @Test
  void theNotesAreReadPageByPageTheLastFirst() {
    String other = made(author.post(SETUPS, Documents.json(Documents.setup("Paged")))) + "/notes";
    for (int i = 1; i <= 5; i++) {
      made(crew.post(other, note("Note " + i)));
    }
    List<Object> texts = new ArrayList<>();
    String address = other + "?limit=2";
    while (!address.isEmpty()) {
      HttpResponse<String> answer = crew.get(address);
      Visitor.items(answer).forEach(item -> texts.add(Told.at(item, "document", "text")));
      String link = answer.headers().firstValue("Link").orElse("<>");
      address = link.substring(1, link.indexOf('>'));
    }
    assertEquals(List.of("Note 5", "Note 4", "Note 3", "Note 2", "Note 1"), texts);
  }

  /** An outcome may name a light; one that was stored before it could stays readable. */
  @Test
  void anOutcomeMayBeAboutOneOfTheLights() {
    for (String light : List.of("", ",\"light\":\"key\"", ",\"light\":\"rim\"")) {
      String outcome = "[{\"judgement\":\"mistake_kept\",\"text\":\"Too low.\"" + light + "}]";
      String setup =
          Documents.json(Documents.with(Documents.setup("Judged"), "outcome", "?"))
              .replace("\"outcome\":\"?\"", "\"outcome\":" + outcome);
      HttpResponse<String> answer = author.post(SETUPS, setup);
      assertEquals(light.contains("rim") ? 422 : 201, answer.statusCode(), answer.body());
      if (light.contains("rim")) {
        assertEquals("/outcome/0/light", Told.at(Visitor.object(answer), "errors", 0, "pointer"));
      }
    }
  }
}
