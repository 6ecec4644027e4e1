package lampwright.web.pages;

import java.util.Optional;

/**
 * Keeps the adaptation that is shown as a setup of its own.
 *
 * @param action this page's address with the way that is shown, so that the same is computed again
 * @param csrfToken what it must carry
 * @param title offered for the new setup, or as it was sent
 * @param error what is wrong with the title
 */
public record SaveForm(String action, String csrfToken, String title, Optional<String> error) {

  public static final String TITLE = "title";

  /** The id of the title's field. */
  public static final String TITLE_ID = "save-title";
}
