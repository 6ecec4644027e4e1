package lampwright.gear.exchange;

import static lampwright.document.Field.optional;
import static lampwright.document.Field.required;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lampwright.document.Field;
import lampwright.document.Form;
import lampwright.document.Forms;
import lampwright.document.ObjectForm;
import lampwright.document.Reading;
import lampwright.gear.stock.GearId;
import lampwright.gear.stock.GearItem;
import lampwright.people.Ids;

/** Gear of all kinds as one JSON document: {@code {"gear": [{"id": …, "document": {…}}]}}. */
public final class GearList {

  private static final String GEAR = "gear";
  private static final int LONGEST_ID = 32;

  private record Entry(Optional<GearId> id, GearItem document) {

    private static final Field<Entry, Optional<GearId>> ID =
        optional(
            "id",
            Forms.text(LONGEST_ID)
                .like("^[0-9a-z]{4,32}$", Ids::isId, "one that an export gave")
                .as(GearId::new, GearId::text),
            Entry::id,
            "Which gear it is; left out it is found by kind and name, or new.");
    private static final Field<Entry, GearItem> DOCUMENT =
        required("document", GearItem.FORM, Entry::document, "The gear.");

    static final ObjectForm<Entry> FORM =
        ObjectForm.of(
            "gear_entry",
            "One piece of gear in a file.",
            values -> new Entry(values.get(ID), values.get(DOCUMENT)),
            List.of(ID, DOCUMENT));
  }

  private GearList() {}

  /** One piece of gear as it stands in the list. */
  public static Form<?> entryForm() {
    return Entry.FORM;
  }

  /** Writes it. */
  public static Object write(List<FiledGear> gear) {
    Map<String, Object> list = new LinkedHashMap<>();
    list.put(
        GEAR,
        gear.stream()
            .map(one -> Entry.FORM.write(new Entry(Optional.of(one.id()), one.item())))
            .toList());
    return list;
  }

  /**
   * Reads it, each entry for itself.
   *
   * @param json plain values, see {@link Form}
   */
  public static GearFile read(Object json) {
    if (!(json instanceof Map<?, ?> object)
        || object.size() != 1
        || !(object.get(GEAR) instanceof List<?> entries)) {
      return unreadable("The file must be an object with nothing but the list gear.");
    }
    if (entries.size() > GearFile.MOST_LINES) {
      return unreadable(
          "Gear (%d in all) must be at most %d in all. Divide the file."
              .formatted(entries.size(), GearFile.MOST_LINES));
    }
    List<FileLine> lines = new ArrayList<>();
    for (int i = 0; i < entries.size(); i++) {
      lines.add(line(i + 1, entries.get(i)));
    }
    return new GearFile.Lines(lines);
  }

  private static FileLine line(int number, Object json) {
    return switch (Entry.FORM.read(json)) {
      case Reading.Sound<Entry>(Entry entry) ->
          new FileLine.Sound(number, entry.id(), entry.document());
      case Reading.Faulty<Entry> faulty ->
          new FileLine.Faulty(
              number,
              faulty.problems().stream()
                  .map(p -> new LineFault(Optional.empty(), p.pointer(), p.message()))
                  .toList());
    };
  }

  private static GearFile unreadable(String message) {
    return new GearFile.Unreadable(1, new LineFault(Optional.empty(), "/" + GEAR, message));
  }
}
