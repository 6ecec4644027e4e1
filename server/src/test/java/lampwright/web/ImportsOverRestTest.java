package lampwright.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import lampwright.TestHouse;
import lampwright.Told;
import lampwright.Visitor;
import lampwright.people.PersonId;
import lampwright.people.Role;
import lampwright.people.StudioId;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.extension.RegisterExtension;

/** Archives that come in: what is said first, what is done then, and what never happens. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class ImportsOverRestTest {

  private static final String DEMO = "/api/studios/demo";

  @RegisterExtension static final TestHouse house = TestHouse.withDemo();

  private Visitor owner;
  private Visitor author;
  private PersonId ownerId = new PersonId("nobody");
  private Map<String, String> made = Map.of();
  private byte[] studioArchive = new byte[0];

  @BeforeAll
  void aStudioWithEverythingInIt() {
    owner = house.withToken("owner@demo.example");
    author = house.withToken("author@demo.example");
    ownerId = new PersonId(EveryKindOfThing.person(owner));
    Visitor crew = house.withToken("crew@demo.example");
    made = new EveryKindOfThing(DEMO, owner, crew).make();
    studioArchive = archive(DEMO);
  }

  private String place(String what) {
    return Told.at(made, what).toString();
  }

  private byte[] archive(String path) {
    HttpResponse<byte[]> answer = owner.bytes(path + "/archive");
    assertEquals(200, answer.statusCode());
    return answer.body();
  }

  private String newStudio() {
    return "/api/studios/" + house.database().newStudio(ownerId);
  }

  private static HttpResponse<String> send(Visitor who, String studio, byte[] zip) {
    return send(who, studio + "/imports", "application/zip", zip);
  }

  private static HttpResponse<String> send(Visitor who, String path, String type, byte[] zip) {
    return who.with("Content-Type", type).send("POST", path, BodyPublishers.ofByteArray(zip));
  }

  private static String planned(HttpResponse<String> answer) {
    assertEquals(201, answer.statusCode(), answer.body());
    assertEquals("planned", Visitor.object(answer).get("state"), answer.body());
    return answer.headers().firstValue("Location").orElseThrow();
  }

  private static Map<?, ?> ended(Visitor who, String place) {
    long end = System.nanoTime() + 60_000_000_000L;
    Map<?, ?> told = Visitor.object(who.get(place));
    while ("running".equals(told.get("state"))) {
      assertTrue(System.nanoTime() < end, told.toString());
      told = Visitor.object(who.get(place));
    }
    return told;
  }

  private static void bringIn(Visitor who, String place) {
    HttpResponse<String> started = who.send("POST", place + "/execution", BodyPublishers.noBody());
    assertEquals(202, started.statusCode(), started.body());
    Map<?, ?> told = ended(who, place);
    assertEquals("imported", told.get("state"), told.toString());
    assertEquals(Told.at(told, "steps", "total"), Told.at(told, "steps", "done"));
  }

  private static double count(Map<?, ?> told, String kind, String fate) {
    return Told.number(told, "plan", "counts", kind, fate);
  }

  private static List<Path> files(String folder) throws IOException {
    try (Stream<Path> tree = Files.walk(house.data().resolve(folder))) {
      return tree.filter(Files::isRegularFile).sorted().toList();
    }
  }

  @Test
  void aWholeStudioRoundTripsToEquality() throws Exception {
    String studio = newStudio();
    List<Path> pictures = files("pictures");
    HttpResponse<String> answer = send(owner, studio, studioArchive);
    String place = planned(answer);
    Map<?, ?> plan = Visitor.object(answer);
    assertEquals("studio", Told.at(plan, "plan", "what"));
    assertEquals(3.0, count(plan, "takes", "new"));
    assertEquals(0.0, count(plan, "setups", "same") + count(plan, "setups", "clashing"));
    assertTrue(Told.at(plan, "plan", "unknown_authors").toString().contains("Sunniva Barrow"));
    assertFalse(Told.at(plan, "plan", "unknown_authors").toString().contains("Maren Tolliver"));
    assertTrue(Told.at(plan, "plan", "items").toString().contains("Rope and rain"));
    assertEquals(List.of(), Visitor.items(owner.get(studio + "/setups")), "nothing is in it yet");
    assertEquals(List.of(), Visitor.items(owner.get(studio + "/kits")));

    bringIn(owner, place);
    assertEquals(UnpackedBag.payload(studioArchive), UnpackedBag.payload(archive(studio)));
    assertEquals(pictures, files("pictures"), "the same bytes lie in one file");
    String id = place.substring(place.lastIndexOf('/') + 1);
    assertTrue(files("imports").stream().noneMatch(file -> file.toString().contains(id)));

    String setup = studio + place("setup").substring(DEMO.length());
    assertEquals(
        owner.get(place("setup") + "/revisions").body(), owner.get(setup + "/revisions").body());
    HttpResponse<String> notes = owner.get(setup + "/notes");
    assertTrue(notes.body().contains("Sunniva Barrow"), notes.body());
    String picture = studio + place("picture").substring(DEMO.length());
    assertTrue(
        Arrays.equals(EveryKindOfThing.photograph(10), owner.bytes(picture + "/original").body()));
    assertEquals(200, owner.bytes(picture + "/thumbnail").statusCode());
    assertEquals(
        owner.get(place("picture") + "/comparison").body(),
        owner.get(picture + "/comparison").body());
    List<?> found = Visitor.items(owner.get(studio + "/setups?q=rope"));
    assertTrue(found.toString().contains("Rope, again"), found.toString());
    Map<?, ?> child = Visitor.object(owner.get(studio + place("child").substring(DEMO.length())));
    assertEquals("Rope and rain", Told.at(child, "parent", "title"));
    // The next take goes on where the numbers ended.
    HttpResponse<String> restored =
        owner
            .with("If-Match", "\"7\"")
            .put(setup + "/state", "{\"state\":\"proven\",\"archived\":false}");
    assertEquals(200, restored.statusCode(), restored.body());
    HttpResponse<String> take =
        owner.post(setup + "/takes", Documents.json(TakesOverRestTest.take("a-new-take", 8)));
    assertEquals(4.0, Visitor.object(take).get("number"), take.body());
  }

  @Test
  void whatIsThereAndTheSameStaysAsItIs() throws IOException {
    String studio = newStudio();
    bringIn(owner, planned(send(owner, studio, studioArchive)));
    HttpResponse<String> again = send(owner, studio, studioArchive);
    String place = planned(again);
    for (String kind :
        List.of("gear", "kits", "locations", "setups", "pictures", "takes", "notes")) {
      assertEquals(0.0, count(Visitor.object(again), kind, "new"), kind);
      assertEquals(0.0, count(Visitor.object(again), kind, "clashing"), kind);
    }
    assertEquals(List.of(), Told.list(Visitor.object(again), "plan", "unknown_authors"));
    bringIn(owner, place);
    assertEquals(UnpackedBag.payload(studioArchive), UnpackedBag.payload(archive(studio)));
  }

  @Test
  void whatClashesIsRefusedOrComesInBesideWhatIsHere() throws IOException {
    String studio = newStudio();
    bringIn(owner, planned(send(owner, studio, studioArchive)));
    String setup = studio + place("setup").substring(DEMO.length());
    assertEquals(201, owner.post(setup + "/copies", "{\"title\":\"In between\"}").statusCode());
    assertEquals(204, owner.with("If-Match", "\"7\"").delete(setup).statusCode());
    Map<String, String> before = UnpackedBag.payload(archive(studio));

    HttpResponse<String> refusing = send(owner, studio, studioArchive);
    String refused = planned(refusing);
    assertEquals(1.0, count(Visitor.object(refusing), "setups", "clashing"));
    assertEquals("clashing", Told.at(Visitor.object(refusing), "plan", "items", 0, "fate"));
    HttpResponse<String> start =
        owner.send("POST", refused + "/execution", BodyPublishers.noBody());
    assertEquals(409, start.statusCode(), start.body());
    assertEquals(204, owner.delete(refused).statusCode());
    assertEquals(before, UnpackedBag.payload(archive(studio)));

    HttpResponse<String> copying =
        send(owner, studio + "/imports?clashes=copy", "application/zip", studioArchive);
    bringIn(owner, planned(copying));
    List<?> takes = List.of();
    List<?> pictures = List.of();
    List<?> notes = List.of();
    for (Object item :
        Visitor.items(owner.get(studio + "/setups?q=rain&archived=true&limit=100"))) {
      String copy = studio + "/setups/" + Told.at(item, "id");
      if (Told.at(item, "title").equals("Rope and rain")) {
        takes = Visitor.items(owner.get(copy + "/takes"));
        pictures = Visitor.items(owner.get(copy + "/pictures"));
        notes = Visitor.items(owner.get(copy + "/notes"));
        assertEquals(7, Visitor.items(owner.get(copy + "/revisions")).size());
      }
    }
    assertEquals(2, takes.size());
    assertEquals(2, pictures.size());
    assertEquals(1, notes.size());
    assertEquals(404, owner.get(setup).statusCode(), "what was here stays deleted");
  }

  @Test
  void whatIsHereStaysAsItIsWhereThatIsAskedFor() throws IOException {
    String studio = newStudio();
    bringIn(owner, planned(send(owner, studio, studioArchive)));
    String setup = studio + place("setup").substring(DEMO.length());
    HttpResponse<String> now = owner.get(setup);
    Visitor withTag = owner.with("If-Match", now.headers().firstValue("ETag").orElseThrow());
    assertEquals(200, withTag.patch(setup, "{\"title\":\"Our own\"}").statusCode());
    Map<String, String> before = UnpackedBag.payload(archive(studio));
    bringIn(
        owner,
        planned(send(owner, studio + "/imports?clashes=keep", "application/zip", studioArchive)));
    assertEquals(before, UnpackedBag.payload(archive(studio)));
  }

  @Test
  void oneSetupComesInWithoutWhatItWasMadeFrom() throws IOException {
    String studio = newStudio();
    HttpResponse<String> answer = send(owner, studio, archive(place("child")));
    String place = planned(answer);
    assertEquals(
        "Rope and rain", Told.at(Visitor.object(answer), "plan", "parents_not_here", 0, "title"));
    bringIn(owner, place);
    String child = studio + place("child").substring(DEMO.length());
    assertFalse(Visitor.object(owner.get(child)).containsKey("parent"));
    HttpResponse<String> again = send(owner, studio, archive(place("child")));
    assertEquals(1.0, count(Visitor.object(again), "setups", "same"), again.body());

    byte[] whole = archive(place("setup"));
    String other = newStudio();
    bringIn(owner, planned(send(owner, other, whole)));
    String setup = other + place("setup").substring(DEMO.length());
    assertEquals(UnpackedBag.payload(whole), UnpackedBag.payload(archive(setup)));
  }

  @Test
  void whoCameByAnArchiveCanNeitherSignInNorBelongToAnything() throws SQLException {
    String studio = newStudio();
    bringIn(owner, planned(send(owner, studio, studioArchive)));
    String id = studio.substring("/api/studios/".length());
    List<String> people =
        house
            .database()
            .sqlAsSuperuser(
                "select id from lampwright.person where archive_studio_id = '" + id + "'");
    assertEquals(1, people.size(), "the crew; the owner is a member here");
    String person = people.getFirst();
    assertFalse(person.equals(EveryKindOfThing.person(house.withToken("crew@demo.example"))));
    for (String sql :
        List.of(
            "insert into lampwright.member (studio_id, person_id, role, created_at) values"
                + " ('demo', '%s', 'owner', now())",
            "insert into lampwright.session (token_hash, person_id, created_at, seen_at,"
                + " expires_at) values (decode(repeat('0f', 32), 'hex'), '%s', now(), now(),"
                + " now())",
            "insert into lampwright.token (id, token_hash, person_id, name, created_at) values"
                + " ('tttt', decode(repeat('0e', 32), 'hex'), '%s', 'x', now())",
            "update lampwright.person set email = 'a@b', password_hash = 'x' where id = '%s'")) {
      assertThrows(
          SQLException.class, () -> house.database().sqlAsSuperuser(sql.formatted(person)));
    }
    assertEquals(
        List.of("0"),
        house
            .database()
            .sqlAsSuperuser(
                "select count(*) from lampwright.member where person_id = '" + person + "'"));
  }

  @Test
  void aPersonWhoIsNoMemberGetsNoWordsInTheirMouth() throws SQLException {
    String studio = newStudio();
    bringIn(owner, planned(send(owner, studio, studioArchive)));
    String crew = EveryKindOfThing.person(house.withToken("crew@demo.example"));
    String id = studio.substring("/api/studios/".length());
    assertEquals(
        List.of("0"),
        house
            .database()
            .sqlAsSuperuser(
                "select count(*) from lampwright.take_revision where studio_id = '%s' and changed_by = '%s'"
                    .formatted(id, crew)));
    StudioId there = new StudioId(house.database().newStudio(ownerId).text());
    house.database().join(there, ownerId, new PersonId(crew), Role.CREW);
    String joined = "/api/studios/" + there;
    bringIn(owner, planned(send(owner, joined, studioArchive)));
    assertEquals(
        List.of("true"),
        house
            .database()
            .sqlAsSuperuser(
                "select (count(*) > 0)::text from lampwright.take_revision where studio_id = '%s' and changed_by = '%s'"
                    .formatted(there, crew)));
  }

  @Test
  void anAuthorsArchiveSpeaksForNoOtherMember() throws IOException {
    StudioId there = new StudioId(house.database().newStudio(ownerId).text());
    PersonId authorId = new PersonId(EveryKindOfThing.person(author));
    house.database().join(there, ownerId, authorId, Role.AUTHOR);
    String studio = "/api/studios/" + there;
    HttpResponse<String> answer = send(author, studio, archive(place("setup")));
    assertTrue(
        Told.at(Visitor.object(answer), "plan", "unknown_authors")
            .toString()
            .contains("Maren Tolliver"),
        answer.body());
    bringIn(author, planned(answer));
    String setup = studio + place("setup").substring(DEMO.length());
    for (Object line : Visitor.items(author.get(setup + "/revisions"))) {
      assertEquals("Maren Tolliver (from an archive)", Told.at(line, "changed_by"));
    }
    assertEquals(UnpackedBag.payload(archive(place("setup"))), UnpackedBag.payload(archive(setup)));
  }

  @Test
  void onlyWhoMayDoesItAndOnlyInTheirStudio() {
    byte[] setup = archive(place("setup"));
    for (String member : List.of("crew", "reader")) {
      Visitor visitor = house.withToken(member + "@demo.example");
      assertEquals(403, send(visitor, DEMO, setup).statusCode(), member);
    }
    HttpResponse<String> whole = send(author, DEMO, studioArchive);
    assertEquals(403, whole.statusCode(), whole.body());
    assertTrue(whole.body().contains("only owners"), whole.body());
    assertEquals(404, send(owner, "/api/studios/zzzz", setup).statusCode());
    assertEquals(401, send(house.visitor(), DEMO, setup).statusCode());
    String place = planned(send(author, DEMO, setup));
    assertEquals(200, owner.get(place).statusCode());
    assertEquals(403, house.withToken("crew@demo.example").get(place).statusCode());
    assertEquals(404, owner.get(newStudio() + place.substring(DEMO.length())).statusCode());
    String ofOwner = planned(send(owner, DEMO, setup));
    assertEquals(404, author.get(ofOwner).statusCode());
    assertEquals(404, author.delete(ofOwner).statusCode());
    assertEquals(
        404, author.send("POST", ofOwner + "/execution", BodyPublishers.noBody()).statusCode());
    assertEquals(204, owner.delete(ofOwner).statusCode());
    bringIn(author, place);
    assertEquals(409, author.delete(place).statusCode(), "it has been done");
    assertEquals(
        409, author.send("POST", place + "/execution", BodyPublishers.noBody()).statusCode());
  }

  @Test
  void whatIsUnsoundIsRefusedAndLeavesNothing() throws IOException {
    String studio = newStudio();
    List<Path> pictures = files("pictures");
    List<Path> waiting = files("imports");
    byte[] cut = Arrays.copyOf(studioArchive, studioArchive.length - 5);
    byte[] flipped = studioArchive.clone();
    flipped[flipped.length / 2] ^= 1;
    for (byte[] hostile :
        List.of(new byte[0], "PK".getBytes(StandardCharsets.UTF_8), cut, flipped)) {
      HttpResponse<String> answer = send(owner, studio, hostile);
      assertEquals(422, answer.statusCode(), answer.body());
      assertFalse(Told.list(Visitor.object(answer), "errors").isEmpty());
    }
    HttpResponse<String> broken = send(owner, studio, flipped);
    assertTrue(
        Told.at(Visitor.object(broken), "errors", 0, "pointer").toString().startsWith("/data~1"),
        broken.body());
    String imports = studio + "/imports";
    assertEquals(415, send(owner, imports, "image/png", studioArchive).statusCode());
    assertEquals(
        422,
        send(owner, imports + "?clashes=ignore", "application/zip", studioArchive).statusCode());
    assertEquals(
        422, send(owner, imports + "?mood=1", "application/zip", studioArchive).statusCode());
    assertEquals(404, owner.get(imports + "/zzzz").statusCode());
    assertEquals(404, owner.delete(imports + "/zzzz").statusCode());
    assertEquals(waiting, files("imports"));
    assertEquals(pictures, files("pictures"));
    assertEquals(List.of(), Visitor.items(owner.get(studio + "/setups")));
  }

  @Test
  void tooLargeAnArchiveIsRefusedWhenItIsAnnounced() throws Exception {
    RawAnswer answer =
        RawAnswer.to(
            house.port(),
            "POST "
                + DEMO
                + "/imports HTTP/1.1\r\nAuthorization: "
                + owner.header("Authorization")
                + "\r\nContent-Type: application/zip\r\nContent-Length: 99999999999\r\n");
    assertEquals(413, answer.status(), answer.toString());
  }

  @Test
  void aFewWaitAndNoMore() throws IOException {
    String studio = newStudio();
    byte[] setup = archive(place("child"));
    List<String> places =
        Stream.generate(() -> planned(send(owner, studio, setup))).limit(3).toList();
    HttpResponse<String> fourth = send(owner, studio, setup);
    assertEquals(409, fourth.statusCode(), fourth.body());
    for (String place : places) {
      assertEquals(204, owner.delete(place).statusCode());
      assertEquals(404, owner.get(place).statusCode());
    }
    assertEquals(List.of(), Visitor.items(owner.get(studio + "/setups")));
  }

  @Test
  void anImportThatIsStoppedHasDoneNothing() throws IOException {
    String studio = newStudio();
    String setup =
        owner
            .post(DEMO + "/setups", Documents.json(Documents.setup("With many pictures")))
            .headers()
            .firstValue("Location")
            .orElseThrow();
    List<String> pictures = ManyPictures.add(owner, setup, 10);
    byte[] archive = archive(setup);
    pictures.forEach(
        picture -> assertEquals(204, owner.with("If-Match", "\"1\"").delete(picture).statusCode()));
    List<Path> before = files("pictures");
    String place = planned(send(owner, studio, archive));
    assertEquals(before, files("pictures"), "a plan puts nothing into its place");
    assertEquals(
        202, owner.send("POST", place + "/execution", BodyPublishers.noBody()).statusCode());
    ManyPictures.untilDone(owner, place, 2);
    HttpResponse<String> stopped = owner.delete(place);
    assertEquals(204, stopped.statusCode(), stopped.body());
    assertEquals(404, owner.get(place).statusCode());
    assertEquals(before, files("pictures"));
    assertEquals(List.of(), Visitor.items(owner.get(studio + "/setups")));

    bringIn(owner, planned(send(owner, studio, archive)));
    String there = studio + setup.substring(DEMO.length());
    assertEquals(10, Visitor.items(owner.get(there + "/pictures")).size());
    assertEquals(before.size() + 40, files("pictures").size());
  }
}
