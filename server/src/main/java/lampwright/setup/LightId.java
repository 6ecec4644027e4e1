package lampwright.setup;

import lampwright.document.Form;
import lampwright.document.Forms;

/** What a light is called within its setup's document, such as {@code key} or {@code rim-left}. */
public record LightId(String text) {

  public static final Form<LightId> FORM =
      Forms.text(40)
          .like(
              "^[a-z0-9]+(-[a-z0-9]+)*$",
              text -> text.matches("[a-z0-9]+(-[a-z0-9]+)*"),
              "small letters and digits, with single hyphens between, such as \"rim-left\"")
          .as(LightId::new, LightId::text);

  @Override
  public String toString() {
    return text;
  }
}
