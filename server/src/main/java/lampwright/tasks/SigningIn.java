package lampwright.tasks;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.function.Function;
import lampwright.people.AuditAction;
import lampwright.people.Ids;
import lampwright.people.Person;
import lampwright.people.PersonId;
import lampwright.people.Reach;
import lampwright.people.Seal;
import lampwright.people.SecretHash;
import lampwright.store.AnonymousTransaction;
import lampwright.store.AuditTrail;
import lampwright.store.Database;
import lampwright.store.KnownDevices;
import lampwright.store.People;
import lampwright.store.SecondFactors;
import lampwright.store.Sessions;

/**
 * Signing in by e-mail and password, and by a code where the person has a second factor, and the
 * sessions that come of it.
 */
public final class SigningIn {

  /** A session that nobody uses ends after this. */
  public static final Duration IDLE_END = Duration.ofDays(14);

  /** Every session ends after this. */
  public static final Duration END = Duration.ofDays(60);

  /** A session waits so long for its code. */
  public static final Duration CODE_WAIT = Duration.ofMinutes(5);

  /** A browser is known for so long after its last sign-in. */
  public static final Duration BROWSER_KNOWN = Duration.ofDays(180);

  private static final Duration BETWEEN_NOTES = Duration.ofMinutes(10);

  private final Database database;
  private final Ids ids;
  private final FailedSignIns failures;
  private final Closed closed;
  private final PasswordProof passwords;
  private final CodeProof codes;

  public SigningIn(
      Database database,
      Ids ids,
      Passwords passwords,
      FailedSignIns failures,
      Closed closed,
      Seal seal) {
    this.database = database;
    this.ids = ids;
    this.failures = failures;
    this.closed = closed;
    this.passwords = new PasswordProof(database, passwords, failures, closed);
    this.codes = new CodeProof(database, failures, seal);
  }

  /**
   * A session that has just begun.
   *
   * @param token what the browser sends; only its hash is kept
   * @param lifetime how long it can last at most
   * @param waitsForCode whether it lets nobody in before {@link #giveCode}
   * @param knownBy what the browser is to keep, to be known by the next time; empty for none
   */
  public record Session(
      String token,
      Person person,
      Instant expiresAt,
      Duration lifetime,
      boolean waitsForCode,
      Optional<String> knownBy) {

    /** No record's text may carry a secret into a log. */
    @Override
    public String toString() {
      return "Session[" + person + "]";
    }
  }

  /**
   * Signs a person in who sits at a browser; whoever has a second factor still owes the code. The
   * session that the browser came with ends: nobody is led into one that a stranger put there.
   *
   * @throws Refused when e-mail and password do not belong together, or it failed too often
   */
  public Session signIn(String email, String password, Visit visit) {
    PasswordProof.Proven proven = passwords.prove(email, password, visit);
    Person person = proven.person();
    return database.anonymous(
        in ->
            new SecondFactors(in).isOn(person.id())
                ? beginWaiting(in, person, visit)
                : letIn(in, person, visit, proven.tried(), true));
  }

  /**
   * Signs a person in who sends all there is at once, as a program does.
   *
   * @param code of their second factor; empty for who has none
   * @throws Refused as {@link #signIn(String, String, Visit)}; CodeNeeded where the code is empty
   *     and WrongCode where it is wrong, both only after the right password
   */
  public Session signIn(String email, String password, Optional<String> code, Visit visit) {
    PasswordProof.Proven proven = passwords.prove(email, password, visit);
    Person person = proven.person();
    Optional<CodeProof.Looked> looked =
        database.<Boolean>eachByItself(in -> new SecondFactors(in).isOn(person.id()))
            ? Optional.of(
                codes.look(
                    person.id(),
                    code.orElseThrow(() -> new Refused(new Refusal.CodeNeeded())),
                    proven.tried()))
            : Optional.empty();
    return noting(
        person,
        in -> {
          // Asked again, since it may have been switched on meanwhile.
          if (new SecondFactors(in).isOn(person.id())
              && looked.filter(one -> codes.use(in, one)).isEmpty()) {
            throw new Refused(new Refusal.WrongCode());
          }
          return letIn(in, person, visit, proven.tried(), false);
        });
  }

  /** Whether a session waits for its code. */
  public boolean isWaiting(String token) {
    return database.anonymous(in -> new Sessions(in).findWaiting(SecretHash.of(token))).isPresent();
  }

