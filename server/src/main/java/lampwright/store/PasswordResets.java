package lampwright.store;

import static lampwright.schema.generated.Tables.PASSWORD_RESET;

import java.time.Instant;
import java.util.Optional;
import lampwright.people.PersonId;
import lampwright.people.SecretHash;

/** The links by which people set a new password: one a person, each works once. */
public final class PasswordResets {

  /**
   * One link, without its secret.
   *
   * @param madeBy the owner who made it; empty where it is the server's keeper's
   */
  public record Reset(PersonId person, Optional<PersonId> madeBy, Instant expiresAt) {}

  private final Transaction in;

  public PasswordResets(Transaction in) {
    this.in = in;
  }

  /** Makes one, which takes the place of what the person had. */
  public void issue(
      PersonId person, SecretHash secret, Optional<PersonId> madeBy, Instant expiresAt) {
    String maker = madeBy.map(PersonId::text).orElse(null);
    in.sql()
        .insertInto(PASSWORD_RESET)
        .set(PASSWORD_RESET.PERSON_ID, person.text())
        .set(PASSWORD_RESET.TOKEN_HASH, secret.bytes())
        .set(PASSWORD_RESET.MADE_BY, maker)
        .set(PASSWORD_RESET.CREATED_AT, in.now())
        .set(PASSWORD_RESET.EXPIRES_AT, expiresAt)
        .onConflict(PASSWORD_RESET.PERSON_ID)
        .doUpdate()
        .set(PASSWORD_RESET.TOKEN_HASH, secret.bytes())
        .set(PASSWORD_RESET.MADE_BY, maker)
        .set(PASSWORD_RESET.CREATED_AT, in.now())
        .set(PASSWORD_RESET.EXPIRES_AT, expiresAt)
        .execute();
  }

  /** The link of a secret, unless it was used or has ended. */
  public Optional<Reset> find(SecretHash secret) {
    return in.sql()
        .selectFrom(PASSWORD_RESET)
        .where(PASSWORD_RESET.TOKEN_HASH.eq(secret.bytes()))
        .and(PASSWORD_RESET.EXPIRES_AT.gt(in.now()))
        .fetchOptional(
            found ->
                new Reset(
                    new PersonId(found.get(PASSWORD_RESET.PERSON_ID)),
                    Optional.ofNullable(found.get(PASSWORD_RESET.MADE_BY)).map(PersonId::new),
                    found.get(PASSWORD_RESET.EXPIRES_AT)));
  }

  /**
   * Uses a link up. Of several who try at once one is told true; it counts when the transaction is
   * kept.
   */
  public boolean consume(SecretHash secret) {
    return in.sql()
            .deleteFrom(PASSWORD_RESET)
            .where(PASSWORD_RESET.TOKEN_HASH.eq(secret.bytes()))
            .and(PASSWORD_RESET.EXPIRES_AT.gt(in.now()))
            .execute()
        == 1;
  }
}
