package lampwright.web.pages;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import lampwright.document.Problem;
import lampwright.document.Reading;
import lampwright.gear.stock.GearItem;
import lampwright.gear.stock.GearKind;
import lampwright.language.Notation;
import lampwright.tasks.Refused;

/**
 * A piece of gear as a form holds it: filled from its document, and read over it again, so that
 * what the form does not ask, such as a table of candelas, stays.
 */
final class GearFields {

  private static final String COUNT = "count";
  private static final String OUT_OF_ORDER = "out_of_order";
  private static final String YES = "yes";
  private static final String NO = "no";

  private final GearKind kind;
  private final Notation notation;
  private final Map<String, Object> before;
  private final GearRows rows;

  /**
   * @param item that is changed; absent for new gear
   */
  GearFields(GearKind kind, Optional<GearItem> item, Notation notation) {
    this.kind = kind;
    this.notation = notation;
    this.before = item.map(GearFields::plain).orElseGet(Map::of);
    this.rows = new GearRows(kind, before, notation);
  }

  private static Map<String, Object> plain(GearItem item) {
    return PlainObject.copy(GearItem.FORM.write(item));
  }

  private Map<String, Object> piece() {
    return PlainObject.copy(before.getOrDefault(kind.word(), ""));
  }

  private List<GearPart> parts() {
    return GearParts.groups(kind).stream().flatMap(group -> group.parts().stream()).toList();
  }

  /** What stands in a field before anybody has typed; empty for a field that is none. */
  String filled(String field) {
    if (field.equals(COUNT)) {
      return count(COUNT, "1");
    }
    if (field.equals(OUT_OF_ORDER)) {
      return count(OUT_OF_ORDER, "0");
    }
    return parts().stream()
        .filter(part -> part.id().equals(field))
        .findFirst()
        .map(this::filled)
        .orElseGet(() -> rows.filled(field));
  }

  private String count(String field, String usual) {
    return before.get(field) instanceof Number number
        ? notation.rounded(number.doubleValue(), 0)
        : usual;
  }

  private String filled(GearPart part) {
    Object value = PlainObject.find(piece(), part.path()).orElse("");
    return switch (value) {
      case Number number -> written(part.kind(), number.doubleValue());
      case Boolean isSo -> isSo ? YES : NO;
      case String text when text.isEmpty() -> usual(part);
      default -> value.toString();
    };
  }

  private String usual(GearPart part) {
    return switch (part.kind()) {
      case LENGTH, NUMBER ->
          part.usual().isEmpty() ? "" : written(part.kind(), Double.parseDouble(part.usual()));
      case FLAG -> NO;
      default -> part.usual();
    };
  }

  private String written(GearPart.Kind kind, double value) {
    return switch (kind) {
      case LENGTH -> GearRows.length(value, notation);
      case REACH -> notation.rounded(notation.inUnit(value), 1);
      default -> notation.rounded(value, 4);
    };
  }

  /**
   * The form's groups of fields.
   *
   * @param typed what stands in each field
   */
  List<GearEditPage.Group> groups(UnaryOperator<String> typed) {
    List<GearEditPage.Group> groups = new ArrayList<>();
    for (GearParts.Group group : GearParts.groups(kind)) {
      groups.add(
          new GearEditPage.Group(
              notation.say(group.key()),
              hint(group.key()),
              group.parts().stream().map(part -> field(part, typed)).toList()));
    }
    groups.add(
        1,
        new GearEditPage.Group(
            notation.say("studio.gear.group.stock"),
            "",
            List.of(number(COUNT, typed), number(OUT_OF_ORDER, typed))));
    return groups;
  }

  private String hint(String key) {
    return key.endsWith(".output") || key.endsWith(".face") ? notation.say(key + ".hint") : "";
  }

  private GearEditPage.Field number(String id, UnaryOperator<String> typed) {
    return new GearEditPage.Field(
        id,
        notation.say("studio.gear.field." + id),
        GearEditPage.Kind.NUMBER,
        typed.apply(id),
        List.of());
  }

