package lampwright.web.pages;

import java.util.List;
import java.util.Optional;

/**
 * Sign in by e-mail and password.
 *
 * @param action where the form posts to
 * @param csrfToken what the form must carry; empty where there is none yet
 * @param next the page to go on to, sent back with the form; empty for the first page
 * @param email what was typed before
 * @param errors what was wrong with it
 * @param demo the members of the demo studio, where the demo runs
 */
public record SignInPage(
    Layout layout,
    String action,
    String csrfToken,
    String next,
    String email,
    FormErrors errors,
    Optional<DemoHint> demo) {

  public static final String EMAIL = "email";
  public static final String PASSWORD = "password";

  /**
   * How to get into the demo studio.
   *
   * @param members one line a member: e-mail and what they may do
   * @param password the same for all of them, or where it is set
   */
  public record DemoHint(List<DemoMember> members, String password) {

    public DemoHint {
      members = List.copyOf(members);
    }
  }

  /** A member of the demo studio. */
  public record DemoMember(String email, String may) {}
}
