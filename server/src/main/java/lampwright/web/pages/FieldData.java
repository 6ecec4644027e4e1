package lampwright.web.pages;

import java.time.ZoneOffset;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import lampwright.document.Json;
import lampwright.gear.Kit;
import lampwright.language.Notation;
import lampwright.people.PersonId;
import lampwright.setup.Camera;
import lampwright.setup.Occasion;
import lampwright.setup.SetupDocument;
import lampwright.setup.building.FromHitMark;
import lampwright.tasks.Catalogued;
import lampwright.tasks.KeptKit;

/** What the scripts of the pages on location begin with: one JSON text in an attribute. */
record FieldData(Notation notation, PersonId person, String list, Assets assets) {

  /** What the scripts and the engine say of all phrases. */
  private static final List<String> ROOMS =
      List.of("caution.", "drawing.", "field.", "reacting.", "taking.", "wording.");

  /** What the pages need besides what they name themselves: modules and what those import. */
  static final List<String> NEEDED =
      List.of(
          "editor-units.js",
          "engine.js",
          "field-caches.js",
          "field-copy.js",
          "field-day.js",
          "field-engine.js",
          "field-keeping.js",
          "field-list.js",
          "field-now.js",
          "field-outbox.js",
          "field-page.js",
          "field-parts.js",
          "field-steps.js",
          "field-store.js",
          "field-takes.js",
          "field-waiting.js",
          "field-walk.js",
          "field-words.js",
          "fonts/atkinson-hyperlegible-mono-latin-400-normal.woff2",
          "fonts/atkinson-hyperlegible-mono-latin-600-normal.woff2",
          "fonts/atkinson-hyperlegible-next-latin-400-normal.woff2",
          "fonts/atkinson-hyperlegible-next-latin-600-normal.woff2");

  /** Of the list of kept setups. */
  String ofList() {
    return Json.print(common());
  }

  /**
   * Of one setup.
   *
   * @param path of its page
   * @param kits whose spare heads and filters may stand by
   */
  String ofSetup(Catalogued setup, String path, List<KeptKit> kits, boolean mayLog) {
    SetupDocument document = setup.document();
    Map<String, Object> data = common();
    data.put("path", path);
    data.put("title", document.title());
    data.put("revision", setup.revision());
    data.put("may_log", mayLog);
    data.put(
        "offset",
        document
            .occasion()
            .flatMap(Occasion::utcOffset)
            .filter(offset -> !offset.equals(ZoneOffset.UTC))
            .map(ZoneOffset::getId)
            .orElse("+00:00"));
    data.put("document", SetupDocument.FORM.writeObject(document));
    data.put("axis_deg", axis(document));
    data.put("kits", kits.stream().map(FieldData::kit).toList());
    return Json.print(data);
  }

  private Map<String, Object> common() {
    Map<String, Object> data = new LinkedHashMap<>();
    data.put("person", person.text());
    data.put("list", list);
    data.put("build", assets.hash());
    data.put("assets", NEEDED.stream().map(assets::path).toList());
    data.put("language", notation.language().tag());
    data.put("lengths", notation.lengths().key());
    data.put("stops", notation.stops().key());
    data.put("phrases", phrases());
    return data;
  }

  /** By how much a direction that is read off is more than the same from the document's y axis. */
  private static double axis(SetupDocument setup) {
    double north = setup.camera().flatMap(Camera::bearing).map(b -> b.value()).orElse(0.0);
    return north - FromHitMark.axis(setup).value();
  }

  private static Map<String, Object> kit(KeptKit kit) {
    return Map.of("id", kit.id().text(), "document", Kit.FORM.write(kit.document()));
  }

  private Map<String, String> phrases() {
    Map<String, String> sent = new TreeMap<>();
    notation
        .phrases()
        .byKey()
        .forEach(
            (key, phrase) -> {
              if (ROOMS.stream().anyMatch(key::startsWith)) {
                sent.put(key, phrase);
              }
            });
    return sent;
  }
}
