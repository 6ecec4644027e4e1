package lampwright.web.pages;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lampwright.document.Form;
import lampwright.document.Problem;
import lampwright.document.Reading;
import lampwright.tasks.AccountKeeping;
import lampwright.tasks.Auditing;
import lampwright.tasks.Caller;
import lampwright.tasks.Listed;
import lampwright.tasks.Passwords;
import lampwright.tasks.Refusal;
import lampwright.tasks.Refused;
import lampwright.tasks.SecondFactorKeeping;
import lampwright.tasks.SessionKeeping;
import lampwright.web.http.Body;
import lampwright.web.http.Door;
import lampwright.web.http.Entrance;
import lampwright.web.http.FormFields;
import lampwright.wording.Wording;

/** The page of one's own account: name, e-mail, password, and where one is signed in. */
public final class AccountPages {

  static final String PATH = "/account";

  private static final String KEPT = "kept";

  private static final int EVENTS_READ = 50;
  private static final int EVENTS_SHOWN = 4;

  private final Door door;
  private final Entrance entrance;
  private final Tasks tasks;
  private final Templates templates;
  private final OwnLayouts layouts;

  /** What it asks. */
  public record Tasks(
      AccountKeeping accounts,
      SessionKeeping sessions,
      SecondFactorKeeping factors,
      Auditing auditing) {}

  public AccountPages(
      Door door, Entrance entrance, Tasks tasks, Templates templates, OwnLayouts layouts) {
    this.door = door;
    this.entrance = entrance;
    this.tasks = tasks;
    this.templates = templates;
    this.layouts = layouts;
  }

  /** What stands in a form that was refused. */
  private record Typed(String name, String email) {}

  /** Shows it: {@code /account}. */
  public void show(Context context) {
    show(context, Optional.empty(), FormErrors.none());
  }

  private void show(Context context, Optional<Typed> typed, FormErrors errors) {
    Caller caller = door.caller(context);
    AccountKeeping.Account account = tasks.accounts().get(caller);
    Layout layout = layouts.named(context, "account.title");
    Wording words = layout.words();
    Optional<Instant> since = tasks.factors().get(caller).since();
    String kept = context.queryParam(KEPT);
    templates.show(
        context,
        "account",
        new AccountPage(
            layout,
            door.csrfToken(context),
            account.revision(),
            typed.map(Typed::name).orElse(account.person().name()),
            typed.map(Typed::email).orElse(account.person().email()),
            Passwords.SHORTEST,
            since
                .map(when -> words.say("account.factor.on", new DayWords(words).day(when)))
                .orElseGet(() -> words.say("account.factor.off")),
            new Link(
                words.say(since.isPresent() ? "account.factor.change" : "account.factor.switchOn"),
                SecondFactorPages.PATH),
            tasks.sessions().list(caller, entrance.session(context)).stream()
                .map(one -> line(words, one))
                .toList(),
            new AccountEventWords(words)
                .latest(
                    tasks
                        .auditing()
                        .listOwn(caller, new Listed.Wish(Optional.empty(), EVENTS_READ))
                        .items(),
                    EVENTS_SHOWN),
            AccountEventPages.PATH,
            kept == null || !errors.isEmpty() ? "" : kept,
            errors));
  }

  private static AccountPage.SessionLine line(Wording words, SessionKeeping.OwnSession session) {
    return new AccountPage.SessionLine(
        session.device().isEmpty() ? words.say("account.sessions.unnamed") : session.device(),
        new DayWords(words).day(session.begunAt()),
        AccountLinkPages.moment(words, session.usedAt()),
        session.isThisOne(),
        PATH + "/sessions/" + session.id() + "/removal");
  }

