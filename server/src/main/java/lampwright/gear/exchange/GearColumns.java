package lampwright.gear.exchange;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import lampwright.document.Definitions;
import lampwright.gear.exchange.GearColumn.Holds;
import lampwright.gear.stock.GearItem;
import lampwright.gear.stock.GearKind;
import org.jspecify.annotations.Nullable;

/**
 * The columns of each kind of gear, taken from the schema of its form: a new field of a document is
 * a new column at once. What can be of several kinds, such as a head's output, has the columns of
 * all of them.
 */
final class GearColumns {

  /** The column that no document has. */
  static final String ID = "id";

  static final String KIND = "kind";

  private static final String REFERENCE = "#/$defs/";

  private static final Map<GearKind, List<GearColumn>> ALL = all();

  private final Map<?, ?> definitions;
  private final Map<String, GearColumn> found = new LinkedHashMap<>();

  private GearColumns(Map<?, ?> definitions) {
    this.definitions = definitions;
  }

  /** Of a kind, in the order of its document; the kind's own comes first. */
  static List<GearColumn> of(GearKind kind) {
    return ALL.getOrDefault(kind, List.of());
  }

  /** The names of all columns of all kinds. */
  static Set<String> names() {
    return ALL.values().stream()
        .flatMap(List::stream)
        .map(GearColumn::name)
        .collect(Collectors.toSet());
  }

  private static Map<GearKind, List<GearColumn>> all() {
    Map<String, Object> definitions = Definitions.of(List.of(GearItem.FORM));
    return Arrays.stream(GearKind.values())
        .collect(Collectors.toUnmodifiableMap(Function.identity(), kind -> of(kind, definitions)));
  }

  private static List<GearColumn> of(GearKind kind, Map<String, Object> definitions) {
    GearColumns columns = new GearColumns(definitions);
    columns.walk(List.of(), Map.of("$ref", REFERENCE + kind.word() + "_gear"));
    return List.copyOf(columns.found.values());
  }

  private void walk(List<String> steps, Map<?, ?> schema) {
    if (schema.get("$ref") instanceof String reference) {
      walk(steps, object(definitions.get(reference.substring(REFERENCE.length()))));
    } else if (schema.get("oneOf") instanceof List<?> kinds) {
      kinds.forEach(kind -> walk(steps, object(kind)));
    } else if (schema.get("properties") instanceof Map<?, ?> properties) {
      properties.forEach((key, value) -> walk(with(steps, key.toString()), object(value)));
    } else {
      GearColumn column = new GearColumn(steps, holds(schema));
      found.putIfAbsent(column.name(), column);
    }
  }

  private static Holds holds(Map<?, ?> schema) {
    return switch (String.valueOf(schema.get("type"))) {
      case "number", "integer" -> Holds.NUMBER;
      case "boolean" -> Holds.FLAG;
      case "array" -> Holds.LIST;
      default -> Holds.TEXT;
    };
  }

  private static List<String> with(List<String> steps, String step) {
    List<String> longer = new ArrayList<>(steps);
    longer.add(step);
    return longer;
  }

  private static Map<?, ?> object(@Nullable Object schema) {
    if (schema instanceof Map<?, ?> map) {
      return map;
    }
    throw new IllegalStateException("No schema: " + schema);
  }
}
