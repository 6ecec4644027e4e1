package lampwright.web.pages;

import java.util.List;
import java.util.Optional;

/**
 * Every revision of a setup, two of which may be chosen to be compared.
 *
 * @param setupPath back to the setup; empty where it is deleted
 * @param comparePath where two are compared
 * @param current the setup's revision now
 * @param nextPath to the earlier ones, where there are more
 * @param restoring where one is brought back; absent for who may not
 */
public record HistoryPage(
    Layout layout,
    String title,
    String setupPath,
    String comparePath,
    int current,
    List<PastLine> lines,
    Optional<String> nextPath,
    Optional<Restoring> restoring) {

  public static final String FROM = "from";
  public static final String TO = "to";

  public HistoryPage {
    lines = List.copyOf(lines);
  }

  /**
   * What the forms that bring a revision back have in common.
   *
   * @param csrfToken what they must carry
   */
  public record Restoring(String action, String csrfToken) {

    public static final String BASED_ON = "based_on";
    public static final String REVISION = "revision";
  }

  /** The one that is chosen first to compare with the newest: the one before it. */
  public int chosenFrom() {
    return lines.size() > 1 ? lines.get(1).revision() : current;
  }
}
