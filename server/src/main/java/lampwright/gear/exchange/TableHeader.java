package lampwright.gear.exchange;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** The first line of a table of gear. */
sealed interface TableHeader {

  /**
   * Every named column is known.
   *
   * @param names without the spaces around them; empty for a column without a name
   */
  record Right(List<String> names) implements TableHeader {

    public Right {
      names = List.copyOf(names);
    }
  }

  /** It cannot be understood. */
  record Wrong(LineFault fault) implements TableHeader {}

  static TableHeader of(List<String> cells) {
    List<String> names = new ArrayList<>(cells.stream().map(String::strip).toList());
    if (names.size() == 1 && (names.getFirst().contains(";") || names.getFirst().contains("\t"))) {
      return wrong(
          1,
          "The columns are divided by %s. Save the table with commas between the columns."
              .formatted(names.getFirst().contains(";") ? "semicolons" : "tabs"));
    }
    Set<String> known = new HashSet<>(GearColumns.names());
    known.add(GearColumns.ID);
    Set<String> seen = new HashSet<>();
    for (int i = 0; i < names.size(); i++) {
      String name = names.get(i);
      if (!name.isEmpty() && !known.contains(name)) {
        return wrong(
            i + 1,
            "There is no column \"%s\". Columns are called as in an export of the same kind."
                .formatted(shortened(name)));
      }
      if (!name.isEmpty() && !seen.add(name)) {
        return wrong(i + 1, "The column \"%s\" stands here twice. Keep one.".formatted(name));
      }
    }
    return seen.contains(GearColumns.KIND)
        ? new Right(names)
        : wrong(1, "The column \"kind\" is missing. It says of each line what it is.");
  }

  private static String shortened(String name) {
    String line = name.replaceAll("\\p{Cntrl}", "?");
    return line.length() > 60 ? line.substring(0, 60) + "…" : line;
  }

  private static TableHeader wrong(int column, String message) {
    return new Wrong(LineFault.at(column, message));
  }
}
