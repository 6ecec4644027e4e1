package lampwright.store;

import static lampwright.schema.generated.Tables.PERSON;
import static lampwright.schema.generated.Tables.TOKEN;
import static org.jooq.impl.DSL.val;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import lampwright.people.Person;
import lampwright.people.PersonId;
import lampwright.people.Reach;
import lampwright.people.Role;
import lampwright.people.SecretHash;
import lampwright.people.StudioId;
import org.jooq.Record;

/** The bearer tokens that people made for their programs, by the hash of the secret. */
public final class Tokens {

  /**
   * One token, without its secret.
   *
   * @param expiresAt when it ends; empty where it lasts until it is revoked
   */
  public record Token(
      String id,
      PersonId person,
      String name,
      Reach reach,
      Instant createdAt,
      Optional<Instant> expiresAt,
      Optional<Instant> lastUsedAt) {}

  private final Transaction in;

  public Tokens(Transaction in) {
    this.in = in;
  }

  /**
   * Lets nobody else make one for the person until the transaction ends, so that they count right.
   */
  public void hold(PersonId person) {
    in.sql().fetch("select pg_advisory_xact_lock(hashtextextended({0}, 25))", val(person.text()));
  }

  public Token create(
      PersonId person,
      String id,
      SecretHash secret,
      String name,
      Reach reach,
      Optional<Instant> expiresAt) {
    in.sql()
        .insertInto(TOKEN)
        .set(TOKEN.ID, id)
        .set(TOKEN.TOKEN_HASH, secret.bytes())
        .set(TOKEN.PERSON_ID, person.text())
        .set(TOKEN.NAME, name)
        .set(TOKEN.AT_MOST, reach.atMost().map(Role::word).orElse(null))
        .set(TOKEN.ONLY_STUDIO_ID, reach.only().map(StudioId::text).orElse(null))
        .set(TOKEN.CREATED_AT, in.now())
        .set(TOKEN.EXPIRES_AT, expiresAt.orElse(null))
        .execute();
    return new Token(id, person, name, reach, in.now(), expiresAt, Optional.empty());
  }

  /** The token of a secret, unless it has ended. */
  public Optional<Token> find(SecretHash secret) {
    return in.sql()
        .selectFrom(TOKEN)
        .where(TOKEN.TOKEN_HASH.eq(secret.bytes()))
        .and(TOKEN.EXPIRES_AT.isNull().or(TOKEN.EXPIRES_AT.gt(in.now())))
        .fetchOptional(Tokens::token);
  }

  /**
   * Who comes by a token.
   *
   * @param person who made it
   */
  public record Bearer(Token token, Person person) {}

  /** Who has a secret, in one round trip; empty where it has ended or its maker has gone. */
  public Optional<Bearer> findBearer(SecretHash secret) {
    return in.sql()
        .select(TOKEN.fields())
        .select(People.OF_A_PERSON)
        .from(TOKEN)
        .join(PERSON)
        .on(PERSON.ID.eq(TOKEN.PERSON_ID))
        .where(TOKEN.TOKEN_HASH.eq(secret.bytes()))
        .and(TOKEN.EXPIRES_AT.isNull().or(TOKEN.EXPIRES_AT.gt(in.now())))
        .and(PERSON.SIGNS_IN)
        .fetchOptional(found -> new Bearer(token(found), People.person(found)));
  }

  /** A person's tokens, the newest first. */
  public List<Token> list(PersonId person) {
    return in.sql()
        .selectFrom(TOKEN)
        .where(TOKEN.PERSON_ID.eq(person.text()))
        .orderBy(TOKEN.CREATED_AT.desc(), TOKEN.ID)
        .fetch(Tokens::token);
  }

  /** Notes that a token was used; says false where the person has no such token. */
  public boolean touch(PersonId person, String id) {
    return in.sql()
            .update(TOKEN)
            .set(TOKEN.LAST_USED_AT, in.now())
            .where(TOKEN.PERSON_ID.eq(person.text()))
            .and(TOKEN.ID.eq(id))
            .execute()
        == 1;
  }

  /** Says false where the person has no such token. */
  public boolean delete(PersonId person, String id) {
    return in.sql()
            .deleteFrom(TOKEN)
            .where(TOKEN.PERSON_ID.eq(person.text()))
            .and(TOKEN.ID.eq(id))
            .execute()
        == 1;
  }

  private static Token token(Record found) {
    return new Token(
        found.get(TOKEN.ID),
        new PersonId(found.get(TOKEN.PERSON_ID)),
        found.get(TOKEN.NAME),
        new Reach(
            Optional.ofNullable(found.get(TOKEN.AT_MOST)).map(Role::of),
            Optional.ofNullable(found.get(TOKEN.ONLY_STUDIO_ID)).map(StudioId::new)),
        found.get(TOKEN.CREATED_AT),
        Optional.ofNullable(found.get(TOKEN.EXPIRES_AT)),
        Optional.ofNullable(found.get(TOKEN.LAST_USED_AT)));
  }
}
