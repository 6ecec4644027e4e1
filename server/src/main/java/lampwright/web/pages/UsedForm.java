package lampwright.web.pages;

import java.util.List;

/**
 * The form in which one tells what was really used.
 *
 * @param csrfToken what it must carry
 * @param revision that is looked at
 * @param isAgain whether something was told already
 * @param isProposal whether it waits for an author
 * @param camera its fields
 */
public record UsedForm(
    String action,
    String csrfToken,
    int revision,
    boolean isAgain,
    boolean isProposal,
    List<LightFields> lights,
    List<TypedField> camera,
    String note,
    FormErrors errors) {

  public static final String REVISION = "revision";
  public static final String NOTE = "used-note";

  public UsedForm {
    lights = List.copyOf(lights);
    camera = List.copyOf(camera);
  }

  /** The same form for somebody whose telling waits for an author, or not. */
  UsedForm proposing(boolean waits) {
    return new UsedForm(action, csrfToken, revision, isAgain, waits, lights, camera, note, errors);
  }

  /** What is told of one light. */
  public record LightFields(int number, String role, List<TypedField> fields) {

    public LightFields {
      fields = List.copyOf(fields);
    }
  }

  /**
   * One field.
   *
   * @param hint what was planned; may be empty
   * @param isNumber whether a phone offers its keys for numbers
   */
  public record TypedField(String id, String label, String value, String hint, boolean isNumber) {}
}
