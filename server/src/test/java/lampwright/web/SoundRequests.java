package lampwright.web;

import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Function;
import lampwright.Told;
import lampwright.Visitor;
import lampwright.document.Json;
import lampwright.people.Role;
import lampwright.picture.Drawn;

/** A sound request for each change over REST in a studio, by its operation. */
final class SoundRequests {

  static final String KEY = "{\"readings\":[\"key\"]}";

  private static final String STUDIO = "/api/studios/{studio}";
  private static final String SETUP = STUDIO + "/setups/{setup}";

  private final Map<String, Sound> sound = new LinkedHashMap<>();
  private final Function<Role, Visitor> members;

  SoundRequests(Function<Role, Visitor> members) {
    this.members = members;
    setups();
    gear();
    day();
    learning();
    rest();
    people();
  }

  /** A sound request, by the things that are there. */
  record Sound(String type, String basedOn, String query, Content content) {}

  interface Content {
    byte[] of(RoleThings things);
  }

  Map<String, Sound> all() {
    return Map.copyOf(sound);
  }

  static byte[] archive(Visitor author, RoleThings things) {
    return author.bytes(things.path("/api/studios/demo/setups/{setup}/archive")).body();
  }

  private void sound(String operation, String basedOn, String body) {
    sound(operation, new Sound("application/json", basedOn, "", _ -> bytes(body)));
  }

  private void sound(String operation, Sound request) {
    sound.put(operation, request);
  }

  private void patch(String path, String basedOn, String body) {
    sound(
        "PATCH " + path, new Sound("application/merge-patch+json", basedOn, "", _ -> bytes(body)));
  }

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  private void setups() {
    String setup = Documents.json(Documents.setup("Of a role"));
    String setups = STUDIO + "/setups";
    sound("POST " + setups, "", setup);
    sound("PUT " + SETUP, "3", setup);
    patch(SETUP, "3", "{\"title\":\"Changed\"}");
    sound("DELETE " + SETUP, "3", "");
    sound("POST " + SETUP + "/used", "3", "{\"lights\":[{\"light\":\"key\",\"stops_down\":2}]}");
    sound("POST " + SETUP + "/restorations", "3", "{\"revision\":1}");
    sound("PUT " + SETUP + "/state", "3", "{\"state\":\"draft\",\"archived\":true}");
    sound("POST " + SETUP + "/copies", "3", "{\"title\":\"A copy\"}");
    byte[] file = Drawn.png(Drawn.scene(44, 30));
    sound(
        "POST " + SETUP + "/pictures",
        new Sound("image/png", "", "?kind=behind_the_scenes", _ -> file));
    String picture = SETUP + "/pictures/{picture}";
    sound("PUT " + picture, "1", "{\"kind\":\"reference\"}");
    patch(picture, "1", "{\"caption\":\"x\"}");
    sound("DELETE " + picture, "1", "");
    sound("POST " + SETUP + "/adaptations", "", "{\"kit\":\"{kit}\"}");
    String map = "{\"over\":" + ReadingMapsOverRestTest.FLOOR + "}";
    String fall = "\"happening\":{\"ambient_falls_stops\":1}";
    sound("POST " + SETUP + "/reading-maps", "", map);
    sound("POST " + SETUP + "/reactions", "", "{" + fall + "}");
    sound("POST " + STUDIO + "/figures", "", setup);
    sound(
        "POST " + STUDIO + "/reading-maps", "", "{\"document\":" + setup + ",\"map\":" + map + "}");
    sound(
        "POST " + STUDIO + "/adaptations",
        "",
        "{\"document\":" + setup + ",\"kit\":" + Documents.json(Documents.kit("Mine")) + "}");
    sound("POST " + STUDIO + "/reactions", "", "{\"document\":" + setup + "," + fall + "}");
    sound("POST " + STUDIO + "/calibrations", "", Documents.json(Documents.calibrationSheet()));
  }

  private void gear() {
    String kit = Documents.json(Documents.kit("Of a role"));
    sound("POST " + STUDIO + "/kits", "", kit);
    sound("PUT " + STUDIO + "/kits/{kit}", "1", kit);
    patch(STUDIO + "/kits/{kit}", "1", "{\"name\":\"Changed\"}");
    sound("DELETE " + STUDIO + "/kits/{kit}", "1", "");
    String head = Documents.json(GearForTests.head("Of a role", 50));
    sound("POST " + STUDIO + "/gear", "", head);
    sound("PUT " + STUDIO + "/gear/{gear}", "2", head);
    patch(STUDIO + "/gear/{gear}", "2", "{\"head\":{\"name\":\"Changed\"}}");
    sound("DELETE " + STUDIO + "/gear/{gear}", "2", "");
    sound("POST " + STUDIO + "/gear/{gear}/calibration", "", "");
    sound("POST " + STUDIO + "/gear/import", "", "{\"gear\":[{\"document\":" + head + "}]}");
    sound(
        "POST " + STUDIO + "/candela-tables",
        new Sound("text/plain; charset=utf-8", "", "", _ -> bytes(CandelaTablesOverRestTest.FILE)));
    String location = Documents.json(Documents.location("Of a role"));
    sound("POST " + STUDIO + "/locations", "", location);
    sound("PUT " + STUDIO + "/locations/{location}", "1", location);
    patch(STUDIO + "/locations/{location}", "1", "{\"name\":\"Changed\"}");
    sound("DELETE " + STUDIO + "/locations/{location}", "1", "");
  }

