package lampwright.web.pages;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lampwright.document.Json;
import lampwright.gear.stock.GearItem;
import lampwright.gear.stock.GearKind;
import lampwright.language.Notation;
import lampwright.people.PersonId;
import lampwright.setup.SetupDocument;

/**
 * What the editor's script begins with, as one JSON text that the page carries in an attribute.
 *
 * @param setup the id of the setup; empty for a new one
 * @param from the query that names the parent of a new one, {@code ?parent=…}; may be empty
 * @param person who edits, so that what is kept on a device is each person's own
 */
record EditorData(
    String studio,
    String setup,
    String from,
    PersonId person,
    int revision,
    String csrfToken,
    SetupDocument document,
    List<GearItem> gear,
    Notation notation) {

  /** What a light or a camera is chosen from. */
  private static final List<GearKind> CHOSEN =
      List.of(GearKind.HEAD, GearKind.MODIFIER, GearKind.GEL, GearKind.BODY, GearKind.LENS);

  EditorData {
    gear = List.copyOf(gear);
  }

  String json() {
    Map<String, Object> data = new LinkedHashMap<>();
    data.put("studio", studio);
    data.put("setup", setup);
    data.put("from", from);
    data.put("person", person.text());
    data.put("revision", revision);
    data.put("csrf", csrfToken);
    data.put("document", SetupDocument.FORM.writeObject(document));
    data.put("gear", gearByKind());
    data.put("language", notation.language().tag());
    data.put("lengths", notation.lengths().key());
    data.put("stops", notation.stops().key());
    data.put("phrases", notation.phrases().byKey());
    return Json.print(data);
  }

  private Map<String, Object> gearByKind() {
    Map<String, Object> all = new LinkedHashMap<>();
    for (GearKind kind : CHOSEN) {
      List<Object> pieces = new ArrayList<>();
      for (GearItem item : gear) {
        if (item.kind() == kind && GearItem.FORM.write(item) instanceof Map<?, ?> written) {
          Optional.ofNullable(written.get(kind.word())).ifPresent(pieces::add);
        }
      }
      all.put(kind.word(), pieces);
    }
    return all;
  }
}
