package lampwright.web.pages;

import java.util.List;

/**
 * A person's own account.
 *
 * @param revision of name and e-mail, the one that was looked at
 * @param name as it is, or as it was typed
 * @param email as it is, or as it was typed
 * @param secondFactor how it stands, in a sentence
 * @param secondFactorLink where it leads on, in words
 * @param sessions this one first
 * @param events what happened with it lately; may be empty
 * @param eventsPath to all that happened
 * @param kept which part was just kept; empty for none
 * @param errors why one was not
 */
public record AccountPage(
    Layout layout,
    String csrfToken,
    int revision,
    String name,
    String email,
    int shortestPassword,
    String secondFactor,
    Link secondFactorLink,
    List<SessionLine> sessions,
    List<AuditPage.Line> events,
    String eventsPath,
    String kept,
    FormErrors errors) {

  public static final String REVISION = "revision";
  public static final String NAME = "name";
  public static final String EMAIL = "email";
  public static final String PASSWORD = "password";
  public static final String CURRENT = "current";
  public static final String NEW = "new";
  public static final String AGAIN = "again";

  public AccountPage {
    sessions = List.copyOf(sessions);
    events = List.copyOf(events);
  }

  /**
   * Where somebody is signed in.
   *
   * @param device as the browser calls itself
   * @param isThisOne whether it is the one in which this page is read
   * @param endPath where a form posts to that ends it
   */
  public record SessionLine(
      String device, String since, String used, boolean isThisOne, String endPath) {}
}
