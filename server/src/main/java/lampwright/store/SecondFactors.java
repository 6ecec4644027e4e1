package lampwright.store;

import static lampwright.schema.generated.Tables.RECOVERY_CODE;
import static lampwright.schema.generated.Tables.SECOND_FACTOR;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import lampwright.people.DeviceSecret;
import lampwright.people.PersonId;
import lampwright.people.SecretHash;

/** What people prove themselves by beside the password: a device's codes, and recovery codes. */
public final class SecondFactors {

  /**
   * A person's.
   *
   * @param confirmedAt since when a code is asked for; empty while it is only offered
   * @param lastStep the step of the last code that was taken
   */
  public record Kept(
      DeviceSecret secret, Instant offeredAt, Optional<Instant> confirmedAt, long lastStep) {

    public boolean isOn() {
      return confirmedAt.isPresent();
    }
  }

  private final Transaction in;

  public SecondFactors(Transaction in) {
    this.in = in;
  }

  public Optional<Kept> find(PersonId person) {
    return in.sql()
        .selectFrom(SECOND_FACTOR)
        .where(SECOND_FACTOR.PERSON_ID.eq(person.text()))
        .fetchOptional(
            found ->
                new Kept(
                    DeviceSecret.of(found.get(SECOND_FACTOR.SECRET)),
                    found.get(SECOND_FACTOR.CREATED_AT),
                    Optional.ofNullable(found.get(SECOND_FACTOR.CONFIRMED_AT)),
                    found.get(SECOND_FACTOR.LAST_STEP)));
  }

  /** Whether a person owes a code beside the password. */
  public boolean isOn(PersonId person) {
    return find(person).filter(Kept::isOn).isPresent();
  }

  /** Offers a secret in place of one that was offered before; says false where one is on. */
  public boolean offer(PersonId person, DeviceSecret secret) {
    in.sql()
        .deleteFrom(SECOND_FACTOR)
        .where(SECOND_FACTOR.PERSON_ID.eq(person.text()))
        .and(SECOND_FACTOR.CONFIRMED_AT.isNull())
        .execute();
    return in.sql()
            .insertInto(SECOND_FACTOR)
            .set(SECOND_FACTOR.PERSON_ID, person.text())
            .set(SECOND_FACTOR.SECRET, secret.bytes())
            .set(SECOND_FACTOR.CREATED_AT, in.now())
            .onConflict(SECOND_FACTOR.PERSON_ID)
            .doNothing()
            .execute()
        == 1;
  }

  /** From now on a code is asked for; says false where nothing is offered. */
  public boolean confirm(PersonId person, long step, List<SecretHash> recoveryCodes) {
    int confirmed =
        in.sql()
            .update(SECOND_FACTOR)
            .set(SECOND_FACTOR.CONFIRMED_AT, in.now())
            .set(SECOND_FACTOR.LAST_STEP, step)
            .where(SECOND_FACTOR.PERSON_ID.eq(person.text()))
            .and(SECOND_FACTOR.CONFIRMED_AT.isNull())
            .execute();
    if (confirmed == 1) {
      for (SecretHash code : recoveryCodes) {
        in.sql()
            .insertInto(RECOVERY_CODE)
            .set(RECOVERY_CODE.PERSON_ID, person.text())
            .set(RECOVERY_CODE.CODE_HASH, code.bytes())
            .execute();
      }
    }
    return confirmed == 1;
  }

  /** Uses a code of a step up; of several who try at once one is told true. */
  public boolean use(PersonId person, long step) {
    return in.sql()
            .update(SECOND_FACTOR)
            .set(SECOND_FACTOR.LAST_STEP, step)
            .where(SECOND_FACTOR.PERSON_ID.eq(person.text()))
            .and(SECOND_FACTOR.LAST_STEP.lt(step))
            .execute()
        == 1;
  }

  /** Whether a recovery code is a person's and still good. */
  public boolean isGood(PersonId person, SecretHash code) {
    return in.sql()
        .fetchExists(
            RECOVERY_CODE,
            RECOVERY_CODE
                .PERSON_ID
                .eq(person.text())
                .and(RECOVERY_CODE.CODE_HASH.eq(code.bytes())));
  }

  /** Uses a recovery code up; of several who try at once one is told true. */
  public boolean use(PersonId person, SecretHash code) {
    return in.sql()
            .deleteFrom(RECOVERY_CODE)
            .where(RECOVERY_CODE.PERSON_ID.eq(person.text()))
            .and(RECOVERY_CODE.CODE_HASH.eq(code.bytes()))
            .execute()
        == 1;
  }

  /** How many recovery codes are still good. */
  public int countRecoveryCodes(PersonId person) {
    return in.sql().fetchCount(RECOVERY_CODE, RECOVERY_CODE.PERSON_ID.eq(person.text()));
  }

  /** Asks for no code any more; says false where none was asked for or offered. */
  public boolean end(PersonId person) {
    return in.sql()
            .deleteFrom(SECOND_FACTOR)
            .where(SECOND_FACTOR.PERSON_ID.eq(person.text()))
            .execute()
        == 1;
  }
}