  private GearEditPage.Field field(GearPart part, UnaryOperator<String> typed) {
    boolean inUnit = part.kind() == GearPart.Kind.LENGTH || part.kind() == GearPart.Kind.REACH;
    return new GearEditPage.Field(
        part.id(),
        inUnit ? notation.say(part.key(), notation.lengthSign()) : notation.say(part.key()),
        switch (part.kind()) {
          case LINE, LENGTH -> GearEditPage.Kind.LINE;
          case PARAGRAPH -> GearEditPage.Kind.PARAGRAPH;
          case NUMBER, REACH -> GearEditPage.Kind.NUMBER;
          case CHOICE, FLAG -> GearEditPage.Kind.CHOICE;
        },
        typed.apply(part.id()),
        (part.kind() == GearPart.Kind.FLAG ? List.of(NO, YES) : part.choices())
            .stream()
                .map(
                    value ->
                        new GearEditPage.Choice(value, notation.say("studio.gear.choice." + value)))
                .toList());
  }

  GearRows rows() {
    return rows;
  }

  /**
   * Reads a form.
   *
   * @throws Refused Invalid, with pointers into the gear's document
   */
  GearItem read(UnaryOperator<String> typed) {
    Map<String, Object> item = new LinkedHashMap<>(before);
    Map<String, Object> piece = piece();
    for (GearPart part : parts()) {
      boolean stands = part.of().map(of -> isChosen(of, typed)).orElse(true);
      boolean untouched =
          stands && !filled(part).isEmpty() && same(filled(part), typed.apply(part.id()));
      // What nobody has touched keeps all its digits, unless it never stood there.
      if (!(untouched && PlainObject.find(piece, part.path()).isPresent())) {
        put(piece, part, stands ? value(part, typed.apply(part.id()).strip()) : "");
      }
    }
    item.put(GearEditPage.KIND, kind.word());
    item.put(kind.word(), piece);
    item.put(COUNT, number(typed.apply(COUNT)));
    item.put(OUT_OF_ORDER, number(typed.apply(OUT_OF_ORDER)));
    rows.readInto(item, typed, typed.apply(GearPart.id(List.of("name"))).strip());
    return switch (GearItem.FORM.read(item)) {
      case Reading.Sound<GearItem>(GearItem sound) -> sound;
      case Reading.Faulty<GearItem> faulty -> throw Refused.invalid(faulty.problems());
    };
  }

  private static boolean isChosen(GearPart.Of of, UnaryOperator<String> typed) {
    return typed.apply(GearPart.id(of.path())).equals(of.value());
  }

  static boolean same(String one, String other) {
    return one.replace("\r\n", "\n").strip().equals(other.replace("\r\n", "\n").strip());
  }

  private static void put(Map<String, Object> piece, GearPart part, Object value) {
    if (value.equals("")) {
      PlainObject.remove(piece, part.path());
    } else {
      PlainObject.put(piece, part.path(), value);
    }
  }

  private Object value(GearPart part, String typed) {
    return switch (part.kind()) {
      case FLAG -> typed.equals(YES);
      case LENGTH -> GearRows.metres(typed, notation);
      case REACH ->
          TypedNumber.read(typed)
              .<Object>map(inUnit -> inUnit * notation.lengths().metres())
              .orElse(typed);
      case NUMBER -> number(typed);
      case LINE, PARAGRAPH, CHOICE -> typed.replace("\r\n", "\n");
    };
  }

  static Object number(String typed) {
    return TypedNumber.read(typed).<Object>map(of -> of).orElse(typed.strip());
  }

  /** What is wrong, at the fields. */
  FormErrors errors(List<Problem> problems, UnaryOperator<String> typed) {
    return new FormErrors(
        problems.stream()
            .map(
                problem ->
                    new FormErrors.FormError(
                        at(List.of(problem.pointer().split("/", -1)), typed), problem.message()))
            .toList());
  }

  private String at(List<String> pointer, UnaryOperator<String> typed) {
    List<String> at = pointer.subList(Math.min(1, pointer.size()), pointer.size());
    if (at.isEmpty()) {
      return "";
    }
    if (at.getFirst().equals(kind.word())) {
      List<String> inPiece = at.subList(1, at.size());
      return parts().stream()
          .filter(part -> part.isAt(inPiece))
          .filter(part -> part.of().map(of -> isChosen(of, typed)).orElse(true))
          .findFirst()
          .map(GearPart::id)
          .orElse("");
    }
    return List.of(COUNT, OUT_OF_ORDER).contains(at.getFirst())
        ? at.getFirst()
        : rows.at(at, typed);
  }
}
