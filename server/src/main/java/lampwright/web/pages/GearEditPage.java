package lampwright.web.pages;

import java.util.List;

/**
 * Where one keeps new gear, or changes what is kept.
 *
 * @param kind as documents write it
 * @param revision that was looked at; 0 for new gear
 * @param groups of fields
 * @param condition rows of what was noticed, blank ones at the end
 * @param readings rows of what a meter gave, blank ones at the end; empty for gear that is not
 *     metered
 * @param removal where it is retired; empty for new gear
 */
public record GearEditPage(
    Layout layout,
    String heading,
    String action,
    String cancelPath,
    String csrfToken,
    String kind,
    int revision,
    List<Group> groups,
    List<Group> condition,
    List<Group> readings,
    String removal,
    FormErrors errors) {

  static final String REVISION = "revision";
  static final String KIND = "kind";

  public GearEditPage {
    groups = List.copyOf(groups);
    condition = List.copyOf(condition);
    readings = List.copyOf(readings);
  }

  /**
   * Fields that belong together.
   *
   * @param hint what is to be known of them; may be empty
   */
  public record Group(String name, String hint, List<Field> fields) {

    public Group {
      fields = List.copyOf(fields);
    }
  }

  /** How a field is typed. */
  public enum Kind {
    LINE,
    PARAGRAPH,
    NUMBER,
    DATE,
    CHOICE
  }

  /**
   * One field.
   *
   * @param choices of a choice
   */
  public record Field(String id, String label, Kind kind, String value, List<Choice> choices) {

    public Field {
      choices = List.copyOf(choices);
    }
  }

  /** One of a choice. */
  public record Choice(String value, String words) {}
}
