package lampwright.tasks;

import java.time.Duration;
import java.time.Instant;
import java.util.Locale;
import java.util.Optional;
import lampwright.people.Ids;
import lampwright.people.Person;
import lampwright.people.Reach;
import lampwright.people.SecretHash;
import lampwright.store.Database;
import lampwright.store.People;
import lampwright.store.Sessions;

/**
 * Signing in by e-mail and password, and the sessions that come of it. Known and unknown addresses
 * are answered alike and after the same work.
 */
public final class SigningIn {

  /** A session that nobody uses ends after this. */
  public static final Duration IDLE_END = Duration.ofDays(14);

  /** Every session ends after this. */
  public static final Duration END = Duration.ofDays(60);

  private static final Duration BETWEEN_NOTES = Duration.ofMinutes(10);

  private final Database database;
  private final Ids ids;
  private final Passwords passwords;
  private final FailedSignIns failures;
  private final Closed closed;

  public SigningIn(
      Database database, Ids ids, Passwords passwords, FailedSignIns failures, Closed closed) {
    this.database = database;
    this.ids = ids;
    this.passwords = passwords;
    this.failures = failures;
    this.closed = closed;
  }

  /**
   * A session that has just begun.
   *
   * @param token what the browser sends; only its hash is kept
   * @param lifetime how long it can last at most
   */
  public record Session(String token, Person person, Instant expiresAt, Duration lifetime) {

    /** No record's text may carry a secret into a log. */
    @Override
    public String toString() {
      return "Session[" + person + "]";
    }
  }

  /**
   * Signs a person in.
   *
   * @param address the network address that it is tried from
   * @throws Refused when e-mail and password do not belong together, or it failed too often
   */
  public Session signIn(String email, String password, String address) {
    String name = email.strip().toLowerCase(Locale.ROOT);
    failures.mustBeFew(name, address);
    Optional<People.WithPassword> found =
        database
            .anonymous(in -> new People(in).findByEmail(name))
            .filter(known -> closed.isOpenTo(known.person()));
    boolean right = password.length() <= Passwords.LONGEST && isRight(found, password);
    if (!right || found.isEmpty()) {
      failures.add(name, address);
      throw new Refused(new Refusal.WrongPassword());
    }
    failures.forgive(name, address);
    return begin(found.get().person());
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

  /** Begins a session for a person who has proved otherwise who they are. */
  Session begin(Person person) {
    String token = ids.nextSecret();
    return database.anonymous(
        in -> {
          Sessions sessions = new Sessions(in);
          sessions.forgetExpired();
          Instant expiresAt = in.now().plus(IDLE_END);
          sessions.begin(ids.next(), person.id(), SecretHash.of(token), "", expiresAt);
          return new Session(token, person, expiresAt, END);
        });
  }

  /** Who a session's token belongs to; empty where the session has ended. */
  public Optional<Caller> find(String token) {
    return database.anonymous(
        in -> {
          Sessions sessions = new Sessions(in);
          return sessions
              .find(SecretHash.of(token))
              .flatMap(
                  session -> {
                    if (session.seenAt().isBefore(in.now().minus(BETWEEN_NOTES))) {
                      sessions.touch(session.token(), end(session.createdAt(), in.now()));
                    }
                    return new People(in).find(session.person());
                  })
              .filter(closed::isOpenTo)
              .map(person -> new Caller(person, Caller.Way.SESSION, Reach.WHOLE));
        });
  }

  private static Instant end(Instant begun, Instant now) {
    Instant idle = now.plus(IDLE_END);
    Instant latest = begun.plus(END);
    return idle.isBefore(latest) ? idle : latest;
  }

  /** Ends a session. */
  public void signOut(String token) {
    database.anonymous(
        in -> {
          new Sessions(in).end(SecretHash.of(token));
          return token;
        });
  }
}
