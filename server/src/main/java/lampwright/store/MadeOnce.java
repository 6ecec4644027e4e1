package lampwright.store;

import static lampwright.schema.generated.Tables.MADE_ONCE;

import java.time.Duration;
import java.util.Optional;
import org.jooq.Condition;

/** What the person of a transaction made under keys of their own, in its studio. */
public final class MadeOnce {

  private final StudioTransaction in;

  public MadeOnce(StudioTransaction in) {
    this.in = in;
  }

  /**
   * What a key was taken for before.
   *
   * @param isSame whether the request was the same
   * @param id of what was made
   */
  public record Before(boolean isSame, String id) {}

  /**
   * Takes a key for what this transaction is about to make. Where another transaction is making
   * something under it, this waits for how that ends.
   *
   * @param fingerprint SHA-256 of the request, in hexadecimal digits
   * @param id of what is to be made
   * @param kept how long keys are remembered; older ones are forgotten
   * @return empty where the key is now taken for this
   */
  public Optional<Before> take(String key, String fingerprint, String id, Duration kept) {
    in.sql()
        .deleteFrom(MADE_ONCE)
        .where(isOwn())
        .and(MADE_ONCE.MADE_AT.lt(in.now().minus(kept)))
        .execute();
    int taken =
        in.sql()
            .insertInto(MADE_ONCE)
            .set(MADE_ONCE.STUDIO_ID, in.studio().text())
            .set(MADE_ONCE.PERSON_ID, in.person().text())
            .set(MADE_ONCE.KEY, key)
            .set(MADE_ONCE.FINGERPRINT, fingerprint)
            .set(MADE_ONCE.SUBJECT_ID, id)
            .set(MADE_ONCE.MADE_AT, in.now())
            .onConflictDoNothing()
            .execute();
    return taken == 1
        ? Optional.empty()
        : in.sql()
            .selectFrom(MADE_ONCE)
            .where(isOwn())
            .and(MADE_ONCE.KEY.eq(key))
            .fetchOptional(
                found ->
                    new Before(
                        found.get(MADE_ONCE.FINGERPRINT).equals(fingerprint),
                        found.get(MADE_ONCE.SUBJECT_ID)));
  }

  private Condition isOwn() {
    return MADE_ONCE
        .STUDIO_ID
        .eq(in.studio().text())
        .and(MADE_ONCE.PERSON_ID.eq(in.person().text()));
  }
}
