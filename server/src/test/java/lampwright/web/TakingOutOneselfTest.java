package lampwright.web;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import lampwright.TestHouse;
import lampwright.Told;
import lampwright.Visitor;
import lampwright.document.Json;
import lampwright.people.Asker;
import lampwright.people.PersonId;
import lampwright.people.Role;
import lampwright.people.StudioId;
import lampwright.picture.Drawn;
import lampwright.store.Members;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.extension.RegisterExtension;

/** A person takes out what is theirs, and nothing else. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class TakingOutOneselfTest {

  private static final String STUDIO = "/api/studios/demo";
  private static final String IN_ZIP = "studios/demo/";
  private static final byte[] PICTURE = Drawn.png(Drawn.scene(40, 30));

  @RegisterExtension static final TestHouse house = TestHouse.withDemo();

  private Visitor me;
  private String secret = "";
  private Map<String, byte[]> files = Map.of();
  private byte[] zip = {};

  @BeforeAll
  void somebodyWorksHereForAWhile() throws IOException {
    Newcomer newcomer = Newcomer.to(house, "Runa Ostrowe", Role.AUTHOR);
    me = newcomer.signedIn();
    Visitor other = house.withToken("author@demo.example");
    String setup = made(me, "/setups", Documents.json(Documents.setup("Runa at the weir")));
    made(other, "/setups", Documents.json(Documents.setup("Somebody else at the weir")));
    // Another's revision of what began as mine.
    other
        .with("If-Match", "\"1\"")
        .put(setup, Documents.json(Documents.setup("Runa at the weir, by another")));
    made(me, "/kits", Documents.json(Documents.kit("Runa's van")));
    String below = setup.substring(STUDIO.length());
    made(me, below + "/notes", "{\"text\":\"Mind the <wet> stones\"}");
    made(other, below + "/notes", "{\"text\":\"not hers to take\"}");
    made(me, below + "/takes", Documents.json(TakesOverRestTest.take("runas-take", 8)));
    made(me, "/saved-searches", "{\"name\":\"Weirs\",\"question\":\"q=weir\"}");
    picture(me, setup, PICTURE);
    picture(other, setup, Drawn.png(Drawn.scene(44, 33)));
    HttpResponse<String> token = me.post("/api/tokens", "{\"name\":\"my script\",\"days\":3}");
    secret = String.valueOf(Visitor.object(token).get("token"));
    left(newcomer);
    HttpResponse<byte[]> answer = me.bytes("/api/account/data");
    assertEquals(200, answer.statusCode());
    assertTrue(
        answer
            .headers()
            .firstValue("Content-Disposition")
            .orElseThrow()
            .matches("attachment; filename=\"my-data-\\d{4}-\\d\\d-\\d\\d\\.zip\""));
    zip = answer.body();
    files =
        UnpackedBag.entries(zip).entrySet().stream()
            .collect(
                Collectors.toMap(
                    entry -> entry.getKey().substring(entry.getKey().indexOf('/') + 1),
                    Map.Entry::getValue));
  }

  /** They wrote in another studio too, to which they no longer belong. */
  private static void left(Newcomer newcomer) {
    PersonId owner = house.database().newPerson();
    StudioId before = house.database().newStudio(owner);
    newcomer.join(before, owner, Role.AUTHOR);
    newcomer
        .signedIn()
        .post(
            "/api/studios/" + before.text() + "/setups",
            Documents.json(Documents.setup("At the studio before")));
    house
        .database()
        .open()
        .inStudio(before, Asker.whole(owner), in -> new Members(in).remove(newcomer.id()));
  }

  private static String made(Visitor who, String path, String json) {
    HttpResponse<String> answer = who.post(STUDIO + path, json);
    assertEquals(201, answer.statusCode(), answer.body());
    return answer.headers().firstValue("Location").orElseThrow();
  }

  private static void picture(Visitor who, String setup, byte[] bytes) {
    HttpResponse<String> answer =
        who.with("Content-Type", "image/png")
            .send("POST", setup + "/pictures?kind=final", BodyPublishers.ofByteArray(bytes));
    assertEquals(201, answer.statusCode(), answer.body());
  }

  private Object json(String file) {
    return Json.parse(
        new String(Objects.requireNonNull(files.get(file), file), StandardCharsets.UTF_8));
  }

  private List<?> list(String file) {
    return (List<?>) json(file);
  }

  @Test
  void itSaysWhoOneIsAndHowOneComesIn() {
    assertEquals("Runa Ostrowe", Told.at(json("person.json"), "name"));
    assertEquals("demo", Told.at(list("studios.json"), 0, "id"));
    assertEquals("author", Told.at(list("studios.json"), 0, "role"));
    assertEquals(1, list("studios.json").size());
    assertEquals("my script", Told.at(list("tokens.json"), 0, "name"));
    assertEquals(2, list("sessions.json").size());
  }

  @Test
  void whatOneWroteIsInItAsItWasAndWhatOthersWroteIsNot() {
    List<?> setups = list(IN_ZIP + "setups.json");
    assertEquals(1, setups.size());
    assertEquals("Runa at the weir", Told.at(setups.getFirst(), "document", "title"));
    assertEquals(1.0, Told.at(setups.getFirst(), "revision"));
    assertEquals("Runa's van", Told.at(list(IN_ZIP + "kits.json"), 0, "document", "name"));
    assertEquals(
        "Mind the <wet> stones", Told.at(list(IN_ZIP + "notes.json"), 0, "document", "text"));
    assertEquals(1, list(IN_ZIP + "notes.json").size());
    assertEquals(1, list(IN_ZIP + "takes.json").size());
    assertEquals("q=weir", Told.at(list(IN_ZIP + "saved_searches.json"), 0, "question"));
    assertEquals(List.of(), list(IN_ZIP + "drill_answers.json"));
  }

  @Test
  void thePicturesThatOneAddedAreInItAsTheyCame() throws IOException {
    List<?> added = list(IN_ZIP + "pictures_added.json");
    assertEquals(1, added.size());
    String hash = String.valueOf(Told.at(added.getFirst(), "sha256"));
    byte[] original =
        UnpackedBag.entries(house.withToken("owner@demo.example").bytes(STUDIO + "/archive").body())
            .get("studio-demo/data/pictures/" + hash);
    assertArrayEquals(original, files.get(IN_ZIP + "pictures/" + hash + ".png"));
    assertEquals(1, files.keySet().stream().filter(name -> name.contains("/pictures/")).count());
  }

  @Test
  void noSecretAndNothingOfOthersIsAnywhereInIt() {
    String all =
        files.values().stream()
            .map(bytes -> new String(bytes, StandardCharsets.UTF_8))
            .collect(Collectors.joining("\n"));
    for (String never :
        List.of(
            secret,
            "$argon2",
            "token_hash",
            Newcomer.PASSWORD,
            "@demo.example",
            "not hers to take",
            "Somebody else",
            "by another",
            "At the studio before")) {
      assertFalse(all.contains(never), never);
    }
  }

  @Test
  void theManifestNamesEveryFileAndSaysWhatIsMissing() {
    Object manifest = json("manifest.json");
    Set<String> named = new TreeSet<>(Set.of("manifest.json"));
    for (Object file : Told.list(manifest, "files")) {
      named.add(String.valueOf(Told.at(file, "path")));
      assertFalse(String.valueOf(Told.at(file, "what")).isBlank());
    }
    assertEquals(new TreeSet<>(files.keySet()), named);
    assertTrue(Told.list(manifest, "not_in_it").size() >= 4);
    assertEquals(List.of(), Told.list(manifest, "lost_files"));
  }

  @Test
  void aProgramTakesNobodysDataOut() {
    Visitor program = house.visitor().with("Authorization", "Bearer " + secret);
    assertEquals(403, program.get("/api/account/data").statusCode());
    assertEquals(401, house.visitor().get("/api/account/data").statusCode());
  }
}
