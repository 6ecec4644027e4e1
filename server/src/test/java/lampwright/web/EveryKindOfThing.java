package lampwright.web;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.util.LinkedHashMap;
import java.util.Map;
import lampwright.Told;
import lampwright.Visitor;
import lampwright.picture.Drawn;
import lampwright.picture.ExifWriter;

/**
 * Fills a studio, over HTTP, with everything that an archive must keep: each kind of thing,
 * changed, deleted and brought back, by two people.
 *
 * @param owner of the studio
 * @param crew a member who logs takes and notes
 */
public record EveryKindOfThing(String studio, Visitor owner, Visitor crew) {

  /** The addresses of what was made, by what it is. */
  public Map<String, String> make() {
    Map<String, String> made = new LinkedHashMap<>();
    kits();
    String location = location();
    String setup = setup(location);
    made.put("setup", setup);
    made.put("location", location);
    String picture = pictures(setup);
    made.put("picture", picture);
    takes(setup);
    notes(setup, picture);
    made.put("child", child(setup));
    made.put("deleted", deleted());
    trails(setup);
    return made;
  }

  private static String place(HttpResponse<String> answer) {
    assertEquals(201, answer.statusCode(), answer.body());
    return answer.headers().firstValue("Location").orElseThrow();
  }

  private static void done(HttpResponse<String> answer) {
    assertEquals(2, answer.statusCode() / 100, answer.body());
  }

  private static String id(String place) {
    return place.substring(place.lastIndexOf('/') + 1);
  }

  private Visitor at(int revision) {
    return owner.with("If-Match", "\"" + revision + "\"");
  }

  private void kits() {
    String kits = studio + "/kits";
    String kept = place(owner.post(kits, Documents.json(Documents.kit("The van"))));
    done(at(1).put(kept, Documents.json(Documents.kit("The van, new"))));
    String gone = place(owner.post(kits, Documents.json(Documents.kit("The lost case"))));
    done(at(1).delete(gone));
    gear(kits);
  }

  /** A head that a kit uses, changed since; and one that was sold. */
  private void gear(String kits) {
    String gear = studio + "/gear";
    String head = place(owner.post(gear, Documents.json(GearForTests.head("Shared head", 64))));
    place(owner.post(kits, Documents.json(GearForTests.kitOf("The bag", head))));
    done(at(1).put(head, Documents.json(GearForTests.head("Shared head", 60))));
    String sold = place(owner.post(gear, Documents.json(GearForTests.head("Sold head", 45))));
    done(at(1).delete(sold));
  }

  private String location() {
    String locations = studio + "/locations";
    String kept = place(owner.post(locations, Documents.json(Documents.location("The slipway"))));
    done(at(1).put(kept, Documents.json(Documents.location("The slipway, low tide"))));
    String gone = place(owner.post(locations, Documents.json(Documents.location("The shed"))));
    done(at(1).delete(gone));
    return kept;
  }

  /** Drafted, proven, used, deleted, brought back and put by: seven revisions. */
  private String setup(String location) {
    Map<String, Object> document =
        Documents.with(
            Documents.setup("Rope and rain"),
            "occasion",
            Map.of("place", Map.of("name", "the slipway", "location", id(location))));
    String setup =
        place(owner.post(studio + "/setups?message=First%20light", Documents.json(document)));
    done(at(1).put(setup + "?message=Moved", Documents.json(document)));
    done(at(2).put(setup + "/state", "{\"state\":\"proven\",\"archived\":false}"));
    done(at(3).post(setup + "/used", "{\"lights\":[{\"light\":\"key\",\"stops_down\":3.5}]}"));
    done(at(4).delete(setup));
    done(at(5).post(setup + "/restorations?message=Better", "{\"revision\":2}"));
    done(at(6).put(setup + "/state", "{\"state\":\"proven\",\"archived\":true}"));
    return setup;
  }

  /** A trail that was changed, and one that nobody walks any more. */
  private void trails(String setup) {
    String trails = studio + "/trails";
    String kept = place(owner.post(trails, TrailsOverRestTest.trail("First day", id(setup))));
    done(at(1).put(kept, TrailsOverRestTest.trail("First days", id(setup))));
    String gone = place(owner.post(trails, TrailsOverRestTest.trail("Given up", id(setup))));
    done(at(1).delete(gone));
  }

  private String child(String parent) {
    return place(owner.post(parent + "/copies", "{\"title\":\"Rope, again\"}"));
  }

  private String deleted() {
    String setup =
        place(owner.post(studio + "/setups", Documents.json(Documents.setup("Given up"))));
    done(at(1).delete(setup));
    return setup;
  }

  /** Another photograph for each shade, with a place in it. */
  static byte[] photograph(int shade) {
    byte[] plain = Drawn.jpeg(Drawn.image(64, 48, (x, y) -> x < 32 ? shade << 8 : 0x202020), 0.9);
    return Drawn.withExif(plain, ExifWriter.full(1));
  }

  private String pictures(String setup) {
    String pictures = setup + "/pictures";
    String kept = picture(pictures + "?kind=final&caption=The%20quay", photograph(10));
    done(at(1).put(kept, "{\"kind\":\"final\",\"may_show_place\":true}"));
    picture(pictures + "?kind=reference", Drawn.png(Drawn.scene(40, 30)));
    String gone = picture(pictures + "?kind=untouched", photograph(20));
    done(at(1).delete(gone));
    return kept;
  }

  private String picture(String path, byte[] file) {
    return place(
        owner
            .with("Content-Type", "image/jpeg")
            .send("POST", path, BodyPublishers.ofByteArray(file)));
  }

  private void takes(String setup) {
    String takes = setup + "/takes";
    String kept = place(crew.post(takes, Documents.json(TakesOverRestTest.take("take-one", 8))));
    done(
        crew.with("If-Match", "\"1\"")
            .put(kept, Documents.json(TakesOverRestTest.take("take-one", 11))));
    String gone = place(crew.post(takes, Documents.json(TakesOverRestTest.take("take-two", 8))));
    done(crew.with("If-Match", "\"1\"").delete(gone));
    place(owner.post(takes, Documents.json(TakesOverRestTest.take("take-three", 5.6))));
  }

  private void notes(String setup, String picture) {
    String notes = setup + "/notes";
    String kept =
        place(
            crew.post(
                notes,
                "{\"text\":\"Fog.\",\"about\":{\"kind\":\"picture\",\"picture\":\"%s\",\"x\":0.25,\"y\":0.5}}"
                    .formatted(id(picture))));
    done(crew.with("If-Match", "\"1\"").put(kept, "{\"text\":\"Fog, then rain.\"}"));
    String gone = place(owner.post(notes, "{\"text\":\"Bring rope.\"}"));
    done(at(1).delete(gone));
  }

  /** Whose id a visitor's person has. */
  static String person(Visitor visitor) {
    return Told.at(Visitor.object(visitor.get("/api/session")), "person", "id").toString();
  }
}
