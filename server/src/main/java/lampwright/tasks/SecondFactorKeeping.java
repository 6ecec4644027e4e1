package lampwright.tasks;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.stream.Stream;
import lampwright.people.AuditAction;
import lampwright.people.AuditKind;
import lampwright.people.DeviceSecret;
import lampwright.people.Ids;
import lampwright.people.PersonId;
import lampwright.people.RecoveryCode;
import lampwright.people.Seal;
import lampwright.people.SecretHash;
import lampwright.store.AuditTrail;
import lampwright.store.Database;
import lampwright.store.People;
import lampwright.store.SecondFactors;
import lampwright.store.Sessions;
import lampwright.store.Transaction;

/**
 * A person's second factor: codes that a device of theirs makes, asked for at every sign-in beside
 * the password.
 */
public final class SecondFactorKeeping {

  /** A secret that was offered waits so long for its first code. */
  public static final Duration OFFER_LASTS = Duration.ofMinutes(15);

  private static final int RECOVERY_CODES = 10;

  private final Database database;
  private final Ids ids;
  private final FailedSignIns failures;
  private final PasswordProof passwords;
  private final CodeProof codes;
  private final Seal seal;

  public SecondFactorKeeping(
      Database database,
      Ids ids,
      Passwords passwords,
      FailedSignIns failures,
      Closed closed,
      Seal seal) {
    this.database = database;
    this.ids = ids;
    this.failures = failures;
    this.seal = seal;
    this.passwords = new PasswordProof(database, passwords, failures, closed);
    this.codes = new CodeProof(database, failures, seal);
  }

  /**
   * How it stands.
   *
   * @param since when it was switched on; empty where it is off
   * @param recoveryCodes how many are still good
   */
  public record Standing(Optional<Instant> since, int recoveryCodes) {}

  /**
   * A secret for a device to take.
   *
   * @param address the {@code otpauth} address of it
   */
  public record Offer(DeviceSecret secret, String address) {

    /** No record's text may carry a secret into a log. */
    @Override
    public String toString() {
      return "Offer";
    }
  }

  /**
   * It is on.
   *
   * @param recoveryCodes shown this once
   * @param session the next token of the session by which it was switched on
   */
  public record SwitchedOn(List<RecoveryCode> recoveryCodes, String session) {

    public SwitchedOn {
      recoveryCodes = List.copyOf(recoveryCodes);
    }

    /** No record's text may carry a secret into a log. */
    @Override
    public String toString() {
      return "SwitchedOn";
    }
  }

  /** The caller's own. */
  public Standing get(Caller caller) {
    PersonId person = caller.person().id();
    return database.anonymous(
        in -> {
          SecondFactors factors = new SecondFactors(in);
          return new Standing(
              factors.find(person).flatMap(SecondFactors.Kept::confirmedAt),
              factors.countRecoveryCodes(person));
        });
  }

  /** The offer that waits for its first code; empty where none does. */
  public Optional<Offer> findOffer(Caller caller) {
    return database
        .anonymous(in -> findOffer(in, caller))
        .flatMap(kept -> seal.open(caller.person().id(), kept.secret()))
        .map(secret -> offer(caller, secret));
  }

  private static Optional<SecondFactors.Kept> findOffer(Transaction in, Caller caller) {
    return new SecondFactors(in)
        .find(caller.person().id())
        .filter(kept -> !kept.isOn() && kept.offeredAt().plus(OFFER_LASTS).isAfter(in.now()));
  }

  private static Offer offer(Caller caller, DeviceSecret secret) {
    return new Offer(secret, secret.address(caller.person().email()));
  }

  /**
   * Offers a secret in place of one that was offered before. Nothing is asked for until {@link
   * #confirm}.
   *
   * @throws Refused Invalid where the password is wrong, Clash where it is on already
   */
  public Offer offer(Caller caller, String password, Visit visit) {
    passwords.proveAgain(caller, "/password", password, visit);
    DeviceSecret secret = ids.nextDeviceSecret();
    boolean offered =
        database.anonymous(
            in -> {
              PersonId person = caller.person().id();
              return new SecondFactors(in).offer(person, seal.seal(person, secret));
            });
    if (!offered) {
      throw new Refused(
          new Refusal.Clash("Your second factor is on already. Switch it off first."));
    }
    return offer(caller, secret);
  }

  /**
   * Switches it on: the device has taken the secret, as its first code shows. All other sessions
   * end, since nobody gave a code for them; this one goes on under another token.
   *
   * @param session the token of the session that they came with
   * @throws Refused Invalid where the code is wrong, Clash where nothing is offered, TooMany
   */
  public SwitchedOn confirm(Caller caller, String session, String code, Visit visit) {
    PersonId person = caller.person().id();
    FailedSignIns.Try tried = passwords.tried(caller.person().email(), visit);
    List<RecoveryCode> recovery = newRecoveryCodes();
    SecondFactors.Kept offered = database.eachByItself(in -> mustBeOffered(in, caller));
    OptionalLong step = stepOfOffered(caller, offered, code, tried);
    return database.anonymous(
        in -> {
          if (step.isEmpty()
              || !new SecondFactors(in)
                  .confirm(person, offered.offeredAt(), step.getAsLong(), hashes(recovery))) {
            throw wrongCode();
          }
          note(in, person, AuditAction.MADE);
          return new SwitchedOn(recovery, rotated(in, person, session));
        });
  }

