package lampwright.gear.exchange;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import lampwright.document.Json;
import lampwright.document.Problem;
import lampwright.document.Reading;
import lampwright.gear.exchange.GearColumn.Holds;
import lampwright.gear.stock.GearId;
import lampwright.gear.stock.GearItem;
import lampwright.gear.stock.GearKind;
import lampwright.people.Ids;

/** Makes documents of the lines of a table. */
final class TableLineReader {

  private static final Pattern NUMBER =
      Pattern.compile("[+-]?(\\d{1,20}(\\.\\d{0,30})?|\\.\\d{1,30})([eE][+-]?\\d{1,3})?");
  private static final Pattern DECIMAL_COMMA = Pattern.compile("[+-]?\\d{1,20},\\d{1,30}");

  private final List<String> names;
  private final Map<GearKind, Map<String, GearColumn>> columns;

  TableLineReader(TableHeader.Right header) {
    names = header.names();
    columns =
        Arrays.stream(GearKind.values())
            .collect(
                Collectors.toMap(
                    Function.identity(),
                    kind ->
                        GearColumns.of(kind).stream()
                            .collect(Collectors.toMap(GearColumn::name, column -> column))));
  }

  FileLine read(int number, List<String> cells) {
    List<LineFault> faults = new ArrayList<>();
    Optional<GearKind> kind = kind(cells, faults);
    Optional<GearId> id = id(cells, faults);
    Optional<GearItem> item = kind.flatMap(of -> item(of, cells, faults));
    return faults.isEmpty() && item.isPresent()
        ? new FileLine.Sound(number, id, item.get())
        : new FileLine.Faulty(number, faults);
  }

  private Optional<String> cell(List<String> cells, String name) {
    int index = names.indexOf(name);
    return index >= 0 && index < cells.size()
        ? Optional.of(cells.get(index).strip()).filter(text -> !text.isEmpty())
        : Optional.empty();
  }

  private Optional<GearKind> kind(List<String> cells, List<LineFault> faults) {
    Optional<GearKind> kind = cell(cells, GearColumns.KIND).flatMap(GearKind::find);
    if (kind.isEmpty()) {
      String words =
          Arrays.stream(GearKind.values()).map(GearKind::word).collect(Collectors.joining(", "));
      faults.add(
          new LineFault(
              Optional.of(names.indexOf(GearColumns.KIND) + 1),
              "/kind",
              "Kind must be one of " + words + "."));
    }
    return kind;
  }

  private Optional<GearId> id(List<String> cells, List<LineFault> faults) {
    Optional<String> written = cell(cells, GearColumns.ID);
    if (written.filter(text -> !Ids.isId(text)).isPresent()) {
      faults.add(
          LineFault.at(
              names.indexOf(GearColumns.ID) + 1,
              "Id must be one that an export gave. Leave it out for new gear."));
    }
    return written.filter(Ids::isId).map(GearId::new);
  }

  private Optional<GearItem> item(GearKind kind, List<String> cells, List<LineFault> faults) {
    Map<String, Object> document = new LinkedHashMap<>();
    for (int i = 0; i < cells.size(); i++) {
      String name = i < names.size() ? names.get(i) : "";
      if (!cells.get(i).isBlank() && !name.equals(GearColumns.ID)) {
        put(kind, i, name, cells.get(i), document, faults);
      }
    }
    if (!faults.isEmpty()) {
      return Optional.empty();
    }
    return switch (GearItem.FORM.read(document)) {
      case Reading.Sound<GearItem>(GearItem item) -> Optional.of(item);
      case Reading.Faulty<GearItem>(List<Problem> problems) -> {
        problems.forEach(
            problem ->
                faults.add(
                    new LineFault(
                        column(problem.pointer()), problem.pointer(), problem.message())));
        yield Optional.empty();
      }
    };
  }

  private void put(
      GearKind kind,
      int index,
      String name,
      String cell,
      Map<String, Object> document,
      List<LineFault> faults) {
    GearColumn column = columns.getOrDefault(kind, Map.of()).get(name);
    if (column == null) {
      faults.add(
          LineFault.at(
              index + 1,
              name.isEmpty()
                  ? "This cell has no column name above it. Name the column or empty the cell."
                  : "The column \"%s\" is not one of a %s. Empty this cell."
                      .formatted(name, kind.word().replace('_', ' '))));
      return;
    }
    value(column, cell)
        .ifPresentOrElse(
            value -> put(column.steps(), value, document),
            () ->
                faults.add(
                    new LineFault(
                        Optional.of(index + 1),
                        "/" + String.join("/", column.steps()),
                        notReadable(column))));
  }

  private static String notReadable(GearColumn column) {
    return column.holds() == Holds.LIST
        ? "The list in \"%s\" is not JSON. Copy it from an export, or empty the cell."
            .formatted(column.name())
        : "The number in \"%s\" has a decimal comma. Write 0.5 rather than 0,5."
            .formatted(column.name());
  }

  /** The cell's value; text where it cannot be one, for the form to refuse in its own words. */
  private static Optional<Object> value(GearColumn column, String cell) {
    String bare = cell.strip();
    return switch (column.holds()) {
      case TEXT -> Optional.of(FormulaGuard.unguarded(cell));
      case FLAG -> Optional.of(flag(bare));
      case NUMBER ->
          DECIMAL_COMMA.matcher(bare).matches()
              ? Optional.empty()
              : Optional.of(NUMBER.matcher(bare).matches() ? Double.valueOf(bare) : (Object) bare);
      case LIST -> list(bare);
    };
  }

  /** Spreadsheets write them in capitals. */
  private static Object flag(String bare) {
    return switch (bare) {
      case "true", "TRUE", "True" -> true;
      case "false", "FALSE", "False" -> false;
      default -> bare;
    };
  }

  private static Optional<Object> list(String bare) {
    try {
      return Optional.of(Json.parse(bare));
    } catch (Json.NotJson notJson) {
      return Optional.empty();
    }
  }

  private static void put(List<String> steps, Object value, Map<String, Object> document) {
    Map<String, Object> at = document;
    for (String step : steps.subList(0, steps.size() - 1)) {
      Map<String, Object> inner = new LinkedHashMap<>();
      if (at.get(step) instanceof Map<?, ?> there) {
        there.forEach((key, kept) -> inner.put(key.toString(), kept));
      }
      at.put(step, inner);
      at = inner;
    }
    at.put(steps.getLast(), value);
  }

  /** The column that a place in the document was read from. */
  private Optional<Integer> column(String pointer) {
    String path = pointer.isEmpty() ? "" : pointer.substring(1).replace('/', '.');
    return IntStream.range(0, names.size())
        .filter(i -> !names.get(i).isEmpty())
        .filter(i -> path.equals(names.get(i)) || path.startsWith(names.get(i) + "."))
        .mapToObj(i -> i + 1)
        .findFirst();
  }
}
