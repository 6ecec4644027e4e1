package lampwright.web.pages;

import java.util.List;

/**
 * The studio's kits.
 *
 * @param gearPath to the gear that kits share
 * @param newPath where one makes another; empty for who may not
 */
public record KitsPage(Layout layout, List<Card> kits, String gearPath, String newPath) {

  public KitsPage {
    kits = List.copyOf(kits);
  }

  /**
   * One of them.
   *
   * @param facts "6 heads · 9 modifiers · 1 body · 3 lenses"
   * @param missing what of it is not in order; empty where all is
   */
  public record Card(String name, String path, String facts, String note, String missing) {}
}
