package lampwright.web.pages;

import java.util.Optional;

/** What the links of invitations and new passwords lead to. */
final class MembersPreviews {

  private MembersPreviews() {}

  static InvitationPage invitation(boolean isSignedIn) {
    return new InvitationPage(
        PagePreviews.outside("You are invited"),
        "/invitations/x7",
        isSignedIn ? "proof" : "",
        "Imke Tal invites you to the studio Veskarn Light, as crew.",
        "5 December 2026, 13:00 UTC",
        isSignedIn ? Optional.of("Wim Fennel") : Optional.empty(),
        "",
        "",
        12,
        isSignedIn
            ? FormErrors.of("", "You belong to this studio already.")
            : FormErrors.of("password", "Password (3 characters) must have 12 to 200."));
  }

  static NewPasswordPage newPassword(boolean isDone) {
    return new NewPasswordPage(
        isDone ? PagePreviews.layout("A new password") : PagePreviews.outside("A new password"),
        "/password-reset/x7",
        "Wim Fennel",
        isDone,
        12,
        isDone
            ? FormErrors.none()
            : FormErrors.of("password", "Password (3 characters) must have 12 to 200."));
  }
}
