package lampwright.web.pages;

import java.util.Optional;

/**
 * What every page has around its own part.
 *
 * @param title of the window, without the program's name
 * @param signedIn who looks at it; empty before sign-in
 * @param theme the theme the person chose
 * @param assets where style and scripts are
 */
public record Layout(String title, Optional<SignedIn> signedIn, Theme theme, Assets assets) {}
