package lampwright.web;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gov.loc.repository.bagit.exceptions.CorruptChecksumException;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lampwright.TestHouse;
import lampwright.Told;
import lampwright.Visitor;
import lampwright.document.Json;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.extension.RegisterExtension;

/** Archives that go out, judged by tools that are not ours. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class ArchivesOutOverRestTest {

  private static final String STUDIO = "/api/studios/demo";

  @RegisterExtension static final TestHouse house = TestHouse.withDemo();

  private Visitor owner;
  private Map<String, String> made = Map.of();

  @BeforeAll
  void aStudioWithEverythingInIt() {
    owner = house.withToken("owner@demo.example");
    Visitor crew = house.withToken("crew@demo.example");
    made = new EveryKindOfThing(STUDIO, owner, crew).make();
  }

  private String place(String what) {
    return Told.at(made, what).toString();
  }

  private byte[] archive(String path) {
    HttpResponse<byte[]> answer = owner.bytes(path + "/archive");
    assertEquals(200, answer.statusCode());
    return answer.body();
  }

  @Test
  void aStudioIsABagThatOthersFindCompleteAndRight() throws Exception {
    HttpResponse<byte[]> answer = owner.bytes(STUDIO + "/archive");
    assertEquals("application/zip", answer.headers().firstValue("Content-Type").orElseThrow());
    assertEquals(
        "attachment; filename=\"studio-demo.zip\"",
        answer.headers().firstValue("Content-Disposition").orElseThrow());
    try (UnpackedBag bag = UnpackedBag.of(answer.body())) {
      bag.mustBeValid();
      assertEquals("", bag.sha256sum("manifest-sha256.txt"));
      assertEquals("", bag.sha256sum("tagmanifest-sha256.txt"));
      Files.writeString(bag.file("data/setups.jsonl"), "{}");
      assertThrows(CorruptChecksumException.class, bag::mustBeValid);
      assertFalse(bag.sha256sum("manifest-sha256.txt").isEmpty());
    }
  }

  @Test
  void whatIsInItIsWhatTheStudioHoldsAndNothingOfHowPeopleSignIn() throws Exception {
    try (UnpackedBag bag = UnpackedBag.of(archive(STUDIO))) {
      Map<?, ?> summary = (Map<?, ?>) Json.parse(bag.text("data/archive.json").strip());
      assertEquals("studio", summary.get("what"));
      Set<String> names =
          Told.list(summary, "authors").stream()
              .map(author -> Told.at(author, "name").toString())
              .collect(Collectors.toSet());
      assertEquals(Set.of("Maren Tolliver", "Sunniva Barrow"), names);
      List<Map<?, ?>> revisions =
          bag.lines("data/setups_revisions.jsonl").stream()
              .filter(line -> place("setup").endsWith("/" + line.get("id")))
              .toList();
      assertEquals(7, revisions.size());
      assertEquals("First light", revisions.getFirst().get("message"));
      assertEquals(true, revisions.get(4).get("deleted"));
      assertEquals(2.0, revisions.get(5).get("restored_from"));
      assertEquals(3, bag.lines("data/pictures.jsonl").size());
      assertEquals(3, bag.lines("data/takes.jsonl").size());
      assertEquals(2, bag.lines("data/notes.jsonl").size());
      byte[] photograph = EveryKindOfThing.photograph(10);
      Object hash = Told.at(Visitor.object(owner.get(place("picture"))), "sha256");
      assertArrayEquals(photograph, Files.readAllBytes(bag.file("data/pictures/" + hash)));
      try (Stream<Path> pictures = Files.list(bag.file("data/pictures"))) {
        assertEquals(2, pictures.count(), "a deleted picture has no file");
      }
    }
    String all = new String(joined(archive(STUDIO)), StandardCharsets.ISO_8859_1);
    for (String secret : List.of("@demo.example", "$argon2", "password", "token")) {
      assertFalse(all.contains(secret), secret);
    }
  }

  private static byte[] joined(byte[] zip) throws IOException {
    ByteArrayOutputStream all = new ByteArrayOutputStream();
    for (byte[] entry : UnpackedBag.entries(zip).values()) {
      all.write(entry);
    }
    return all.toByteArray();
  }

  @Test
  void theSameRowsHaveTheSamePayloadAgain() throws IOException {
    Map<String, String> first = UnpackedBag.payload(archive(STUDIO));
    assertEquals(first, UnpackedBag.payload(archive(STUDIO)));
    assertTrue(first.size() > 12, first.toString());
  }

  @Test
  void oneSetupComesWithWhatItNamesAndNoMore() throws Exception {
    try (UnpackedBag bag = UnpackedBag.of(archive(place("setup")))) {
      bag.mustBeValid();
      assertEquals(1, bag.lines("data/setups.jsonl").size());
      assertEquals(1, bag.lines("data/locations.jsonl").size());
      assertEquals(0, bag.lines("data/kits.jsonl").size());
      assertEquals(3, bag.lines("data/pictures.jsonl").size());
    }
    try (UnpackedBag bag = UnpackedBag.of(archive(place("child")))) {
      Map<?, ?> summary = (Map<?, ?>) Json.parse(bag.text("data/archive.json").strip());
      assertEquals("Rope and rain", Told.at(summary, "parents", 0, "title"));
    }
    try (UnpackedBag bag = UnpackedBag.of(archive(place("deleted")))) {
      assertEquals(2, bag.lines("data/setups_revisions.jsonl").size());
    }
  }

  @Test
  void aPictureThatHasLostItsFileIsToldInPlaceOfABrokenDownload() throws Exception {
    String setup =
        owner
            .post(STUDIO + "/setups", Documents.json(Documents.setup("Lost")))
            .headers()
            .firstValue("Location")
            .orElseThrow();
    byte[] photograph = EveryKindOfThing.photograph(77);
    HttpResponse<String> picture =
        owner
            .with("Content-Type", "image/jpeg")
            .send("POST", setup + "/pictures?kind=final", BodyPublishers.ofByteArray(photograph));
    String hash = Told.at(Visitor.object(picture), "sha256").toString();
    try (Stream<Path> tree = Files.walk(house.data().resolve("pictures"))) {
      for (Path file : tree.filter(path -> path.toString().contains(hash)).toList()) {
        Files.delete(file);
      }
    }
    try (UnpackedBag bag = UnpackedBag.of(archive(setup))) {
      bag.mustBeValid();
      assertTrue(bag.text("data/archive.json").contains("\"missing_pictures\":[\"" + hash + "\"]"));
    }
  }

  @Test
  void onlyOwnersTakeTheStudioOutAndAuthorsASetup() {
    String setup = place("child");
    for (String member : List.of("author", "crew", "reader")) {
      Visitor visitor = house.withToken(member + "@demo.example");
      assertEquals(403, visitor.get(STUDIO + "/archive").statusCode(), member);
    }
    assertEquals(
        200, house.withToken("author@demo.example").bytes(setup + "/archive").statusCode());
    assertEquals(403, house.withToken("crew@demo.example").get(setup + "/archive").statusCode());
    assertEquals(404, house.withToken("reader@demo.example").get(setup + "/archive").statusCode());
    assertEquals(404, owner.get("/api/studios/zzzz/archive").statusCode());
    assertEquals(404, owner.get(STUDIO + "/setups/zzzz/archive").statusCode());
    assertEquals(401, house.visitor().get(STUDIO + "/archive").statusCode());
    HttpResponse<byte[]> head = owner.bytes(STUDIO + "/archive");
    assertEquals(200, head.statusCode());
    assertEquals(
        200, owner.send("HEAD", STUDIO + "/archive", BodyPublishers.noBody()).statusCode());
  }

  @Test
  void nothingIsLeftOnTheDiskAfterwards() throws IOException {
    archive(STUDIO);
    try (Stream<Path> tree = Files.walk(house.data().resolve("exports"))) {
      assertEquals(List.of(), tree.filter(Files::isRegularFile).toList());
    }
  }
}