  private void day() {
    String take = Documents.json(TakesOverRestTest.take("of-a-role", 8));
    sound("POST " + SETUP + "/takes", "", take);
    sound("PUT " + SETUP + "/takes/{take}", "1", take.replace("of-a-role", "{client_key}"));
    patch(SETUP + "/takes/{take}", "1", "{\"why\":\"x\"}");
    sound("DELETE " + SETUP + "/takes/{take}", "1", "");
    sound("POST " + SETUP + "/takes/{take}/calibration", "3", KEY);
    sound("POST " + SETUP + "/takes/{take}/gear-readings", "", KEY);
    sound("POST " + SETUP + "/notes", "", "{\"text\":\"Fog.\"}");
    sound("PUT " + SETUP + "/notes/{note}", "1", "{\"text\":\"Rain.\"}");
    patch(SETUP + "/notes/{note}", "1", "{\"text\":\"Rain.\"}");
    sound("DELETE " + SETUP + "/notes/{note}", "1", "");
    sound("POST " + SETUP + "/proposals", "", "{\"setup_revision\":1,\"used\":{}}");
    sound("DELETE " + SETUP + "/proposals/{proposal}", "1", "");
    sound("POST " + SETUP + "/proposals/{proposal}/acceptance", "3", "");
  }

  private void learning() {
    String trail = STUDIO + "/trails/{trail}";
    Content written = things -> bytes(TrailsOverRestTest.trail("New", things.path("{setup}")));
    sound("POST " + STUDIO + "/trails", new Sound("application/json", "", "", written));
    sound("PUT " + trail, new Sound("application/json", "1", "", written));
    patch(trail, "1", "{\"name\":\"Changed\"}");
    sound("DELETE " + trail, "1", "");
    sound("POST " + trail + "/stages/{stage}/done", "", "");
    sound("POST " + trail + "/stages/{stage}/builds", "", "{\"take\":\"{take}\"}");
    sound("POST " + STUDIO + "/builds/{build}/judgement", "", "{\"signed_off\":true}");
    sound(
        "POST " + STUDIO + "/drills/answers",
        new Sound("application/json", "", "", this::answered));
  }

  private void people() {
    patch(STUDIO, "1", "{\"name\":\"Another name\"}");
    String member = STUDIO + "/members/{person}";
    sound("PUT " + member, "1", "{\"role\":\"author\"}");
    sound("DELETE " + member, "1", "");
    sound("POST " + member + "/reset-links", "", "");
    sound("POST " + STUDIO + "/invitations", "", "{\"role\":\"crew\",\"meant_for\":\"Tove\"}");
    sound("DELETE " + STUDIO + "/invitations/{invitation}", "", "");
    sound("POST " + SETUP + "/share-links", "", "{}");
    sound("DELETE " + SETUP + "/share-links/{link}", "", "");
  }

  /** No answer to a drill that was really asked: that is judged like any other. */
  private byte[] answered(RoleThings things) {
    Map<?, ?> drill =
        Visitor.object(
            members
                .apply(Role.READER)
                .get(
                    "/api/studios/demo/drills?kind=power_after_move&setup="
                        + things.path("{setup}")));
    return bytes(
        Json.print(
            Map.of(
                "kind", Told.at(drill, "kind"),
                "setup", Told.at(drill, "setup", "id"),
                "seed", Told.at(drill, "seed"),
                "question", Told.at(drill, "question"),
                "number", 1)));
  }

  private void rest() {
    sound("POST " + STUDIO + "/index/rebuild", "", "");
    sound("DELETE " + STUDIO + "/index/rebuild", "", "");
    byte[] picture = Drawn.jpeg(Drawn.scene(60, 40), 0.9);
    sound("POST " + STUDIO + "/shown-pictures", new Sound("image/jpeg", "", "", _ -> picture));
    sound(
        "POST " + STUDIO + "/imports",
        new Sound(
            "application/zip", "", "", things -> archive(members.apply(Role.AUTHOR), things)));
    sound("POST " + STUDIO + "/imports/{import}/execution", "", "");
    sound("DELETE " + STUDIO + "/imports/{import}", "", "");
    sound("POST " + STUDIO + "/saved-searches", "", "{\"name\":\"New\",\"question\":\"q=fog\"}");
    sound(
        "PUT " + STUDIO + "/saved-searches/{search}", "1", "{\"name\":\"N\",\"question\":\"q=a\"}");
    patch(STUDIO + "/saved-searches/{search}", "1", "{\"name\":\"Changed\"}");
    sound("DELETE " + STUDIO + "/saved-searches/{search}", "1", "");
    sound("POST " + STUDIO + "/saved-searches/{search}/looks", "", "");
  }
}
