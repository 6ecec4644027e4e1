package lampwright.web.pages;

import java.util.List;

/**
 * Where one logs the next take.
 *
 * @param clientKey that makes it one take however often it is sent
 * @param setupRevision that is shot
 * @param at date and time by the clocks of the place, as the field holds it
 * @param offset of those clocks
 */
public record TakeForm(
    String action,
    String csrfToken,
    String clientKey,
    int setupRevision,
    String at,
    String offset,
    boolean isRunThrough,
    String why,
    String changed,
    List<LightField> lights,
    FormErrors errors) {

  static final String CLIENT_KEY = "client-key";
  static final String SETUP_REVISION = "setup-revision";
  static final String AT = "at";
  static final String OFFSET = "offset";
  static final String KIND = "kind";
  static final String KEPT = "kept";
  static final String WHY = "why";
  static final String CHANGED = "changed";
  static final String REVISION = "revision";

  public TakeForm {
    lights = List.copyOf(lights);
  }

  /** What the meter gives for one light. */
  public record LightField(String id, String label, String value, String hint) {}
}
