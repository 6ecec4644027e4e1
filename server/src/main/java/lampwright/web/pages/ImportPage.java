package lampwright.web.pages;

import java.util.List;
import java.util.Optional;

/**
 * One archive on its way in: how far it is, what it would do, and what one may do about it.
 *
 * @param state "Planned", as a heading
 * @param sentence what that means
 * @param work what is being done; absent where nothing is
 * @param plan what it would do, or did; absent until it has been checked
 * @param faults why it cannot be brought in
 * @param start where it is carried out; empty where that cannot be
 * @param discard where it is forgotten or ended; empty where that cannot be
 * @param path of this page, to look again
 * @param archivePath of the page that it was sent from
 */
public record ImportPage(
    Layout layout,
    String state,
    String sentence,
    Optional<Work> work,
    Optional<Plan> plan,
    List<String> faults,
    String start,
    String discard,
    String csrfToken,
    String path,
    String archivePath) {

  public ImportPage {
    faults = List.copyOf(faults);
  }

  /**
   * What is being done.
   *
   * @param done of so many steps
   * @param total 0 where that is not known yet
   * @param words "12 of 40 steps"
   * @param pattern the same with {0} and {1} for the figures
   * @param address where programs ask how far it is
   */
  public record Work(int done, int total, String words, String pattern, String address) {}

  /**
   * What it would do.
   *
   * @param from "The studio “Lantern Quay”, 4 May 2031"
   * @param counts one row for each kind that is in it
   * @param remarks what else is to be known: names that come in, files that it lacks
   * @param items what it brings, the clashing first
   */
  public record Plan(String from, List<Row> counts, List<String> remarks, List<Item> items) {

    public Plan {
      counts = List.copyOf(counts);
      remarks = List.copyOf(remarks);
      items = List.copyOf(items);
    }
  }

  /** How many of a kind are new, here already, and clash. */
  public record Row(String kind, int fresh, int same, int clashing) {}

  /** One thing, and what becomes of it. */
  public record Item(String title, String kind, String fate, boolean clashes) {}
}
