package lampwright.web.pages;

import java.util.List;
import lampwright.wording.Figure;

/**
 * One kit: what it comes to, and every piece of it with what is known.
 *
 * @param note may be empty
 * @param figures heads, energy, weight
 * @param missing what it asks for and is not in order
 * @param shelves one for each kind of gear that is in it
 * @param makesPath to the search for setups that it makes
 * @param changePath where one changes it; empty for who may not
 */
public record KitPage(
    Layout layout,
    String name,
    String note,
    List<Figure> figures,
    List<String> missing,
    List<Shelf> shelves,
    String makesPath,
    String packPath,
    String changePath,
    String listPath) {

  public KitPage {
    figures = List.copyOf(figures);
    missing = List.copyOf(missing);
    shelves = List.copyOf(shelves);
  }

  /** The pieces of one kind. */
  public record Shelf(String heading, List<Row> rows) {

    public Shelf {
      rows = List.copyOf(rows);
    }
  }

  /**
   * A piece, as often as it is there.
   *
   * @param path to the studio's gear; empty for what is written out in the kit itself
   * @param facts what is known of it
   */
  public record Row(int count, String name, String path, String facts) {}
}
