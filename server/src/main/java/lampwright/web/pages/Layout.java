package lampwright.web.pages;

import java.util.Optional;
import lampwright.language.Notation;
import lampwright.wording.Wording;

/**
 * What every page has around its own part.
 *
 * @param title of the window, without the program's name
 * @param signedIn who looks at it; empty before sign-in
 * @param theme the theme the person chose
 * @param words the words and figures of who looks at it
 * @param assets where style and scripts are
 */
public record Layout(
    String title, Optional<SignedIn> signedIn, Theme theme, Wording words, Assets assets) {

  /** How who looks at it reads words and figures. */
  public Notation notation() {
    return words.notation();
  }
}
