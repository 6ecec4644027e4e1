package lampwright.setup;

import lampwright.document.Form;
import lampwright.document.Forms;

/** What a light is called within its setup's document, such as {@code key} or {@code rim-left}. */
public record LightId(String text) {

  public static final Form<LightId> FORM =
      Forms.text(40)
          .like(
              "^[a-z0-9]+(-[a-z0-9]+)*$",
              LightId::isSound,
              "small letters and digits, with single hyphens between, such as \"rim-left\"")
          .as(LightId::new, LightId::text);

  /** Pieces of small letters and digits, with single hyphens between. */
  private static boolean isSound(String text) {
    boolean afterHyphen = true;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      boolean isHyphen = c == '-';
      boolean isPart = (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9');
      if (isHyphen ? afterHyphen : !isPart) {
        return false;
      }
      afterHyphen = isHyphen;
    }
    return !afterHyphen;
  }

  @Override
  public String toString() {
    return text;
  }
}