  private static SecondFactors.Kept mustBeOffered(Transaction in, Caller caller) {
    return findOffer(in, caller)
        .orElseThrow(
            () ->
                new Refused(
                    new Refusal.Clash(
                        "No secret waits for its first code, or no longer. Begin again.")));
  }

  private OptionalLong stepOfOffered(
      Caller caller, SecondFactors.Kept offered, String code, FailedSignIns.Try tried) {
    failures.mustBeFewCodes(tried);
    OptionalLong step =
        seal.open(caller.person().id(), offered.secret())
            .map(secret -> secret.stepOf(code, database.now(), offered.lastStep()))
            .orElseGet(OptionalLong::empty);
    failures.judgeCode(tried, step.isPresent());
    return step;
  }

  /**
   * Switches it off. All other sessions go on; this one does under another token.
   *
   * @return that token
   * @throws Refused Invalid where password or code is wrong, Clash where it is off, TooMany
   */
  public String switchOff(
      Caller caller, String session, String password, String code, Visit visit) {
    PersonId person = caller.person().id();
    if (get(caller).since().isEmpty()) {
      throw new Refused(new Refusal.Clash("Your second factor is off already."));
    }
    FailedSignIns.Try tried = passwords.proveAgain(caller, "/password", password, visit).tried();
    CodeProof.Looked looked = codes.look(person, code, tried);
    return database.anonymous(
        in -> {
          if (!codes.use(in, looked)) {
            throw wrongCode();
          }
          new SecondFactors(in).end(person);
          note(in, person, AuditAction.REVOKED);
          String next = ids.nextSecret();
          if (!new Sessions(in).rotate(SecretHash.of(session), SecretHash.of(next))) {
            throw Refused.notSignedIn();
          }
          return next;
        });
  }

  /**
   * Makes new recovery codes; the old ones end. A recovery code will do as the code, so that
   * whoever lost the device and holds one code is not left with it alone.
   *
   * @return shown this once
   * @throws Refused Invalid where password or code is wrong, Clash where it is off, TooMany
   */
  public List<RecoveryCode> remakeRecoveryCodes(
      Caller caller, String password, String code, Visit visit) {
    PersonId person = caller.person().id();
    if (get(caller).since().isEmpty()) {
      throw new Refused(
          new Refusal.Clash("Your second factor is off, so there are no recovery codes."));
    }
    FailedSignIns.Try tried = passwords.proveAgain(caller, "/password", password, visit).tried();
    List<RecoveryCode> recovery = newRecoveryCodes();
    CodeProof.Looked looked = codes.look(person, code, tried);
    return database.anonymous(
        in -> {
          if (!codes.use(in, looked)) {
            throw wrongCode();
          }
          new SecondFactors(in).replace(person, hashes(recovery));
          new AuditTrail(in).note(person, AuditAction.MADE, AuditKind.RECOVERY_CODES, "", "");
          return recovery;
        });
  }

  private List<RecoveryCode> newRecoveryCodes() {
    return Stream.generate(ids::nextRecoveryCode).limit(RECOVERY_CODES).toList();
  }

  private static List<SecretHash> hashes(List<RecoveryCode> codes) {
    return codes.stream().map(RecoveryCode::hash).toList();
  }

  private String rotated(Transaction in, PersonId person, String session) {
    Sessions sessions = new Sessions(in);
    String next = ids.nextSecret();
    if (!sessions.rotate(SecretHash.of(session), SecretHash.of(next))) {
      throw Refused.notSignedIn();
    }
    sessions.endOthers(person, SecretHash.of(next));
    return next;
  }

  private static void note(Transaction in, PersonId person, AuditAction action) {
    new AuditTrail(in).note(person, action, AuditKind.SECOND_FACTOR, "", "");
  }

  private static Refused wrongCode() {
    return Refused.invalid(
        "/code", "Code is not the one of now, or was used before. Type the one that is shown now.");
  }

  /**
   * Switches off what a person lost who has neither device nor recovery codes left: for the keeper
   * of the server, who has made sure who asks. Ends their sessions.
   *
   * @return whether it was on
   * @throws Refused NotFound where nobody signs in by that address
   */
  public static boolean switchOffFor(Database database, String email) {
    return database.anonymous(
        in -> {
          PersonId person =
              new People(in)
                  .findByEmail(email.strip().toLowerCase(Locale.ROOT))
                  .orElseThrow(Refused::notFound)
                  .person()
                  .id();
          boolean was = new SecondFactors(in).end(person);
          note(in, person, AuditAction.REVOKED);
          new Sessions(in).list(person).forEach(one -> new Sessions(in).end(one.token()));
          return was;
        });
  }
}
