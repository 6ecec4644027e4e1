package lampwright.tasks;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import lampwright.document.Field;
import lampwright.document.Form;
import lampwright.document.Forms;
import lampwright.document.ObjectForm;
import lampwright.people.AuditAction;
import lampwright.people.Ids;
import lampwright.people.Person;
import lampwright.people.SecretHash;
import lampwright.store.AuditTrail;
import lampwright.store.Clashing;
import lampwright.store.Database;
import lampwright.store.People;
import lampwright.store.Saving;
import lampwright.store.Sessions;

/** A person's own account: their name, the e-mail that they sign in by, their password. */
public final class AccountKeeping {

  private static final int LONGEST_NAME = 200;
  private static final int LONGEST_EMAIL = 320;
  private static final String EMAIL_PATTERN = "^[^@\\s]+@[^@\\s]+$";

  private static final Field<Wish, String> NAME =
      Field.required("name", Forms.text(LONGEST_NAME), Wish::name, "As others see it.");
  private static final Field<Wish, String> EMAIL =
      Field.required(
          "email",
          Forms.text(LONGEST_EMAIL)
              .like(
                  EMAIL_PATTERN,
                  written -> written.strip().matches(EMAIL_PATTERN),
                  "an address with one @ and words around it"),
          Wish::email,
          "What one signs in by; kept in small letters.");
  private static final Field<Wish, Optional<String>> PASSWORD =
      Field.optional(
          "password",
          Forms.text(Passwords.LONGEST),
          Wish::password,
          "The present one; needed where the e-mail changes, and never shown.");

  /** What one may change at once. */
  public static final ObjectForm<Wish> FORM =
      ObjectForm.of(
          "account",
          "Who one is here.",
          values -> new Wish(values.get(NAME), values.get(EMAIL), values.get(PASSWORD)),
          List.of(NAME, EMAIL, PASSWORD));

  private static final Field<NewPassword, String> CURRENT =
      Field.required(
          "current", Forms.text(Passwords.LONGEST), NewPassword::current, "The present password.");
  private static final Field<NewPassword, String> NEW =
      Field.required(
          "new",
          Forms.text(Passwords.LONGEST),
          NewPassword::wanted,
          "The one that takes its place, of 12 to 200 characters.");

  /** A change of password. */
  public static final Form<NewPassword> PASSWORD_FORM =
      ObjectForm.of(
          "new_password",
          "A password in place of the present one.",
          values -> new NewPassword(values.get(CURRENT), values.get(NEW)),
          List.of(CURRENT, NEW));

  private final Database database;
  private final Ids ids;
  private final Passwords passwords;
  private final PasswordProof proof;

  public AccountKeeping(
      Database database, Ids ids, Passwords passwords, FailedSignIns failures, Closed closed) {
    this.database = database;
    this.ids = ids;
    this.passwords = passwords;
    this.proof = new PasswordProof(database, passwords, failures, closed);
  }

  /**
   * A person, and the revision of their name and e-mail.
   *
   * @param revision counts the changes, from 1
   */
  public record Account(Person person, int revision) {}

  /** What somebody wants to be called, and to sign in by. */
  public record Wish(String name, String email, Optional<String> password) {

    public Wish {
      name = name.strip();
      email = email.strip().toLowerCase(Locale.ROOT);
    }

    /** No record's text may carry a password into a log. */
    @Override
    public String toString() {
      return "Wish";
    }
  }

  /** The password that somebody has, and the one that they want. */
  public record NewPassword(String current, String wanted) {

    /** No record's text may carry a password into a log. */
    @Override
    public String toString() {
      return "NewPassword";
    }
  }

  /** The caller's own. */
  public Account get(Caller caller) {
    return database.anonymous(
        in ->
            new People(in)
                .findAccount(caller.person().id())
                .map(account -> new Account(account.person(), account.revision()))
                .orElseThrow(Refused::notFound));
  }

  /**
   * Changes the caller's name and e-mail.
   *
   * @param basedOn the revision that was looked at
   * @throws Refused Stale where it was changed since; Invalid where the e-mail is somebody's, or
   *     changes without the right password
   */
  public Account change(Caller caller, int basedOn, Wish wish, Visit visit) {
    String before = get(caller).person().email();
    if (!wish.email().equals(before)) {
      if (isDemos(before) || isDemos(wish.email())) {
        throw Refused.invalid("/email", "E-mail is the demo's own. Take another.");
      }
      String password =
          wish.password()
              .orElseThrow(
                  () ->
                      Refused.invalid(
                          "/password",
                          "Password is missing, and the e-mail changes. Send the present one."));
      proof.proveAgain(caller, "/password", password, visit);
    }
    return save(caller, basedOn, wish, before);
  }

  private static boolean isDemos(String email) {
    return DemoStudio.EMAILS.contains(email);
  }

  private Account save(Caller caller, int basedOn, Wish wish, String before) {
    try {
      database.anonymous(
          in -> {
            People people = new People(in);
            if (people.isTaken(wish.email(), caller.person().id())) {
              throw taken();
            }
            Saving saving =
                people.changeAccount(caller.person().id(), basedOn, wish.name(), wish.email());
            if (!wish.email().equals(before)) {
              new AuditTrail(in).note(caller.person().id(), AuditAction.EMAIL_CHANGED);
            }
            return Cataloguing.mustBeSaved(saving);
          });
      return get(caller);
    } catch (RuntimeException e) {
      // Somebody else took it between the look and the change.
      if (Clashing.is(e)) {
        throw taken();
      }
      throw e;
    }
  }

  private static Refused taken() {
    return Refused.invalid("/email", "E-mail belongs to somebody already. Take another.");
  }

  /**
   * Changes the caller's password, and signs them out everywhere else. The session goes on under
   * another token, so that one which was read off before is worth nothing now.
   *
   * @param session the token of the session that they came with
   * @return its next token
   * @throws Refused Invalid where the present password is wrong or the new one no good; TooMany
   */
  public String changePassword(Caller caller, String session, NewPassword wish, Visit visit) {
    passwords
        .findFault(wish.wanted(), caller.person().email(), caller.person().name())
        .ifPresent(
            fault -> {
              throw Refused.invalid("/new", fault);
            });
    Person person = proof.proveAgain(caller, "/current", wish.current(), visit).person();
    String hash = passwords.hash(wish.wanted());
    String next = ids.nextSecret();
    database.anonymous(
        in -> {
          Sessions sessions = new Sessions(in);
          if (!sessions.rotate(SecretHash.of(session), SecretHash.of(next))) {
            throw Refused.notSignedIn();
          }
          sessions.endOthers(person.id(), SecretHash.of(next));
          new AuditTrail(in).note(person.id(), AuditAction.PASSWORD_CHANGED);
          return new People(in).changePassword(person.id(), hash);
        });
    return next;
  }
}
