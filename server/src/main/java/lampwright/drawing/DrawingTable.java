package lampwright.drawing;

import java.util.List;

/**
 * What a chart or an overlay shows, as a table.
 *
 * @param heads of the columns, in words
 * @param rows as long as the heads, the first cell naming the row
 */
public record DrawingTable(List<String> heads, List<List<String>> rows) {

  public DrawingTable {
    heads = List.copyOf(heads);
    rows = rows.stream().map(List::copyOf).toList();
    for (List<String> row : rows) {
      if (row.size() != heads.size()) {
        throw new IllegalArgumentException(
            "A row ("
                + row.size()
                + " cells) must be as long as the heads ("
                + heads.size()
                + ").");
      }
    }
  }
}
