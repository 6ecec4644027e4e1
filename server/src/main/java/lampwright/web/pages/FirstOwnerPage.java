package lampwright.web.pages;

/**
 * The first owner takes over an empty server, by a link that works once.
 *
 * @param action where the form posts to; the link's secret is part of it
 * @param csrfToken what the form must carry; empty where there is none yet
 * @param studioName what was typed before
 * @param name what was typed before
 * @param email what was typed before
 * @param shortestPassword the least number of characters
 */
public record FirstOwnerPage(
    Layout layout,
    String action,
    String csrfToken,
    String studioName,
    String name,
    String email,
    int shortestPassword,
    FormErrors errors) {

  public static final String STUDIO = "studio";
  public static final String NAME = "name";
  public static final String EMAIL = "email";
  public static final String PASSWORD = "password";
  public static final String PASSWORD_AGAIN = "password_again";
}
