package lampwright.web.pages;

import java.util.List;

/**
 * The studio's locations.
 *
 * @param nextPath to more of them; empty where there are none
 * @param newPath where one makes another; empty for who may not
 */
public record LocationsPage(Layout layout, List<Card> locations, String nextPath, String newPath) {

  public LocationsPage {
    locations = List.copyOf(locations);
  }

  /**
   * One of them.
   *
   * @param facts "harbour · mains: 2 outlets, 16 A"
   * @param hazards "1 hazard", "3 hazards"; empty where none is known
   */
  public record Card(String name, String path, String facts, String hazards) {}
}
