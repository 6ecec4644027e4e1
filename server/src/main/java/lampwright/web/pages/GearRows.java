package lampwright.web.pages;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import lampwright.gear.stock.GearKind;
import lampwright.language.LengthUnit;
import lampwright.language.Notation;

/**
 * The lists that stand with a piece of gear in a form, row by row with blank rows at the end: what
 * was noticed of it, and what a meter gave. A row that is emptied goes out.
 */
final class GearRows {

  private static final int BLANK_NOTES = 2;
  private static final int BLANK_READINGS = 3;

  private static final String CONDITION = "condition";
  private static final String READINGS = "readings";

  private static final List<String> NOTE = List.of("date", "note");

  private static final String HEAD = "head";
  private static final String MODIFIER = "modifier";
  private static final String METERED = "metered";
  private static final String ISO = "iso";
  private static final String DISTANCE = "distance_m";
  private static final String POWER = "stops_down";
  private static final String WITH = "with";
  private static final String WITHOUT = "without";

  private final GearKind kind;
  private final Notation notation;
  private final List<Map<String, Object>> notes;
  private final List<Map<String, Object>> readings;

  GearRows(GearKind kind, Map<String, Object> item, Notation notation) {
    this.kind = kind;
    this.notation = notation;
    this.notes = rows(item, CONDITION);
    this.readings = rows(item, READINGS);
  }

  private static List<Map<String, Object>> rows(Map<String, Object> item, String list) {
    return item.get(list) instanceof List<?> rows
        ? rows.stream().map(PlainObject::copy).toList()
        : List.of();
  }

  /** A length in a field: "1.2", "3′ 11″". */
  static String length(double metres, Notation notation) {
    return notation.lengths() == LengthUnit.FEET
        ? notation.tape(metres)
        : notation.rounded(metres, 4);
  }

  static Object metres(String typed, Notation notation) {
    return TypedLength.readMetres(typed, notation.lengths())
        .<Object>map(of -> of)
        .orElse(typed.strip());
  }

  /** What a row of readings asks: of a modifier with which head, of a head with which modifier. */
  private List<String> asked() {
    return kind == GearKind.MODIFIER
        ? List.of(HEAD, WITH, METERED, ISO, DISTANCE, POWER)
        : List.of(MODIFIER, METERED, ISO, DISTANCE, POWER);
  }

  private static String id(String list, int row, String field) {
    return list + "-" + row + "-" + field;
  }

  /** What stands in a field before anybody has typed. */
  String filled(String field) {
    String[] parts = field.split("-", 3);
    if (parts.length < 3 || !parts[1].matches("\\d{1,3}")) {
      return "";
    }
    int row = Integer.parseInt(parts[1]);
    List<Map<String, Object>> rows = parts[0].equals(CONDITION) ? notes : readings;
    boolean isThere = row < rows.size();
    return isThere ? filled(rows.get(row), parts[2]) : blank(parts[0], parts[2]);
  }

  private static String blank(String list, String field) {
    return list.equals(READINGS) && field.equals(WITH) ? WITH : "";
  }

  private String filled(Map<String, Object> row, String field) {
    return switch (field) {
      case METERED -> metered(row);
      case WITH -> row.containsKey(MODIFIER) ? WITH : WITHOUT;
      case ISO -> number(row, ISO, 100);
      case POWER -> number(row, POWER, 0);
      case DISTANCE ->
          row.get(DISTANCE) instanceof Number metres ? length(metres.doubleValue(), notation) : "";
      default -> String.valueOf(row.getOrDefault(field, ""));
    };
  }

  private String number(Map<String, Object> row, String field, double usual) {
    return notation.rounded(
        row.get(field) instanceof Number number ? number.doubleValue() : usual, 3);
  }

  private String metered(Map<String, Object> row) {
    String mark =
        row.get("f_number") instanceof Number number
            ? notation.rounded(number.doubleValue(), 2)
            : "";
    return row.get("tenths") instanceof Number tenths
        ? mark + " + " + notation.fixed(tenths.doubleValue() / 10, 1)
        : mark;
  }

  /** The rows of what was noticed. */
  List<GearEditPage.Group> condition(UnaryOperator<String> typed) {
    List<GearEditPage.Group> groups = new ArrayList<>();
    for (int row = 0; row < notes.size() + BLANK_NOTES; row++) {
      List<GearEditPage.Field> fields = new ArrayList<>();
      for (String name : NOTE) {
        String id = id(CONDITION, row, name);
        fields.add(
            new GearEditPage.Field(
                id,
                say("noticed_" + name),
                name.equals("date") ? GearEditPage.Kind.DATE : GearEditPage.Kind.LINE,
                typed.apply(id),
                List.of()));
      }
      groups.add(group("note", row, notes.size(), fields));
    }
    return groups;
  }

  /** The rows of readings; none for gear that is not metered. */
  List<GearEditPage.Group> readings(UnaryOperator<String> typed) {
    List<GearEditPage.Group> groups = new ArrayList<>();
    int rows = GearParts.isMetered(kind) ? readings.size() + BLANK_READINGS : 0;
    for (int row = 0; row < rows; row++) {
      List<GearEditPage.Field> fields = new ArrayList<>();
      for (String name : asked()) {
        fields.add(field(id(READINGS, row, name), name, typed));
      }
      groups.add(group("reading", row, readings.size(), fields));
    }
    return groups;
  }

