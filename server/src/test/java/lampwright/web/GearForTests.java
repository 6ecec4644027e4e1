package lampwright.web;

import java.net.http.HttpResponse;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import lampwright.Visitor;

/** Sound gear for tests over HTTP, and kits that use it. */
final class GearForTests {

  static final String GEAR = "/api/studios/demo/gear";
  static final String KITS = "/api/studios/demo/kits";

  private GearForTests() {}

  /** A head by its maker's guide number. */
  static Map<String, Object> head(String name, double guideNumberM) {
    Map<String, Object> head = new LinkedHashMap<>();
    head.put("name", name);
    head.put("energy_ws", 400.0);
    head.put("output", Map.of("kind", "guide_number", "guide_number_m", guideNumberM));
    return gear("head", head);
  }

  /** A box of 1.2 m across. */
  static Map<String, Object> octagon(String name) {
    Map<String, Object> octagon = new LinkedHashMap<>();
    octagon.put("name", name);
    octagon.put("kind", "octagon");
    octagon.put("face", Map.of("shape", "disc", "diameter_m", 1.2));
    return gear("modifier", octagon);
  }

  static Map<String, Object> pack(String name) {
    return gear("pack", Map.of("name", name, "energy_ws", 1200.0, "outlets", 2.0));
  }

  static Map<String, Object> gear(String kind, Map<String, Object> piece) {
    Map<String, Object> gear = new LinkedHashMap<>();
    gear.put("kind", kind);
    gear.put(kind, piece);
    return gear;
  }

  /** The same gear with some fields of the piece set. */
  static Map<String, Object> withPiece(Map<String, Object> gear, String field, Object value) {
    String kind = String.valueOf(gear.get("kind"));
    Map<String, Object> piece = new LinkedHashMap<>();
    if (gear.get(kind) instanceof Map<?, ?> before) {
      before.forEach((key, kept) -> piece.put(key.toString(), kept));
    }
    piece.put(field, value);
    return Documents.with(gear, kind, piece);
  }

  /** A kit that takes gear by its addresses, one of each. */
  static Map<String, Object> kitOf(String name, String... addresses) {
    Map<String, Object> kit = new LinkedHashMap<>();
    kit.put("name", name);
    kit.put("gear", List.of(addresses).stream().map(at -> Map.of("id", id(at))).toList());
    return kit;
  }

  static String id(String address) {
    return address.substring(address.lastIndexOf('/') + 1);
  }

  /** Keeps it and gives its address. */
  static String kept(Visitor author, String where, Map<String, Object> document) {
    HttpResponse<String> answer = author.post(where, Documents.json(document));
    if (answer.statusCode() != 201) {
      throw new AssertionError(answer.body());
    }
    return answer.headers().firstValue("Location").orElseThrow();
  }

  /** What stands at an address. */
  static Map<?, ?> told(Visitor visitor, String address) {
    HttpResponse<String> answer = visitor.get(address);
    if (answer.statusCode() != 200) {
      throw new AssertionError(answer.body());
    }
    return Visitor.object(answer);
  }
}
