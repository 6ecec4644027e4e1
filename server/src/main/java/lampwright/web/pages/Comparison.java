package lampwright.web.pages;

import java.util.List;

/**
 * The ways to do it, side by side with the setup as it was shot.
 *
 * @param ways at least one, the best first
 * @param rows what they differ in, and what they have in common
 * @param strengths of each way against the best, in words
 */
public record Comparison(List<Way> ways, List<Row> rows, List<Strengths> strengths) {

  public Comparison {
    ways = List.copyOf(ways);
    rows = List.copyOf(rows);
    strengths = List.copyOf(strengths);
  }

  /**
   * One way.
   *
   * @param name "A"
   * @param path to see it in full
   * @param shown whether it is the one on this page
   */
  public record Way(String name, String path, boolean shown) {}

  /**
   * One matter.
   *
   * @param shot as it was shot; empty where that says nothing
   * @param cells one a way
   * @param differs whether the ways differ in it
   */
  public record Row(String name, String shot, List<Cell> cells, boolean differs) {
    public Row {
      cells = List.copyOf(cells);
    }
  }

  /**
   * One way's part of a row.
   *
   * @param value the figure
   * @param note small beside it; may be empty
   */
  public record Cell(String value, String note) {}

  /** What a way is better in than the best, or that it is the best. */
  public record Strengths(List<String> words) {
    public Strengths {
      words = List.copyOf(words);
    }
  }
}
