package lampwright.tasks;

import java.util.Locale;
import java.util.Optional;
import lampwright.people.Person;
import lampwright.people.PersonId;
import lampwright.people.SecretHash;
import lampwright.store.AuditTrail;
import lampwright.store.Database;
import lampwright.store.KnownDevices;
import lampwright.store.People;

/**
 * Whether somebody knows a person's password. Known and unknown addresses are answered alike and
 * after the same work.
 */
final class PasswordProof {

  private final Database database;
  private final Passwords passwords;
  private final FailedSignIns failures;
  private final Closed closed;

  PasswordProof(Database database, Passwords passwords, FailedSignIns failures, Closed closed) {
    this.database = database;
    this.passwords = passwords;
    this.failures = failures;
    this.closed = closed;
  }

  /** Who knows the password, and how they tried. */
  record Proven(Person person, FailedSignIns.Try tried) {}

  /**
   * Proves it.
   *
   * @throws Refused WrongPassword when e-mail and password do not belong together, TooMany when it
   *     failed too often
   */
  Proven prove(String email, String password, Visit visit) {
    String name = email.strip().toLowerCase(Locale.ROOT);
    FailedSignIns.Try tried = tried(name, visit);
    failures.mustBeFew(tried);
    Optional<People.WithPassword> found =
        database
            .eachByItself(in -> new People(in).findByEmail(name))
            .filter(known -> closed.isOpenTo(known.person()));
    boolean right = password.length() <= Passwords.LONGEST && isRight(found, password);
    failures.judge(tried, right);
    if (!right || found.isEmpty()) {
      noteFailure(found.map(known -> known.person().id()));
      throw new Refused(new Refusal.WrongPassword());
    }
    return new Proven(found.get().person(), tried);
  }

  /**
   * Notes in the audit trail that somebody could not prove who they are, in the same time for all.
   */
  void noteFailure(Optional<PersonId> account) {
    database.anonymous(
        in -> {
          new AuditTrail(in).noteFailedSignIn(account);
          return account;
        });
  }

  /**
   * Has a person who is signed in prove it again, before they change what lets them in.
   *
   * @param field the pointer to where they sent the password
   * @throws Refused Invalid at that field, TooMany when it failed too often
   */
  Proven proveAgain(Caller caller, String field, String password, Visit visit) {
    try {
      Proven proven = prove(caller.person().email(), password, visit);
      failures.forgivePasswords(proven.tried());
      return proven;
    } catch (Refused refused) {
      if (refused.refusal() instanceof Refusal.WrongPassword) {
        throw Refused.invalid(field, "Password is not your present one. Type it again.");
      }
      throw refused;
    }
  }

  /** A try, counted under the browser where the person has signed in there before. */
  FailedSignIns.Try tried(String email, Visit visit) {
    Optional<SecretHash> browser =
        visit
            .knownBy()
            .map(SecretHash::of)
            .filter(
                secret ->
                    database.<Boolean>eachByItself(
                        in -> new KnownDevices(in).isKnown(email, secret)));
    return new FailedSignIns.Try(email, visit.address(), browser);
  }

  private boolean isRight(Optional<People.WithPassword> found, String password) {
    if (found.isEmpty()) {
      passwords.checkNobody(password);
      return false;
    }
    Passwords.Checked checked = passwords.check(password, found.get().passwordHash());
    if (checked.right() && checked.outdated()) {
      String hash = passwords.hash(password);
      database.anonymous(
          in -> {
            new People(in).changePassword(found.get().person().id(), hash);
            return hash;
          });
    }
    return checked.right();
  }
}