  /**
   * Lets a session in that waited, under a new token.
   *
   * @throws Refused NotSignedIn where it waits no more, WrongCode, or TooMany
   */
  public Session giveCode(String token, String code, Visit visit) {
    SecretHash waiting = SecretHash.of(token);
    Person person =
        database
            .anonymous(
                in ->
                    new Sessions(in)
                        .findWaiting(waiting)
                        .flatMap(session -> new People(in).find(session.person())))
            .filter(closed::isOpenTo)
            .orElseThrow(Refused::notSignedIn);
    FailedSignIns.Try tried = passwords.tried(person.email(), visit);
    CodeProof.Looked looked = codes.look(person.id(), code, tried);
    return noting(
        person,
        in -> {
          if (!codes.use(in, looked)) {
            throw new Refused(new Refusal.WrongCode());
          }
          String next = ids.nextSecret();
          Instant expiresAt = in.now().plus(IDLE_END);
          if (!new Sessions(in).admit(waiting, SecretHash.of(next), expiresAt)) {
            throw Refused.notSignedIn();
          }
          failures.forgive(in, tried);
          new AuditTrail(in).noteSignIn(person.id(), tried.knownBrowser().isEmpty());
          return new Session(
              next, person, expiresAt, END, false, Optional.of(known(in, person.id(), visit)));
        });
  }

  /** A wrong code is noted when its own transaction is over, which leaves no trace. */
  private Session noting(Person person, Function<AnonymousTransaction, Session> work) {
    try {
      return database.anonymous(work);
    } catch (Refused refused) {
      if (refused.refusal() instanceof Refusal.WrongCode) {
        passwords.noteFailure(Optional.of(person.id()));
      }
      throw refused;
    }
  }

  /**
   * Begins a session for a person who has proved by a link who they are. A link is no second
   * factor: whoever has one still owes the code.
   */
  Session begin(Person person) {
    Visit visit = Visit.from("");
    return database.anonymous(
        in -> {
          if (new SecondFactors(in).isOn(person.id())) {
            return beginWaiting(in, person, visit);
          }
          new AuditTrail(in).noteSignIn(person.id(), false);
          return begin(in, person, visit, Optional.empty());
        });
  }

  private Session letIn(
      AnonymousTransaction in,
      Person person,
      Visit visit,
      FailedSignIns.Try tried,
      boolean inBrowser) {
    failures.forgive(in, tried);
    new AuditTrail(in).noteSignIn(person.id(), inBrowser && tried.knownBrowser().isEmpty());
    return begin(
        in,
        person,
        visit,
        inBrowser ? Optional.of(known(in, person.id(), visit)) : Optional.empty());
  }

  private Session begin(
      AnonymousTransaction in, Person person, Visit visit, Optional<String> knownBy) {
    String token = ids.nextSecret();
    Sessions sessions = tidied(in, visit);
    Instant expiresAt = in.now().plus(IDLE_END);
    sessions.begin(ids.next(), person.id(), SecretHash.of(token), visit.device(), expiresAt);
    return new Session(token, person, expiresAt, END, false, knownBy);
  }

  private Session beginWaiting(AnonymousTransaction in, Person person, Visit visit) {
    String token = ids.nextSecret();
    Sessions sessions = tidied(in, visit);
    Instant expiresAt = in.now().plus(CODE_WAIT);
    sessions.beginWaiting(ids.next(), person.id(), SecretHash.of(token), visit.device(), expiresAt);
    return new Session(token, person, expiresAt, CODE_WAIT, true, Optional.empty());
  }

  private static Sessions tidied(AnonymousTransaction in, Visit visit) {
    Sessions sessions = new Sessions(in);
    sessions.forgetExpired();
    visit.cameWith().map(SecretHash::of).ifPresent(sessions::end);
    return sessions;
  }

  /** One browser can be known by several people; a secret that we did not make is never taken. */
  private String known(AnonymousTransaction in, PersonId person, Visit visit) {
    KnownDevices devices = new KnownDevices(in);
    String secret =
        visit
            .knownBy()
            .filter(shown -> devices.isKnown(SecretHash.of(shown)))
            .orElseGet(ids::nextSecret);
    devices.note(person, SecretHash.of(secret), in.now().plus(BROWSER_KNOWN));
    return secret;
  }

  /** Who a session's token belongs to; empty where the session has ended or waits for a code. */
  public Optional<Caller> find(String token) {
    return database.eachByItself(
        in -> {
          Optional<Sessions.SignedIn> found = new Sessions(in).findSignedIn(SecretHash.of(token));
          found
              .map(Sessions.SignedIn::session)
              .ifPresent(
                  session -> note(in, session.token(), session.createdAt(), session.seenAt()));
          return found
              .map(Sessions.SignedIn::person)
              .filter(closed::isOpenTo)
              .map(person -> new Caller(person, Caller.Way.SESSION, Reach.WHOLE));
        });
  }

  /** Notes a use, not every one: a note a request would make reading as dear as writing. */
  static void note(AnonymousTransaction in, SecretHash token, Instant begun, Instant noted) {
    if (noted.isBefore(in.now().minus(BETWEEN_NOTES))) {
      new Sessions(in).touch(token, end(begun, in.now()));
    }
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
          Sessions sessions = new Sessions(in);
          SecretHash hash = SecretHash.of(token);
          sessions
              .find(hash)
              .ifPresent(
                  session -> new AuditTrail(in).note(session.person(), AuditAction.SIGNED_OUT));
          sessions.end(hash);
          return token;
        });
  }
}
