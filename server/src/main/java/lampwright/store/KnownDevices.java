package lampwright.store;

import static lampwright.schema.generated.Tables.KNOWN_DEVICE;
import static lampwright.schema.generated.Tables.PERSON;

import java.time.Instant;
import java.util.Locale;
import lampwright.people.PersonId;
import lampwright.people.SecretHash;

/** The browsers in which people have signed in before, by the hash of a secret each keeps. */
public final class KnownDevices {

  private static final int MOST = 20;

  private final Transaction in;

  public KnownDevices(Transaction in) {
    this.in = in;
  }

  /** Whether somebody of that address has signed in there; takes as long for an unknown one. */
  public boolean isKnown(String email, SecretHash device) {
    return in.sql()
        .fetchExists(
            KNOWN_DEVICE.join(PERSON).on(PERSON.ID.eq(KNOWN_DEVICE.PERSON_ID)),
            PERSON
                .EMAIL
                .eq(email.toLowerCase(Locale.ROOT))
                .and(KNOWN_DEVICE.SECRET_HASH.eq(device.bytes()))
                .and(KNOWN_DEVICE.EXPIRES_AT.gt(in.now())));
  }

  /** Whether anybody has signed in there. */
  public boolean isKnown(SecretHash device) {
    return in.sql()
        .fetchExists(
            KNOWN_DEVICE,
            KNOWN_DEVICE.SECRET_HASH.eq(device.bytes()).and(KNOWN_DEVICE.EXPIRES_AT.gt(in.now())));
  }

  /** Notes that a person signed in there; of a person's, those last used are kept. */
  public void note(PersonId person, SecretHash device, Instant expiresAt) {
    in.sql().deleteFrom(KNOWN_DEVICE).where(KNOWN_DEVICE.EXPIRES_AT.le(in.now())).execute();
    in.sql()
        .insertInto(KNOWN_DEVICE)
        .set(KNOWN_DEVICE.PERSON_ID, person.text())
        .set(KNOWN_DEVICE.SECRET_HASH, device.bytes())
        .set(KNOWN_DEVICE.SEEN_AT, in.now())
        .set(KNOWN_DEVICE.EXPIRES_AT, expiresAt)
        .onConflict(KNOWN_DEVICE.PERSON_ID, KNOWN_DEVICE.SECRET_HASH)
        .doUpdate()
        .set(KNOWN_DEVICE.SEEN_AT, in.now())
        .set(KNOWN_DEVICE.EXPIRES_AT, expiresAt)
        .execute();
    in.sql()
        .deleteFrom(KNOWN_DEVICE)
        .where(KNOWN_DEVICE.PERSON_ID.eq(person.text()))
        .and(
            KNOWN_DEVICE.SECRET_HASH.notIn(
                in.sql()
                    .select(KNOWN_DEVICE.SECRET_HASH)
                    .from(KNOWN_DEVICE)
                    .where(KNOWN_DEVICE.PERSON_ID.eq(person.text()))
                    .orderBy(KNOWN_DEVICE.SEEN_AT.desc())
                    .limit(MOST)))
        .execute();
  }

  /** Forgets a person's. */
  public void forget(PersonId person) {
    in.sql().deleteFrom(KNOWN_DEVICE).where(KNOWN_DEVICE.PERSON_ID.eq(person.text())).execute();
  }
}
