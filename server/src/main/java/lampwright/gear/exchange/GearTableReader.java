package lampwright.gear.exchange;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.CsvRecordHandler;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;

/**
 * Reads a table of gear, with the habits of spreadsheets: a byte order mark, any ends of lines,
 * lines and columns that are all empty, numbers with an exponent. Kinds may stand mixed; each line
 * says its own.
 */
public final class GearTableReader {

  private static final int MOST_COLUMNS = 250;
  private static final int LONGEST_CELL = 100_000;
  private static final int LONGEST_LINE = 400_000;
  private static final String BYTE_ORDER_MARK = "\uFEFF";

  private GearTableReader() {}

  /**
   * Reads it.
   *
   * @param text the file, decoded
   */
  public static GearFile read(String text) {
    String table = text.startsWith(BYTE_ORDER_MARK) ? text.substring(1) : text;
    List<CsvRecord> records = new ArrayList<>();
    try (CsvReader<CsvRecord> csv = reader(table)) {
      csv.stream().limit(GearFile.MOST_LINES + 2).forEach(records::add);
    } catch (CsvParseException tooMuch) {
      return unreadable(
          records.isEmpty() ? 1 : records.getLast().getStartingLineNumber() + 1,
          "This line or a cell of it is too long, or it has more than %d columns, or text stands after a closing quotation mark. Maybe a quotation mark is missing?"
              .formatted(MOST_COLUMNS));
    } catch (IOException neverOfText) {
      throw new UncheckedIOException(neverOfText);
    }
    if (records.isEmpty()) {
      return unreadable(1, "The table is empty. Its first line must be a header.");
    }
    if (records.size() > GearFile.MOST_LINES + 1) {
      return unreadable(
          records.getLast().getStartingLineNumber(),
          "The table must have at most %d lines under its header. Divide it."
              .formatted(GearFile.MOST_LINES));
    }
    if (table.chars().filter(c -> c == '"').count() % 2 != 0) {
      return unreadable(
          records.getLast().getStartingLineNumber(),
          "A quotation mark is opened and not closed. Inside of a quoted cell write it twice.");
    }
    return lines(records);
  }

  private static CsvReader<CsvRecord> reader(String table) {
    return CsvReader.builder()
        .allowExtraFields(true)
        .allowMissingFields(true)
        .allowExtraCharsAfterClosingQuote(false)
        .build(
            CsvRecordHandler.of(
                handler ->
                    handler
                        .maxFields(MOST_COLUMNS)
                        .maxFieldSize(LONGEST_CELL)
                        .maxRecordSize(LONGEST_LINE)),
            table);
  }

  private static GearFile lines(List<CsvRecord> records) {
    return switch (TableHeader.of(records.getFirst().getFields())) {
      case TableHeader.Wrong(LineFault fault) ->
          new GearFile.Unreadable((int) records.getFirst().getStartingLineNumber(), fault);
      case TableHeader.Right header -> {
        TableLineReader reader = new TableLineReader(header);
        yield new GearFile.Lines(
            records.stream()
                .skip(1)
                .filter(record -> !record.getFields().stream().allMatch(String::isBlank))
                .map(
                    record -> reader.read((int) record.getStartingLineNumber(), record.getFields()))
                .toList());
      }
    };
  }

  private static GearFile unreadable(long line, String message) {
    return new GearFile.Unreadable((int) line, LineFault.ofLine(message));
  }
}
