package lampwright.web.pages;

import java.util.List;

/**
 * Where one logs the next take.
 *
 * @param number that it will have on its day, unless somebody else logs one before
 * @param clientKey that makes it one take however often it is sent
 * @param setupRevision that is shot
 * @param at date and time by the clocks of the place, as the field holds it; empty for when it is
 *     sent
 * @param offset of those clocks
 * @param why in free words, behind the reasons
 * @param forIt the usual reasons for a take
 * @param againstIt the usual reasons against one
 */
public record TakeForm(
    String action,
    String csrfToken,
    int number,
    String clientKey,
    int setupRevision,
    String at,
    String offset,
    boolean isRunThrough,
    String why,
    String changed,
    List<Reason> forIt,
    List<Reason> againstIt,
    List<MeterField> lights,
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
    forIt = List.copyOf(forIt);
    againstIt = List.copyOf(againstIt);
    lights = List.copyOf(lights);
  }

  /** A usual reason, one tap. */
  public record Reason(String field, String words, boolean isChosen) {}
}
