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
    String intent,
    String moods,
    List<LightFields> lights,
    Optional<Svg> plan,
    FormErrors errors,
    String data) {

  /** Copies the lights. */
  public EditorPage {
    lights = List.copyOf(lights);
  }

  /**
   * The few fields of a light that need no script.
   *
   * @param number its place in the build order
   * @param name "Key"
   */
  public record LightFields(int number, String name, List<Field> fields) {

    /** Copies the fields. */
    public LightFields {
      fields = List.copyOf(fields);
    }
  }

  /** One field: its name in the form, its label, and what stands in it. */
  public record Field(String id, String label, String value) {}
}
