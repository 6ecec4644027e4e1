package lampwright.tasks;

import java.time.Instant;
import java.util.Optional;
import java.util.OptionalLong;
import lampwright.people.AuditAction;
import lampwright.people.AuditKind;
import lampwright.people.PersonId;
import lampwright.people.RecoveryCode;
import lampwright.people.Seal;
import lampwright.people.SecretHash;
import lampwright.store.AuditTrail;
import lampwright.store.Database;
import lampwright.store.SecondFactors;
import lampwright.store.Transaction;

/**
 * Whether somebody has a person's device, or one of their recovery codes; each code once. A code is
 * looked at and judged before the transaction that uses it up: what is refused stays good, and no
 * transaction is open while the failures are counted.
 */
final class CodeProof {

  private final Database database;
  private final FailedSignIns failures;
  private final Seal seal;

  CodeProof(Database database, FailedSignIns failures, Seal seal) {
    this.database = database;
    this.failures = failures;
    this.seal = seal;
  }

  /**
   * What a code is.
   *
   * @param step that it is of; empty where it is none of the device's
   * @param recovery the recovery code that it is; empty where it is none
   */
  record Looked(PersonId person, OptionalLong step, Optional<SecretHash> recovery) {

    boolean isGood() {
      return step.isPresent() || recovery.isPresent();
    }
  }

  /**
   * Looks at a code.
   *
   * @throws Refused when codes failed too often
   */
  Looked look(PersonId person, String code, FailedSignIns.Try tried) {
    failures.mustBeFewCodes(tried);
    Looked looked =
        database.eachByItself(
            in -> {
              SecondFactors factors = new SecondFactors(in);
              OptionalLong step =
                  factors
                      .find(person)
                      .map(kept -> step(person, kept, code, in.now()))
                      .orElseGet(OptionalLong::empty);
              SecretHash recovery = RecoveryCode.typed(code).hash();
              return new Looked(
                  person,
                  step,
                  step.isEmpty() && factors.isGood(person, recovery)
                      ? Optional.of(recovery)
                      : Optional.empty());
            });
    failures.judgeCode(tried, looked.isGood());
    return looked;
  }

  /** None where the secret is sealed under another key: recovery codes are good all the same. */
  private OptionalLong step(PersonId person, SecondFactors.Kept kept, String code, Instant now) {
    return seal.open(person, kept.secret())
        .map(secret -> secret.stepOf(code, now, kept.lastStep()))
        .orElseGet(OptionalLong::empty);
  }

  /** Uses it up; says whether it was right, and not used before. */
  boolean use(Transaction in, Looked looked) {
    SecondFactors factors = new SecondFactors(in);
    if (looked.step().isPresent()) {
      return factors.use(looked.person(), looked.step().getAsLong());
    }
    boolean used = looked.recovery().filter(code -> factors.use(looked.person(), code)).isPresent();
    if (used) {
      new AuditTrail(in).note(looked.person(), AuditAction.USED, AuditKind.RECOVERY_CODES, "", "");
    }
    return used;
  }
}
