package lampwright.web.pages;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import lampwright.document.Json;
import lampwright.gear.stock.GearItem;
import lampwright.gear.stock.GearKind;
import lampwright.language.Notation;
import lampwright.language.Phrases;
import lampwright.people.PersonId;
import lampwright.place.Location;
import lampwright.setup.SetupDocument;
import lampwright.tasks.Editing;

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
    List<Editing.Spot> locations,
    Notation notation) {

  /** What a light or a camera is chosen from. */
  private static final List<GearKind> CHOSEN =
      List.of(
          GearKind.HEAD,
          GearKind.MODIFIER,
          GearKind.GEL,
          GearKind.BODY,
          GearKind.LENS,
          GearKind.STAND);

  /** What the editor and the engine say of all phrases; tests hold that nothing is missed. */
  private static final List<String> ROOMS = List.of("caution.", "drawing.", "editor.", "wording.");

  /** What an occasion keeps of a location, so that it stays readable without it. */
  private static final List<String> OF_A_PLACE =
      List.of("name", "kind", "indoors", "latitude_deg", "longitude_deg");

  EditorData {
    gear = List.copyOf(gear);
    locations = List.copyOf(locations);
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
    data.put("locations", locations.stream().map(EditorData::place).toList());
    data.put("language", notation.language().tag());
    data.put("lengths", notation.lengths().key());
    data.put("stops", notation.stops().key());
    data.put("phrases", phrases(notation.phrases()));
    return Json.print(data);
  }

  /** What the editor and the engine in the browser say. */
  static Map<String, String> phrases(Phrases all) {
    Map<String, String> sent = new TreeMap<>();
    all.byKey()
        .forEach(
            (key, phrase) -> {
              if (ROOMS.stream().anyMatch(key::startsWith)) {
                sent.put(key, phrase);
              }
            });
    return sent;
  }

  /** A location as the place of an occasion says it. */
  private static Map<String, Object> place(Editing.Spot spot) {
    Map<String, Object> place = new LinkedHashMap<>(Location.FORM.writeObject(spot.location()));
    place.keySet().retainAll(OF_A_PLACE);
    place.put("location", spot.id().text());
    return place;
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
