package lampwright.store;

import static lampwright.schema.generated.Tables.PERSON;
import static lampwright.schema.generated.Tables.SESSION;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import lampwright.people.Person;
import lampwright.people.PersonId;
import lampwright.people.SecretHash;
import org.jooq.Record;

/** Who is signed in, by the hash of the session's secret. */
public final class Sessions {

  /**
   * One session.
   *
   * @param id tells it from the person's others, and opens nothing
   * @param device what it began on, as the browser called itself
   */
  public record Session(
      String id,
      SecretHash token,
      PersonId person,
      String device,
      Instant createdAt,
      Instant seenAt,
      Instant expiresAt) {}

  private final Transaction in;

  public Sessions(Transaction in) {
    this.in = in;
  }

  public Session begin(
      String id, PersonId person, SecretHash token, String device, Instant expiresAt) {
    in.sql()
        .insertInto(SESSION)
        .set(SESSION.ID, id)
        .set(SESSION.DEVICE, device)
        .set(SESSION.TOKEN_HASH, token.bytes())
        .set(SESSION.PERSON_ID, person.text())
        .set(SESSION.CREATED_AT, in.now())
        .set(SESSION.SEEN_AT, in.now())
        .set(SESSION.EXPIRES_AT, expiresAt)
        .execute();
    return new Session(id, token, person, device, in.now(), in.now(), expiresAt);
  }

  /** Begins one that lets nobody in before {@link #admit} was told that the code is right. */
  public void beginWaiting(
      String id, PersonId person, SecretHash token, String device, Instant expiresAt) {
    begin(id, person, token, device, expiresAt);
    in.sql()
        .update(SESSION)
        .set(SESSION.WAITS_FOR_CODE, true)
        .where(SESSION.TOKEN_HASH.eq(token.bytes()))
        .execute();
  }

  /** The session of a secret, unless it has ended, expired or waits for a code. */
  public Optional<Session> find(SecretHash token) {
    return find(token, false);
  }

  /** Who is signed in by a session. */
  public record SignedIn(Session session, Person person) {}

  /** Who is signed in by a secret, in one round trip; empty as {@link #find} is. */
  public Optional<SignedIn> findSignedIn(SecretHash token) {
    return in.sql()
        .select(SESSION.fields())
        .select(People.OF_A_PERSON)
        .from(SESSION)
        .join(PERSON)
        .on(PERSON.ID.eq(SESSION.PERSON_ID))
        .where(SESSION.TOKEN_HASH.eq(token.bytes()))
        .and(SESSION.EXPIRES_AT.gt(in.now()))
        .andNot(SESSION.WAITS_FOR_CODE)
        .and(PERSON.SIGNS_IN)
        .fetchOptional(found -> new SignedIn(session(found), People.person(found)));
  }

  /** The session of a secret that waits for a code, unless it has expired. */
  public Optional<Session> findWaiting(SecretHash token) {
    return find(token, true);
  }

  private Optional<Session> find(SecretHash token, boolean waits) {
    return in.sql()
        .selectFrom(SESSION)
        .where(SESSION.TOKEN_HASH.eq(token.bytes()))
        .and(SESSION.EXPIRES_AT.gt(in.now()))
        .and(SESSION.WAITS_FOR_CODE.eq(waits))
        .fetchOptional(Sessions::session);
  }

  /** Lets a session in that waited, under a new secret; says false where it waits no more. */
  public boolean admit(SecretHash waiting, SecretHash token, Instant expiresAt) {
    return in.sql()
            .update(SESSION)
            .set(SESSION.TOKEN_HASH, token.bytes())
            .set(SESSION.WAITS_FOR_CODE, false)
            .set(SESSION.SEEN_AT, in.now())
            .set(SESSION.EXPIRES_AT, expiresAt)
            .where(SESSION.TOKEN_HASH.eq(waiting.bytes()))
            .and(SESSION.WAITS_FOR_CODE)
            .execute()
        == 1;
  }

  /** Goes on under a new secret, for as long as it would have; says false where it has ended. */
  public boolean rotate(SecretHash old, SecretHash token) {
    return in.sql()
            .update(SESSION)
            .set(SESSION.TOKEN_HASH, token.bytes())
            .where(SESSION.TOKEN_HASH.eq(old.bytes()))
            .andNot(SESSION.WAITS_FOR_CODE)
            .execute()
        == 1;
  }

  /** Those of a person that let in and have not expired, the last used first. */
  public List<Session> list(PersonId person) {
    return in.sql()
        .selectFrom(SESSION)
        .where(SESSION.PERSON_ID.eq(person.text()))
        .and(SESSION.EXPIRES_AT.gt(in.now()))
        .andNot(SESSION.WAITS_FOR_CODE)
        .orderBy(SESSION.SEEN_AT.desc())
        .fetch(Sessions::session);
  }

  /** Notes that a session was used, and until when it now lasts; says false where it has ended. */
  public boolean touch(SecretHash token, Instant expiresAt) {
    return in.sql()
            .update(SESSION)
            .set(SESSION.SEEN_AT, in.now())
            .set(SESSION.EXPIRES_AT, expiresAt)
            .where(SESSION.TOKEN_HASH.eq(token.bytes()))
            .execute()
        == 1;
  }

  /** Says false where it had ended before. */
  public boolean end(SecretHash token) {
    return in.sql().deleteFrom(SESSION).where(SESSION.TOKEN_HASH.eq(token.bytes())).execute() == 1;
  }

  /** Ends one of a person's; says false where they have none of that id. */
  public boolean end(PersonId person, String id) {
    return in.sql()
            .deleteFrom(SESSION)
            .where(SESSION.PERSON_ID.eq(person.text()))
            .and(SESSION.ID.eq(id))
            .execute()
        == 1;
  }

  /** Signs a person out everywhere else, as after a change of password; says how often. */
  public int endOthers(PersonId person, SecretHash kept) {
    return in.sql()
        .deleteFrom(SESSION)
        .where(SESSION.PERSON_ID.eq(person.text()))
        .and(SESSION.TOKEN_HASH.ne(kept.bytes()))
        .execute();
  }

  /** Signs a person out everywhere, as after a new password by a link; says how often. */
  public int endAll(PersonId person) {
    return in.sql().deleteFrom(SESSION).where(SESSION.PERSON_ID.eq(person.text())).execute();
  }

  /** Forgets what has expired; says how many. */
  public int forgetExpired() {
    return in.sql().deleteFrom(SESSION).where(SESSION.EXPIRES_AT.le(in.now())).execute();
  }

  private static Session session(Record found) {
    return new Session(
        found.get(SESSION.ID),
        SecretHash.of(found.get(SESSION.TOKEN_HASH)),
        new PersonId(found.get(SESSION.PERSON_ID)),
        found.get(SESSION.DEVICE),
        found.get(SESSION.CREATED_AT),
        found.get(SESSION.SEEN_AT),
        found.get(SESSION.EXPIRES_AT));
  }
}
