package lampwright.learning.trail;

import lampwright.document.Form;
import lampwright.document.Forms;

/** What a stage is called within its trail's document, such as {@code two-lights}. */
public record StageId(String text) {

  private static final String PATTERN = "^[a-z0-9]+(-[a-z0-9]+)*$";

  public static final Form<StageId> FORM =
      Forms.text(40)
          .like(
              PATTERN,
              StageId::isSound,
              "small letters and digits, with single hyphens between, such as \"two-lights\"")
          .as(StageId::new, StageId::text);

  /** Asks whether a stage could be called so. */
  public static boolean isSound(String text) {
    return text.length() <= 40 && text.matches(PATTERN);
  }

  @Override
  public String toString() {
    return text;
  }
}
