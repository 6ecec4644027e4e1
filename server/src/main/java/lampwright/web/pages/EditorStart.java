package lampwright.web.pages;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lampwright.document.Reading;
import lampwright.gear.Head;
import lampwright.gear.stock.GearItem;
import lampwright.language.Notation;
import lampwright.setup.SetupDocument;

/**
 * The sheet that a new setup begins on: one person at the hit mark, the camera four metres off, one
 * key light from the studio's own heads. Common practice, no source.
 */
final class EditorStart {

  private EditorStart() {}

  /** From nothing. */
  static SetupDocument fromNothing(List<GearItem> gear, Notation notation) {
    Map<String, Object> light = new LinkedHashMap<>();
    light.put("id", "key");
    light.put("role", "key");
    light.put("head", head(gear).<Object>map(Head.FORM::writeObject).orElseGet(() -> plainHead()));
    light.put("place", point(-1.4, -1.6, 2));
    light.put("target", Map.of("name", notation.say("editor.new.target"), "at", point(0, 0, 1.6)));
    light.put("stops_down", 2.0);
    Map<String, Object> document = new LinkedHashMap<>();
    document.put("title", notation.say("editor.new.title"));
    document.put("exposure", Map.of("f_number", 8.0, "time", "1/125", "iso", 100.0));
    document.put("camera", Map.of("place", point(0, -4, 1.5), "aim", point(0, 0, 1.3)));
    document.put(
        "subjects",
        List.of(
            Map.of(
                "name",
                notation.say("editor.new.subject"),
                "place",
                point(0, 0, 0),
                "height_m",
                1.7)));
    document.put("lights", List.of(light));
    return read(document);
  }

  /** From another: without how that one came out. */
  static SetupDocument from(SetupDocument parent) {
    Map<String, Object> document = new LinkedHashMap<>(SetupDocument.FORM.writeObject(parent));
    document.remove("outcome");
    document.remove("retouch_notes");
    return read(document);
  }

  private static SetupDocument read(Map<String, Object> document) {
    return switch (SetupDocument.FORM.read(document)) {
      case Reading.Sound<SetupDocument>(SetupDocument sound) -> sound;
      case Reading.Faulty<SetupDocument> faulty ->
          throw new IllegalStateException("A new setup begins sound: " + faulty.problems());
    };
  }

  private static Optional<Head> head(List<GearItem> gear) {
    return gear.stream()
        .filter(item -> item.inOrder() > 0)
        .map(GearItem::piece)
        .filter(Head.class::isInstance)
        .map(Head.class::cast)
        .filter(head -> head.range().value() >= 2)
        .findFirst();
  }

  private static Map<String, Object> plainHead() {
    return Map.of(
        "name",
        "400 W·s battery head",
        "energy_ws",
        400.0,
        "output",
        Map.of("kind", "guide_number", "guide_number_m", 60.0));
  }

  private static Map<String, Object> point(double right, double away, double up) {
    return Map.of("x_m", right, "y_m", away, "z_m", up);
  }
}
