package lampwright.web.pages;

import java.time.ZoneOffset;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import lampwright.document.Json;
import lampwright.gear.Kit;
import lampwright.language.Notation;
import lampwright.people.PersonId;
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

  /** What the modules of these pages import besides one another. */
  private static final Set<String> SHARED = Set.of("editor-units.js", "elements.js", "engine.js");

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
    data.put("turned_deg", FromHitMark.turned(document).value());
    data.put("kits", kits.stream().map(FieldData::kit).toList());
    return Json.print(data);
  }

  private Map<String, Object> common() {
    Map<String, Object> data = new LinkedHashMap<>();
    data.put("person", person.text());
    data.put("list", list);
    data.put("build", assets.hash());
    data.put(
        "assets", Assets.NAMES.stream().filter(FieldData::isNeeded).map(assets::path).toList());
    data.put("language", notation.language().tag());
    data.put("lengths", notation.lengths().key());
    data.put("stops", notation.stops().key());
    data.put("phrases", phrases());
    return data;
  }

  private static Map<String, Object> kit(KeptKit kit) {
    return Map.of("id", kit.id().text(), "document", Kit.FORM.write(kit.document()));
  }

  /** What the pages need besides what they name themselves: modules, and fonts of the style. */
  private static boolean isNeeded(String asset) {
    return SHARED.contains(asset)
        || asset.matches("field-.*\\.js|fonts/.*-latin-\\d+-normal\\.woff2");
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
