package lampwright.gear.exchange;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import lampwright.document.Json;
import lampwright.gear.stock.GearItem;
import lampwright.gear.stock.GearKind;

/**
 * Gear of one kind as a table: a header of the document's keys with dots between them, then one
 * line each. Lists stand in a cell as JSON; a field that is not there is an empty cell. Lines end
 * in CRLF (RFC 4180).
 */
public final class GearTable {

  private GearTable() {}

  /**
   * Writes it.
   *
   * @param gear all of that kind
   */
  public static String write(GearKind kind, List<FiledGear> gear) {
    List<GearColumn> columns = GearColumns.of(kind);
    StringWriter table = new StringWriter();
    try (CsvWriter csv = CsvWriter.builder().lineDelimiter(LineDelimiter.CRLF).build(table)) {
      csv.writeRecord(header(columns));
      for (FiledGear one : gear) {
        csv.writeRecord(cells(one, columns));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return table.toString();
  }

  private static List<String> header(List<GearColumn> columns) {
    return Stream.concat(Stream.of(GearColumns.ID), columns.stream().map(GearColumn::name))
        .toList();
  }

  private static List<String> cells(FiledGear gear, List<GearColumn> columns) {
    Object document = GearItem.FORM.write(gear.item());
    List<String> cells = new ArrayList<>(List.of(gear.id().text()));
    for (GearColumn column : columns) {
      cells.add(find(document, column.steps()).map(GearTable::cell).orElse(""));
    }
    return cells;
  }

  private static Optional<Object> find(Object document, List<String> steps) {
    Optional<Object> at = Optional.of(document);
    for (String step : steps) {
      at =
          at.flatMap(
              value ->
                  value instanceof Map<?, ?> object
                      ? Optional.<Object>ofNullable(object.get(step))
                      : Optional.empty());
    }
    return at;
  }

  private static String cell(Object value) {
    return switch (value) {
      case String text -> FormulaGuard.guarded(text);
      case Double number -> new BigDecimal(number.toString()).toPlainString();
      case Number number -> number.toString();
      case Boolean flag -> flag.toString();
      default -> Json.print(value);
    };
  }
}
