package lampwright.web.pages;

import java.util.List;

/**
 * The gear that a studio's kits share, by kind.
 *
 * @param ways to new gear of each kind; none for who may not keep any
 */
public record GearListPage(Layout layout, List<Shelf> shelves, String kitsPath, List<Link> ways) {

  public GearListPage {
    ways = List.copyOf(ways);
    shelves = List.copyOf(shelves);
  }

  /** Gear of one kind. */
  public record Shelf(String heading, List<Row> rows) {

    public Shelf {
      rows = List.copyOf(rows);
    }
  }

  /**
   * A piece.
   *
   * @param outOfOrder how many of it cannot be used; empty where all can
   * @param facts what is known of it
   * @param readings how many are kept with it; empty where none is
   */
  public record Row(
      int count, String name, String path, String outOfOrder, String facts, String readings) {}
}
