package lampwright.web.pages;

import java.util.List;

/**
 * Where one makes or changes a kit.
 *
 * @param revision that was looked at; 0 for a new one
 * @param shelves of the studio's gear
 * @param written what is written out in the kit itself
 * @param removal where it is deleted; empty for a new one
 */
public record KitEditPage(
    Layout layout,
    String heading,
    String action,
    String cancelPath,
    String csrfToken,
    int revision,
    String name,
    String note,
    List<Shelf> shelves,
    List<String> written,
    String removal,
    FormErrors errors) {

  static final String REVISION = "revision";
  static final String NAME = "name";
  static final String NOTE = "note";

  public KitEditPage {
    shelves = List.copyOf(shelves);
    written = List.copyOf(written);
  }

  /** Gear of one kind. */
  public record Shelf(String heading, List<Choice> choices) {

    public Shelf {
      choices = List.copyOf(choices);
    }
  }

  /**
   * A piece, and how many of it the kit takes.
   *
   * @param id of the field
   * @param count as it is typed
   * @param has "3 in order"
   */
  public record Choice(String id, String name, String count, String has) {}
}
