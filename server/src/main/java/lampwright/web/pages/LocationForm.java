package lampwright.web.pages;

/**
 * Where one makes or changes a location.
 *
 * @param cancelPath back without a change
 * @param revision that was looked at; 0 for a new one
 */
public record LocationForm(
    Layout layout,
    String heading,
    String action,
    String cancelPath,
    String csrfToken,
    int revision,
    Fields fields,
    FormErrors errors) {

  static final String REVISION = "revision";

  /**
   * What is typed.
   *
   * @param hazards one a line
   */
  public record Fields(
      String name,
      String kind,
      String latitude,
      String longitude,
      String altitude,
      String timeZone,
      String access,
      String mains,
      String outlets,
      String current,
      String powerNote,
      String hazards,
      String notes) {}
}
