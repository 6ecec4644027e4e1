package lampwright.gear.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import lampwright.gear.stock.GearKind;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVPrinter;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class GearTableTest {

  private static final List<GearKind> KINDS = List.of(GearKind.values());
  private static final String STANDS = "kind,stand.name,stand.highest_m\r\n";

  private static List<FileLine> lines(String table) {
    return assertInstanceOf(GearFile.Lines.class, GearTableReader.read(table), table).lines();
  }

  private static List<FiledGear> sound(String table) {
    return lines(table).stream()
        .map(line -> assertInstanceOf(FileLine.Sound.class, line, line.toString()))
        .map(line -> new FiledGear(line.id().orElseThrow(), line.item()))
        .toList();
  }

  private static List<String> names(String table) {
    return lines(table).stream()
        .map(line -> assertInstanceOf(FileLine.Sound.class, line, line.toString()).item().name())
        .toList();
  }

  private static LineFault fault(String table) {
    return switch (GearTableReader.read(table)) {
      case GearFile.Unreadable(int line, LineFault fault) -> fault;
      case GearFile.Lines(List<FileLine> lines) ->
          lines.stream()
              .flatMap(
                  line ->
                      line instanceof FileLine.Faulty(int number, List<LineFault> faults)
                          ? faults.stream()
                          : Stream.empty())
              .findFirst()
              .orElseThrow(() -> new AssertionError("Nothing is wrong with " + table));
    };
  }

  @ParameterizedTest
  @EnumSource(GearKind.class)
  void whatIsWrittenIsReadBackEqual(GearKind kind) {
    List<FiledGear> gear = FiledExamples.of(kind);
    assertFalse(gear.isEmpty());
    String table = GearTable.write(kind, gear);
    assertEquals(gear, sound(table));
    assertEquals(table, GearTable.write(kind, sound(table)));
  }

  @Test
  void theHeaderIsTheDocumentsOwnKeys() {
    String header = GearTable.write(GearKind.LENS, List.of()).strip();
    assertEquals(
        "id,kind,lens.name,lens.focal_length_mm,lens.widest_f_number,lens.smallest_f_number,"
            + "lens.weight_kg,lens.note,count,out_of_order,condition",
        header);
    String ofHeads = GearTable.write(GearKind.HEAD, List.of());
    assertTrue(ofHeads.contains(",head.energy_ws,head.output.kind,head.output.guide_number_m,"));
    assertTrue(ofHeads.contains(",head.output.f_number,head.output.iso,head.output.distance_m,"));
  }

  /** The parser and the printer of commons-csv, by RFC 4180 as well. */
  @Test
  void anotherLibraryReadsAndWritesTheSameTable() throws IOException {
    String ours = GearTable.write(GearKind.HEAD, FiledExamples.of(GearKind.HEAD));
    StringWriter theirs = new StringWriter();
    try (CSVParser parser = CSVParser.parse(ours, CSVFormat.RFC4180);
        CSVPrinter printer = new CSVPrinter(theirs, CSVFormat.RFC4180)) {
      for (CSVRecord record : parser) {
        printer.printRecord(record);
      }
    }
    assertEquals(FiledExamples.of(GearKind.HEAD), sound(theirs.toString()));
  }

  @Test
  void noCellBeginsLikeAFormula() throws IOException {
    for (GearKind kind : GearKind.values()) {
      String table = GearTable.write(kind, FiledExamples.of(kind));
      try (CSVParser parser = CSVParser.parse(table, CSVFormat.RFC4180)) {
        for (CSVRecord record : parser) {
          for (String cell : record) {
            boolean number = cell.matches("-?\\d+(\\.\\d+)?");
            assertTrue(number || !cell.matches("(?s)[=+\\-@\\t\\r].*"), kind + ": " + cell);
          }
        }
      }
    }
  }

  /** RFC 4180, section 2: its rules 1, 2, 5, 6 and 7 with the RFC's own cells as names. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n",
        "aaa,bbb,ccc\r\nzzz,yyy,xxx",
        "\"aaa\",\"bbb\",\"ccc\"\r\nzzz,yyy,xxx",
        "\"aaa\",\"b\r\nbb\",\"ccc\"\r\nzzz,yyy,xxx",
        "\"aaa\",\"b\"\"bb\",\"ccc\"\r\nzzz,yyy,xxx"
      })
  void theExamplesOfRfc4180AreReadAsPublished(String records) throws IOException {
    List<String> wanted = new ArrayList<>();
    StringBuilder table = new StringBuilder(STANDS);
    try (CSVParser parser = CSVParser.parse(records, CSVFormat.RFC4180)) {
      parser.forEach(record -> wanted.add(record.get(1)));
    }
    // The RFC's second cell becomes the name; the others become kind and height.
    table.append(
        records
            .replace("\"aaa\"", "\"stand\"")
            .replace("aaa", "stand")
            .replace("zzz", "stand")
            .replace("\"ccc\"", "\"3\"")
            .replace("ccc", "3")
            .replace("xxx", "4"));
    assertEquals(2, wanted.size());
    assertEquals(wanted, names(table.toString()));
  }

  @Test
  void aSpreadsheetsHabitsAreRead() {
    String table =
        """
        \uFEFFkind,stand.name,stand.highest_m,count,,
        stand,"Two
        lines",3.00,2,,
        ,,,,,

        stand,Short, 2.5E+00 ,,,\r
        stand,Bare,1
        """;
    assertEquals(List.of("Two\nlines", "Short", "Bare"), names(table));
    assertEquals(List.of(2, 6, 7), lines(table).stream().map(FileLine::number).toList());
    assertEquals(
        List.of("G"),
        names("kind,modifier.name,modifier.kind,modifier.grid\nmodifier,G,softbox,TRUE\n"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "kind;stand.name | 1 | divided by semicolons",
        "kind,mood | 2 | no column \"mood\"",
        "kind,count,count | 3 | stands here twice",
        "stand.name | 1 | \"kind\" is missing",
        "kind,stand.name,stand.highest_m~mood,A,3 | 1 | must be one of head",
        "kind,stand.name,stand.highest_m~stand,A,\"2,5\" | 3 | decimal comma",
        "kind,stand.name,stand.highest_m~stand,A,tall | 3 | must be a number",
        "kind,stand.name,stand.highest_m~stand,A,-1 | 3 | must be more than 0",
        "kind,stand.name,stand.highest_m,condition~stand,A,3,[broken | 4 | not JSON",
        "kind,stand.name,stand.highest_m,head.name~stand,A,3,B | 4 | not one of a stand",
        "kind,stand.name,stand.highest_m~stand,A,3,extra | 4 | no column name above it",
        "id,kind,stand.name,stand.highest_m~NO,stand,A,3 | 1 | Id must be"
      })
  void whatIsWrongIsToldAtItsColumn(String table, int column, String message) {
    LineFault fault = fault(table.replace('~', '\n'));
    assertEquals(Optional.of(column), fault.column(), fault.message());
    assertTrue(fault.message().contains(message), fault.message());
  }

  @Test
  void whatIsNoTableOrTooLargeIsSaidAsSuch() {
    assertTrue(fault("").message().contains("empty"));
    assertTrue(fault(STANDS + "stand,\"open,3\n").message().contains("quotation mark"));
    assertTrue(fault(STANDS + "stand,\"a\"b,3\n").message().contains("quotation mark"));
    assertTrue(fault(STANDS + "stand,A,3\n".repeat(1_001)).message().contains("at most 1000"));
    assertTrue(
        fault(STANDS + "stand," + "a".repeat(100_001) + ",3\n").message().contains("too long"));
    assertTrue(fault("kind" + ",".repeat(260) + "\n").message().contains("250 columns"));
    assertEquals(1_000, lines(STANDS + "stand,A,3\n".repeat(1_000)).size());
  }

  /** Only lines or faults come out, whatever goes in: the seed is in the failure. */
  @Test
  void anyDamageToATableGivesLinesOrFaults() {
    String alphabet = "\"',;\n\r\t=+-@\u0000\uFEFF{}[]:e.0159truekindhead";
    int readable = 0;
    for (int seed = 0; seed < 3_000; seed++) {
      Random random = new Random(seed);
      GearKind kind = KINDS.get(random.nextInt(KINDS.size()));
      StringBuilder table = new StringBuilder(GearTable.write(kind, FiledExamples.of(kind)));
      for (int i = random.nextInt(6); i >= 0; i--) {
        // Half of the tables keep their header, so that the damage reaches the lines.
        int from = seed % 2 == 0 ? table.indexOf("\n") + 1 : 0;
        int at = from + random.nextInt(table.length() - from);
        switch (random.nextInt(3)) {
          case 0 -> table.deleteCharAt(at);
          case 1 -> table.insert(at, alphabet.charAt(random.nextInt(alphabet.length())));
          default -> table.setCharAt(at, alphabet.charAt(random.nextInt(alphabet.length())));
        }
      }
      try {
        readable += isAsPromised(GearTableReader.read(table.toString())) ? 1 : 0;
      } catch (RuntimeException e) {
        throw new AssertionError("Seed " + seed, e);
      }
    }
    assertTrue(readable > 700, "Only " + readable + " damaged tables had a header left");
  }

  private static boolean isAsPromised(GearFile file) {
    if (file instanceof GearFile.Lines(List<FileLine> lines)) {
      lines.forEach(
          line ->
              assertTrue(
                  !(line instanceof FileLine.Faulty(int number, List<LineFault> faults))
                      || !faults.isEmpty(),
                  "a faulty line without a fault"));
      return true;
    }
    return false;
  }

  @Test
  void theGuardGivesBackAnyText() {
    Random random = new Random(4180);
    String alphabet = "''=+-@\t\ra ";
    for (int i = 0; i < 20_000; i++) {
      StringBuilder text = new StringBuilder();
      for (int length = random.nextInt(6); length > 0; length--) {
        text.append(alphabet.charAt(random.nextInt(alphabet.length())));
      }
      String guarded = FormulaGuard.guarded(text.toString());
      assertFalse(guarded.matches("(?s)[=+\\-@\\t\\r].*"), guarded);
      assertEquals(text.toString(), FormulaGuard.unguarded(guarded));
    }
  }
}
