package lampwright.store;

import static lampwright.schema.generated.Tables.FIRST_START_LINK;

import java.time.Instant;
import lampwright.people.SecretHash;

/** The links by which the first owner of a new server signs up. Each works once. */
public final class FirstStartLinks {

  private final AnonymousTransaction in;

  public FirstStartLinks(AnonymousTransaction in) {
    this.in = in;
  }

  /** Makes a link work until then; says false where it was issued before. */
  public boolean issue(SecretHash secret, Instant expiresAt) {
    return in.sql()
            .insertInto(FIRST_START_LINK)
            .set(FIRST_START_LINK.TOKEN_HASH, secret.bytes())
            .set(FIRST_START_LINK.CREATED_AT, in.now())
            .set(FIRST_START_LINK.EXPIRES_AT, expiresAt)
            .onConflict(FIRST_START_LINK.TOKEN_HASH)
            .doNothing()
            .execute()
        == 1;
  }

  /** Whether a link would work now; does not use it up. */
  public boolean isValid(SecretHash secret) {
    return in.sql()
        .fetchExists(
            FIRST_START_LINK,
            FIRST_START_LINK
                .TOKEN_HASH
                .eq(secret.bytes())
                .and(FIRST_START_LINK.USED_AT.isNull())
                .and(FIRST_START_LINK.EXPIRES_AT.gt(in.now())));
  }

  /**
   * Uses a link up. Of several who try at once one is told true; it counts when the transaction is
   * kept.
   */
  public boolean consume(SecretHash secret) {
    return in.sql()
            .update(FIRST_START_LINK)
            .set(FIRST_START_LINK.USED_AT, in.now())
            .where(FIRST_START_LINK.TOKEN_HASH.eq(secret.bytes()))
            .and(FIRST_START_LINK.USED_AT.isNull())
            .and(FIRST_START_LINK.EXPIRES_AT.gt(in.now()))
            .execute()
        == 1;
  }
}
