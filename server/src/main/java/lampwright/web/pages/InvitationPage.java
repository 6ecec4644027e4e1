package lampwright.web.pages;

import java.util.Optional;

/**
 * What an invitation offers, and the two ways to take it.
 *
 * @param action where the forms post to; the link's secret is part of it
 * @param csrfToken what a form of somebody signed in carries
 * @param what who invites to which studio, as what
 * @param until when it ends
 * @param signedInAs the name of who is signed in
 * @param name what was typed before
 * @param email what was typed before
 * @param shortestPassword the least number of characters
 */
public record InvitationPage(
    Layout layout,
    String action,
    String csrfToken,
    String what,
    String until,
    Optional<String> signedInAs,
    String name,
    String email,
    int shortestPassword,
    FormErrors errors) {

  /** Sent where one comes in with the account that one is signed in with. */
  public static final String WITH_MINE = "with_mine";
}