  /** Takes name and e-mail. */
  public void changeDetails(Context context) {
    FormFields sent = Body.form(context);
    Typed typed = new Typed(sent.get(AccountPage.NAME), sent.get(AccountPage.EMAIL));
    attempt(
        context,
        Optional.of(typed),
        () -> {
          AccountKeeping.Wish wish =
              read(
                  AccountKeeping.FORM,
                  sent,
                  List.of(AccountPage.NAME, AccountPage.EMAIL, AccountPage.PASSWORD));
          tasks
              .accounts()
              .change(door.caller(context), revision(sent), wish, entrance.visit(context));
          context.redirect(PATH + "?" + KEPT + "=details", HttpStatus.SEE_OTHER);
        });
  }

  /** Takes a new password. */
  public void changePassword(Context context) {
    FormFields sent = Body.form(context);
    attempt(
        context,
        Optional.empty(),
        () -> {
          AccountKeeping.NewPassword wish =
              read(
                  AccountKeeping.PASSWORD_FORM,
                  sent,
                  List.of(AccountPage.CURRENT, AccountPage.NEW));
          if (!sent.get(AccountPage.AGAIN).equals(wish.wanted())) {
            throw Refused.invalid("/" + AccountPage.AGAIN, "");
          }
          String token =
              tasks
                  .accounts()
                  .changePassword(
                      door.caller(context),
                      entrance.session(context),
                      wish,
                      entrance.visit(context));
          entrance.goOn(context, token);
          context.redirect(PATH + "?" + KEPT + "=password", HttpStatus.SEE_OTHER);
        });
  }

  /** Signs out in one place. */
  public void endSession(Context context) {
    tasks.sessions().end(door.caller(context), context.pathParam("session"));
    context.redirect(PATH + "?" + KEPT + "=sessions", HttpStatus.SEE_OTHER);
  }

  /** Signs out everywhere else. */
  public void endOtherSessions(Context context) {
    tasks.sessions().endOthers(door.caller(context), entrance.session(context));
    context.redirect(PATH + "?" + KEPT + "=sessions", HttpStatus.SEE_OTHER);
  }

  /** Reads what was typed; a field that is empty was not. */
  private static <T> T read(Form<T> form, FormFields sent, List<String> fields) {
    Map<String, Object> document = new HashMap<>();
    for (String field : fields) {
      if (!sent.get(field).isEmpty()) {
        document.put(field, sent.get(field));
      }
    }
    return switch (form.read(document)) {
      case Reading.Sound<T>(T value) -> value;
      case Reading.Faulty<T> faulty -> throw Refused.invalid(faulty.problems());
    };
  }

  /** Does it; or shows the page again, with what was wrong beside its field. */
  private void attempt(Context context, Optional<Typed> typed, Runnable change) {
    try {
      change.run();
    } catch (Refused refused) {
      switch (refused.refusal()) {
        case Refusal.Invalid(List<Problem> problems) -> {
          context.status(HttpStatus.UNPROCESSABLE_CONTENT);
          show(context, typed, errors(layouts.words(context), problems));
        }
        case Refusal.Stale _ -> {
          context.status(HttpStatus.PRECONDITION_FAILED);
          show(
              context,
              Optional.empty(),
              FormErrors.of("", layouts.words(context).say("account.changedSince")));
        }
        default -> throw refused;
      }
    }
  }

  /** One sentence a field that says all that it must be. */
  static FormErrors errors(Wording words, List<Problem> problems) {
    List<FormErrors.FormError> errors = new ArrayList<>();
    for (Problem problem : problems) {
      String field = problem.pointer().replaceAll("^/|(?<=.)/.*", "");
      if (errors.stream().noneMatch(error -> error.field().equals(field))) {
        errors.add(new FormErrors.FormError(field, sentence(words, field)));
      }
    }
    return new FormErrors(errors);
  }

  private static String sentence(Wording words, String field) {
    return field.equals(AccountPage.NEW)
        ? words.say("account.error.new", Passwords.SHORTEST, Passwords.LONGEST)
        : words.say("account.error." + field);
  }

  /** The one that was looked at; where the form does not say, none that there is. */
  private static int revision(FormFields sent) {
    String written = sent.get(AccountPage.REVISION);
    return written.matches("[1-9]\\d{0,8}") ? Integer.parseInt(written) : 0;
  }
}
