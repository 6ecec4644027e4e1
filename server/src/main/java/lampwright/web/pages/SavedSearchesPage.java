package lampwright.web.pages;

import java.util.List;
import java.util.Optional;

/**
 * The searches that somebody keeps, with what they find.
 *
 * @param again the form by which a search was to be kept, where that failed
 * @param findPath where a search is made
 */
public record SavedSearchesPage(
    Layout layout,
    String csrfToken,
    List<Card> searches,
    Optional<Again> again,
    FormErrors errors,
    String findPath) {

  public SavedSearchesPage {
    searches = List.copyOf(searches);
  }

  /** The names of the forms' fields. */
  public static final String NAME = "name";

  public static final String QUESTION = "question";

  public static final String REVISION = "revision";

  /**
   * A search that was not kept.
   *
   * @param action where it is sent again
   */
  public record Again(String action, String name, String question) {}

  /**
   * A search that is kept.
   *
   * @param asked what it asks for, a part each
   * @param total how many setups it finds, in words; empty where it cannot be understood
   * @param news how many of them are new, in words; empty where none is
   * @param newest some of these
   * @param more how many others there are
   * @param problem one line, or empty
   * @param path of the search's own actions
   */
  public record Card(
      String id,
      int revision,
      String name,
      List<String> asked,
      String total,
      String news,
      List<Link> newest,
      int more,
      String problem,
      String path) {

    public Card {
      asked = List.copyOf(asked);
      newest = List.copyOf(newest);
    }
  }
}
