package lampwright.store;

import static lampwright.schema.generated.Tables.RECOVERY_CODE;
import static lampwright.schema.generated.Tables.SECOND_FACTOR;

import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lampwright.people.PersonId;
import lampwright.people.SealedSecret;
import lampwright.people.SecretHash;
import org.jooq.Record;

/** What people prove themselves by beside the password: a device's codes, and recovery codes. */
public final class SecondFactors {

  /**
   * A person's.
   *
   * @param secret as it is kept; the server's seal opens it
   * @param confirmedAt since when a code is asked for; empty while it is only offered
   * @param lastStep the step of the last code that was taken
   */
  public record Kept(
      SealedSecret secret, Instant offeredAt, Optional<Instant> confirmedAt, long lastStep) {

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
                    secret(found),
                    found.get(SECOND_FACTOR.CREATED_AT),
                    Optional.ofNullable(found.get(SECOND_FACTOR.CONFIRMED_AT)),
                    found.get(SECOND_FACTOR.LAST_STEP)));
  }

  private static SealedSecret secret(Record found) {
    return SealedSecret.of(
        found.get(SECOND_FACTOR.SECRET),
        Optional.ofNullable(found.get(SECOND_FACTOR.SEALED_UNDER)));
  }

  /** Those that lie open, by whose they are; held until the transaction ends. */
  public Map<PersonId, SealedSecret> holdOpen() {
    Map<PersonId, SealedSecret> open = new LinkedHashMap<>();
    in.sql()
        .select(SECOND_FACTOR.PERSON_ID, SECOND_FACTOR.SECRET, SECOND_FACTOR.SEALED_UNDER)
        .from(SECOND_FACTOR)
        .where(SECOND_FACTOR.SEALED_UNDER.isNull())
        .orderBy(SECOND_FACTOR.PERSON_ID)
        .forUpdate()
        .fetch()
        .forEach(row -> open.put(new PersonId(row.get(SECOND_FACTOR.PERSON_ID)), secret(row)));
    return open;
  }

  /** Keeps a secret in another way. */
  public void reseal(PersonId person, SealedSecret secret) {
    in.sql()
        .update(SECOND_FACTOR)
        .set(SECOND_FACTOR.SECRET, secret.bytes())
        .set(SECOND_FACTOR.SEALED_UNDER, secret.under().orElse(null))
        .where(SECOND_FACTOR.PERSON_ID.eq(person.text()))
        .execute();
  }

  /** How many are sealed under another key than this. */
  public int countSealedOtherwise(String key) {
    return in.sql().fetchCount(SECOND_FACTOR, SECOND_FACTOR.SEALED_UNDER.ne(key));
  }

  /** Whether a person owes a code beside the password. */
  public boolean isOn(PersonId person) {
    return find(person).filter(Kept::isOn).isPresent();
  }

  /** Offers a secret in place of one that was offered before; says false where one is on. */
  public boolean offer(PersonId person, SealedSecret secret) {
    in.sql()
        .deleteFrom(SECOND_FACTOR)
        .where(SECOND_FACTOR.PERSON_ID.eq(person.text()))
        .and(SECOND_FACTOR.CONFIRMED_AT.isNull())
        .execute();
    return in.sql()
            .insertInto(SECOND_FACTOR)
            .set(SECOND_FACTOR.PERSON_ID, person.text())
            .set(SECOND_FACTOR.SECRET, secret.bytes())
            .set(SECOND_FACTOR.SEALED_UNDER, secret.under().orElse(null))
            .set(SECOND_FACTOR.CREATED_AT, in.now())
            .onConflict(SECOND_FACTOR.PERSON_ID)
            .doNothing()
            .execute()
        == 1;
  }

  /**
   * From now on a code is asked for; says false where nothing is offered, or something else.
   *
   * @param offeredAt of the offer that the code was of
   */
  public boolean confirm(
      PersonId person, Instant offeredAt, long step, List<SecretHash> recoveryCodes) {
    int confirmed =
        in.sql()
            .update(SECOND_FACTOR)
            .set(SECOND_FACTOR.CONFIRMED_AT, in.now())
            .set(SECOND_FACTOR.LAST_STEP, step)
            .where(SECOND_FACTOR.PERSON_ID.eq(person.text()))
            .and(SECOND_FACTOR.CREATED_AT.eq(offeredAt))
            .and(SECOND_FACTOR.CONFIRMED_AT.isNull())
            .execute();
    if (confirmed == 1) {
      insert(person, recoveryCodes);
    }
    return confirmed == 1;
  }

  /** Puts new recovery codes in the place of those that there were. */
  public void replace(PersonId person, List<SecretHash> recoveryCodes) {
    // Of two who do so at once the later one's hold, and never both.
    in.sql()
        .select(SECOND_FACTOR.PERSON_ID)
        .from(SECOND_FACTOR)
        .where(SECOND_FACTOR.PERSON_ID.eq(person.text()))
        .forUpdate()
        .execute();
    in.sql().deleteFrom(RECOVERY_CODE).where(RECOVERY_CODE.PERSON_ID.eq(person.text())).execute();
    insert(person, recoveryCodes);
  }

  private void insert(PersonId person, List<SecretHash> recoveryCodes) {
    for (SecretHash code : recoveryCodes) {
      in.sql()
          .insertInto(RECOVERY_CODE)
          .set(RECOVERY_CODE.PERSON_ID, person.text())
          .set(RECOVERY_CODE.CODE_HASH, code.bytes())
          .execute();
    }
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
