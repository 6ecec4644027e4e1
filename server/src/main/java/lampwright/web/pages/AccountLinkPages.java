package lampwright.web.pages;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import lampwright.people.PasswordRule;
import lampwright.people.StudioId;
import lampwright.tasks.Caller;
import lampwright.tasks.Inviting;
import lampwright.tasks.NewAccount;
import lampwright.tasks.PasswordResetting;
import lampwright.tasks.Refusal;
import lampwright.tasks.Refused;
import lampwright.web.http.Body;
import lampwright.web.http.Door;
import lampwright.web.http.FormFields;
import lampwright.wording.Wording;

/** What the links lead to that owners hand out: an invitation, and a new password. */
public final class AccountLinkPages {

  private final Door door;
  private final Inviting inviting;
  private final PasswordResetting resetting;
  private final Templates templates;
  private final Layouts layouts;

  public AccountLinkPages(
      Door door,
      Inviting inviting,
      PasswordResetting resetting,
      Templates templates,
      Layouts layouts) {
    this.door = door;
    this.inviting = inviting;
    this.resetting = resetting;
    this.templates = templates;
    this.layouts = layouts;
  }

  /** "4 May 2031, 18:05 UTC". */
  static String moment(Wording words, Instant moment) {
    LocalDateTime time = LocalDateTime.ofInstant(moment, ZoneOffset.UTC);
    return words.say(
        "account.sessions.time",
        new DayWords(words).dayAndTime(time.toLocalDate(), time.toLocalTime()));
  }

  /** Shows what an invitation offers: {@code /invitations/{secret}}. */
  public void showInvitation(Context context) {
    showInvitation(context, "", "", FormErrors.none());
  }

  private void showInvitation(Context context, String name, String email, FormErrors errors) {
    Inviting.Offer offer = inviting.look(context.pathParam("secret"));
    Optional<Caller> caller = door.findCaller(context);
    Wording words = layouts.words(context);
    templates.show(
        context,
        "invitation",
        new InvitationPage(
            layouts.outside(Optional.of(context), words.say("members.invitation.title")),
            context.path(),
            door.csrfToken(context),
            words.say(
                "members.invitation.what",
                offer.inviterName(),
                offer.studioName(),
                words.say("studio.people.role." + offer.role().word())),
            moment(words, offer.expiresAt()),
            caller.map(one -> one.person().name()),
            name,
            email,
            PasswordRule.SHORTEST,
            errors));
  }

  /** Takes an invitation. */
  public void acceptInvitation(Context context) {
    String secret = context.pathParam("secret");
    FormFields form = Body.form(context);
    NewAccount account =
        new NewAccount(
            form.get(FirstOwnerPage.NAME),
            form.get(FirstOwnerPage.EMAIL),
            form.get(FirstOwnerPage.PASSWORD));
    boolean isWithMine = !form.get(InvitationPage.WITH_MINE).isEmpty();
    FormErrors errors =
        isWithMine ? FormErrors.none() : differing(context, form, account.password());
    if (errors.isEmpty()) {
      errors =
          tried(
              context,
              () -> {
                if (isWithMine) {
                  return inviting.accept(secret, door.provenCaller(context)).studio();
                }
                Inviting.Arrived arrived = inviting.accept(secret, account);
                door.begin(context, arrived.session().token(), arrived.session().lifetime());
                return arrived.offer().studio();
              });
    }
    if (!errors.isEmpty()) {
      showInvitation(context, account.name(), account.email(), errors);
    }
  }

  private static FormErrors tried(Context context, Supplier<StudioId> accepting) {
    try {
      context.redirect(SetupPages.findPath(accepting.get()), HttpStatus.SEE_OTHER);
      return FormErrors.none();
    } catch (Refused refused) {
      return errors(context, refused);
    }
  }

  /** What is wrong with a form, and the status that says so; other refusals go their way. */
  static FormErrors errors(Context context, Refused refused) {
    return switch (refused.refusal()) {
      case Refusal.Invalid invalid -> {
        context.status(HttpStatus.UNPROCESSABLE_CONTENT);
        yield new FormErrors(
            invalid.problems().stream()
                .map(
                    problem ->
                        new FormErrors.FormError(problem.pointer().substring(1), problem.message()))
                .toList());
      }
      case Refusal.Clash(String what) -> {
        context.status(HttpStatus.CONFLICT);
        yield FormErrors.of("", what);
      }
      default -> throw refused;
    };
  }

  private FormErrors differing(Context context, FormFields form, String password) {
    if (form.get(FirstOwnerPage.PASSWORD_AGAIN).equals(password)) {
      return FormErrors.none();
    }
    context.status(HttpStatus.UNPROCESSABLE_CONTENT);
    return new FormErrors(
        List.of(
            new FormErrors.FormError(
                FirstOwnerPage.PASSWORD_AGAIN,
                layouts.words(context).say("pages.firstOwner.differ"))));
  }

  /** Shows the form of a new password: {@code /password-reset/{secret}}. */
  public void showReset(Context context) {
    showReset(context, FormErrors.none());
  }

  private void showReset(Context context, FormErrors errors) {
    showReset(context, resetting.look(context.pathParam("secret")).name(), false, errors);
  }

  private void showReset(Context context, String name, boolean isDone, FormErrors errors) {
    templates.show(
        context,
        "newPassword",
        new NewPasswordPage(
            layouts.outside(
                Optional.of(context), layouts.words(context).say("members.newPassword.title")),
            context.path(),
            name,
            isDone,
            PasswordRule.SHORTEST,
            errors));
  }

  /** Sets the password. */
  public void reset(Context context) {
    FormFields form = Body.form(context);
    String password = form.get(FirstOwnerPage.PASSWORD);
    FormErrors errors = differing(context, form, password);
    if (errors.isEmpty()) {
      try {
        resetting.use(context.pathParam("secret"), password);
        door.end(context);
        showReset(context, "", true, FormErrors.none());
        return;
      } catch (Refused refused) {
        errors = errors(context, refused);
      }
    }
    showReset(context, errors);
  }
}
