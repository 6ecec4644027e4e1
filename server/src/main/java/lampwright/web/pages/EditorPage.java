package lampwright.web.pages;

import java.util.List;
import java.util.Optional;
import lampwright.drawing.Svg;
import lampwright.language.Notation;

/**
 * Where one makes or changes a setup. Its form works by itself; the script builds the live editor
 * from {@code data} over it.
 *
 * @param action where the form is sent
 * @param backPath the setup's page, or the list for a new one
 * @param revision that was opened; 0 for a new one
 * @param moods as they are typed, with commas between
 * @param plan as it was opened
 * @param data for the script, as JSON
 */
public record EditorPage(
    Layout layout,
    Notation notation,
    String heading,
    String action,
    String backPath,
    String csrfToken,
    int revision,
    String title,
    String genre,
    String intent,
    String moods,
    List<Group> groups,
    Optional<Svg> plan,
    FormErrors errors,
    String data) {

  /** Copies the groups. */
  public EditorPage {
    groups = List.copyOf(groups);
  }

  /**
   * A few fields that belong together, which need no script.
   *
   * @param number of a light its place in the build order; else empty
   * @param name "Key", "Exposure and ambient"
   */
  public record Group(String number, String name, List<Field> fields) {

    /** Copies the fields. */
    public Group {
      fields = List.copyOf(fields);
    }
  }

  /**
   * One field.
   *
   * @param id its name in the form
   * @param value what stands in it
   * @param isLong whether it takes more than a line
   * @param isNumber whether a phone offers its digits
   */
  public record Field(String id, String label, String value, boolean isLong, boolean isNumber) {}
}