  private GearEditPage.Group group(
      String name, int row, int there, List<GearEditPage.Field> fields) {
    String heading =
        row < there
            ? notation.say("studio.gear.row." + name, row + 1)
            : notation.say("studio.gear.row." + name + "_new", row + 1);
    return new GearEditPage.Group(heading, "", fields);
  }

  private GearEditPage.Field field(String id, String name, UnaryOperator<String> typed) {
    List<GearEditPage.Choice> choices =
        name.equals(WITH)
            ? List.of(WITH, WITHOUT).stream()
                .map(of -> new GearEditPage.Choice(of, notation.say("studio.gear.choice." + of)))
                .toList()
            : List.of();
    return new GearEditPage.Field(
        id,
        name.equals(DISTANCE)
            ? notation.say("studio.gear.field.read_" + name, notation.lengthSign())
            : say("read_" + name),
        switch (name) {
          case WITH -> GearEditPage.Kind.CHOICE;
          case ISO, POWER -> GearEditPage.Kind.NUMBER;
          default -> GearEditPage.Kind.LINE;
        },
        typed.apply(id),
        choices);
  }

  private String say(String name) {
    return notation.say("studio.gear.field." + name);
  }

  private static final int MOST_ROWS = 200;

  /** Which rows somebody has written something into, in order. */
  private static List<Integer> written(
      String list, List<String> fields, UnaryOperator<String> typed) {
    List<Integer> rows = new ArrayList<>();
    for (int row = 0; row < MOST_ROWS; row++) {
      for (String field : fields) {
        if (!typed.apply(id(list, row, field)).isBlank()) {
          rows.add(row);
          break;
        }
      }
    }
    return rows;
  }

  private List<Integer> writtenReadings(UnaryOperator<String> typed) {
    return written(READINGS, List.of(METERED, DISTANCE), typed);
  }

  /**
   * Puts both lists into the gear's document.
   *
   * @param name that the gear is to have, which its own readings say
   */
  void readInto(Map<String, Object> item, UnaryOperator<String> typed, String name) {
    put(
        item,
        CONDITION,
        written(CONDITION, NOTE, typed).stream()
            .map(
                row -> {
                  Map<String, Object> note = new LinkedHashMap<>();
                  NOTE.forEach(
                      field -> note.put(field, typed.apply(id(CONDITION, row, field)).strip()));
                  return note;
                })
            .toList());
    if (GearParts.isMetered(kind)) {
      put(
          item,
          READINGS,
          writtenReadings(typed).stream().map(row -> reading(row, typed, name)).toList());
    }
  }

  private static void put(Map<String, Object> item, String list, List<Map<String, Object>> rows) {
    if (rows.isEmpty()) {
      item.remove(list);
    } else {
      item.put(list, rows);
    }
  }

  private Map<String, Object> reading(int row, UnaryOperator<String> typed, String name) {
    Map<String, Object> reading =
        new LinkedHashMap<>(row < readings.size() ? readings.get(row) : Map.of());
    for (String field : asked()) {
      String text = typed.apply(id(READINGS, row, field)).strip();
      boolean untouched = row < readings.size() && text.equals(filled(readings.get(row), field));
      if (!untouched) {
        take(reading, field, text);
      }
    }
    if (kind == GearKind.HEAD) {
      reading.put(HEAD, name);
    } else if (typed.apply(id(READINGS, row, WITH)).equals(WITHOUT)) {
      reading.remove(MODIFIER);
    } else {
      reading.put(MODIFIER, name);
    }
    return reading;
  }

  private void take(Map<String, Object> reading, String field, String text) {
    switch (field) {
      case WITH -> {}
      case METERED -> {
        reading.remove("tenths");
        reading.putAll(UsedFields.metered(text));
      }
      case DISTANCE -> reading.put(DISTANCE, metres(text, notation));
      case ISO, POWER, MODIFIER, HEAD -> {
        reading.remove(field);
        if (!text.isEmpty()) {
          boolean isNumber = field.equals(ISO) || field.equals(POWER);
          reading.put(field, isNumber ? GearFields.number(text) : text);
        }
      }
      default -> throw new IllegalArgumentException("No field of a reading: " + field);
    }
  }

  /** The field of a problem in one of the lists; empty for none. */
  String at(List<String> pointer, UnaryOperator<String> typed) {
    String list = pointer.getFirst();
    boolean isRow = pointer.size() > 1 && pointer.get(1).matches("\\d{1,3}");
    if (!isRow || !List.of(CONDITION, READINGS).contains(list)) {
      return "";
    }
    boolean isNote = list.equals(CONDITION);
    List<Integer> rows = isNote ? written(CONDITION, NOTE, typed) : writtenReadings(typed);
    int number = Integer.parseInt(pointer.get(1));
    if (number >= rows.size()) {
      return "";
    }
    String field = pointer.size() > 2 ? pointer.get(2) : "";
    if (isNote) {
      return id(list, rows.get(number), NOTE.contains(field) ? field : "note");
    }
    return id(list, rows.get(number), asked().contains(field) ? field : METERED);
  }
}
