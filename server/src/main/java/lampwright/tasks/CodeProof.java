package lampwright.tasks;

import java.util.Optional;
import java.util.OptionalLong;
import lampwright.people.PersonId;
import lampwright.people.RecoveryCode;
import lampwright.people.SecretHash;
import lampwright.store.SecondFactors;
import lampwright.store.Transaction;

/** Whether somebody has a person's device, or one of their recovery codes; each code once. */
final class CodeProof {

  private final FailedSignIns failures;

  CodeProof(FailedSignIns failures) {
    this.failures = failures;
  }

  /**
   * Uses a code up.
   *
   * @return whether it was right, and not used before
   * @throws Refused when codes failed too often
   */
  boolean isRight(Transaction in, PersonId person, String code, FailedSignIns.Try tried) {
    failures.mustBeFewCodes(tried);
    SecondFactors factors = new SecondFactors(in);
    Optional<SecondFactors.Kept> kept = factors.find(person);
    OptionalLong step =
        kept.map(factor -> factor.secret().stepOf(code, in.now(), factor.lastStep()))
            .orElseGet(OptionalLong::empty);
    SecretHash recovery = RecoveryCode.typed(code).hash();
    boolean good = step.isPresent() || factors.isGood(person, recovery);
    // Judged before it is used up: what is refused now stays good.
    failures.judgeCode(tried, good);
    return good
        && (step.isPresent()
            ? factors.use(person, step.getAsLong())
            : factors.use(person, recovery));
  }
}
