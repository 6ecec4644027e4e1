package lampwright.web.pages;

import java.util.List;

/**
 * A trail as it is put together.
 *
 * @param revision that was looked at; 0 for a new one
 * @param rows one for each stage, and a few empty ones
 * @param setups that a stage can lead to
 * @param kinds of drill that a stage can ask
 */
public record TrailEditPage(
    Layout layout,
    String heading,
    String action,
    String csrf,
    int revision,
    String name,
    String about,
    String clearsFor,
    List<Row> rows,
    List<Choice> setups,
    List<Choice> kinds,
    FormErrors errors) {

  public static final String REVISION = "revision";
  public static final String NAME = "name";
  public static final String ABOUT = "about";
  public static final String CLEARS_FOR = "clears_for";

  public TrailEditPage {
    rows = List.copyOf(rows);
    setups = List.copyOf(setups);
    kinds = List.copyOf(kinds);
  }

  /**
   * One stage; what its kind does not have is left alone.
   *
   * @param field begins the names of its fields
   * @param id empty for one that is new
   * @param kind reading, study, drills or build
   * @param chosen the words of the kinds of drill that it asks
   */
  public record Row(
      String field,
      String id,
      String place,
      String kind,
      String title,
      String text,
      String setup,
      List<String> chosen,
      String right) {
    public Row {
      chosen = List.copyOf(chosen);
    }

    /** Whether there is nothing in it yet. */
    public boolean isEmpty() {
      return title.isEmpty();
    }
  }

  /** What can be chosen. */
  public record Choice(String value, String words) {}
}
