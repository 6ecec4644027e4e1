package lampwright.web.pages;

import java.util.List;
import java.util.Optional;
import lampwright.drawing.Svg;
import lampwright.wording.Wording;

/**
 * A table of figures; its first column names the rows.
 *
 * @param caption what it shows
 * @param columns their headers, the first one's included
 * @param rows each with one cell fewer than there are columns
 * @param folded whether it opens only when it is asked for
 */
public record FiguresTable(String caption, List<Column> columns, List<Row> rows, boolean folded) {

  /** So many columns still fit on a phone side by side. */
  private static final int BESIDE_EACH_OTHER = 4;

  public FiguresTable {
    columns = List.copyOf(columns);
    rows = List.copyOf(rows);
    for (Row row : rows) {
      if (row.cells().size() != columns.size() - 1) {
        throw new IllegalArgumentException(
            "Row (" + row.name() + ") must have " + (columns.size() - 1) + " cells.");
      }
    }
  }

  /** A table that stands open. */
  static FiguresTable of(String caption, List<Column> columns, List<Row> rows) {
    return new FiguresTable(caption, columns, rows, false);
  }

  /** The same, to be opened when it is asked for. */
  FiguresTable asFolded() {
    return new FiguresTable(caption, columns, rows, true);
  }

  /** What a column holds. */
  public enum Kind {
    WORDS,
    FIGURES,
    RULERS
  }

  /** A column. */
  public record Column(String name, Kind kind) {

    static Column words(String name) {
      return new Column(name, Kind.WORDS);
    }

    static Column figures(String name) {
      return new Column(name, Kind.FIGURES);
    }

    static Column rulers(String name) {
      return new Column(name, Kind.RULERS);
    }
  }

  /**
   * A row.
   *
   * @param number a light's, as on the plan; 0 for what has none
   * @param name its header
   * @param note a line under it, over the whole width; may be empty
   */
  public record Row(int number, String name, List<Cell> cells, String note) {

    public Row {
      cells = List.copyOf(cells);
    }

    static Row of(int number, String name, Cell... cells) {
      return new Row(number, name, List.of(cells), "");
    }

    Row withNote(String words) {
      return new Row(number, name, cells, words);
    }
  }

  /**
   * A cell.
   *
   * @param value the figure or the words; empty for a ruler
   * @param unit beside the figure; may be empty
   * @param after quiet words after it ("metered", "±0.3"); may be empty
   * @param strong whether it is what the table is read for
   */
  public record Cell(String value, String unit, String after, boolean strong, Optional<Svg> ruler) {

    static Cell of(String value, String unit) {
      return new Cell(value, unit, "", false, Optional.empty());
    }

    static Cell of(String value) {
      return of(value, "");
    }

    static Cell ruler(Svg ruler) {
      return new Cell("", "", "", false, Optional.of(ruler));
    }

    static Cell notKnown(Wording words) {
      return new Cell("–", "", words.notKnown(), false, Optional.empty());
    }

    Cell after(String words) {
      return new Cell(value, unit, words, strong, ruler);
    }

    Cell asMain() {
      return new Cell(value, unit, after, true, ruler);
    }
  }

  /** Whether each row becomes a block of its own where the page is narrow. */
  public boolean stacks() {
    return columns.size() > BESIDE_EACH_OTHER
        || columns.stream().anyMatch(column -> column.kind() == Kind.RULERS);
  }
}
