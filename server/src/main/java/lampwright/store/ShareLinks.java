package lampwright.store;

import static lampwright.schema.generated.Tables.SHARE_LINK;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import lampwright.people.PersonId;
import lampwright.people.SecretHash;
import lampwright.people.StudioId;
import lampwright.setup.SetupId;
import org.jooq.Condition;
import org.jooq.Record;

/** The links of the transaction's studio that show a setup to somebody outside. */
public final class ShareLinks {

  private final StudioTransaction in;

  public ShareLinks(StudioTransaction in) {
    this.in = in;
  }

  /** What a new one is of and shows. */
  public record Wanted(
      SetupId setup, int revision, boolean showsPictures, boolean showsPlace, Duration lasts) {}

  /** Keeps a new one of the transaction's person. */
  public ShareLink create(String id, SecretHash secret, Wanted wanted) {
    Instant expiresAt = in.now().plus(wanted.lasts());
    in.sql()
        .insertInto(SHARE_LINK)
        .set(SHARE_LINK.STUDIO_ID, in.studio().text())
        .set(SHARE_LINK.ID, id)
        .set(SHARE_LINK.TOKEN_HASH, secret.bytes())
        .set(SHARE_LINK.SETUP_ID, wanted.setup().text())
        .set(SHARE_LINK.REVISION, wanted.revision())
        .set(SHARE_LINK.SHOWS_PICTURES, wanted.showsPictures())
        .set(SHARE_LINK.SHOWS_PLACE, wanted.showsPlace())
        .set(SHARE_LINK.CREATED_AT, in.now())
        .set(SHARE_LINK.CREATED_BY, in.person().text())
        .set(SHARE_LINK.EXPIRES_AT, expiresAt)
        .execute();
    return new ShareLink(
        in.studio(),
        id,
        wanted.setup(),
        wanted.revision(),
        wanted.showsPictures(),
        wanted.showsPlace(),
        in.now(),
        in.person(),
        expiresAt,
        Optional.empty());
  }

  /** Those of a setup that have not ended, the newest first. */
  public List<ShareLink> list(SetupId setup) {
    return in.sql()
        .selectFrom(SHARE_LINK)
        .where(isOf(setup))
        .and(SHARE_LINK.EXPIRES_AT.gt(in.now()))
        .orderBy(SHARE_LINK.CREATED_AT.desc(), SHARE_LINK.ID)
        .fetch(ShareLinks::link);
  }

  /** One of a setup; empty where the setup has none of that id, or it has ended. */
  public Optional<ShareLink> find(SetupId setup, String id) {
    return in.sql()
        .selectFrom(SHARE_LINK)
        .where(isOf(setup))
        .and(SHARE_LINK.ID.eq(id))
        .and(SHARE_LINK.EXPIRES_AT.gt(in.now()))
        .fetchOptional(ShareLinks::link);
  }

  /** Withdraws one; says false where the setup has none of that id. */
  public boolean delete(SetupId setup, String id) {
    return in.sql().deleteFrom(SHARE_LINK).where(isOf(setup)).and(SHARE_LINK.ID.eq(id)).execute()
        == 1;
  }

  private Condition isOf(SetupId setup) {
    return SHARE_LINK.STUDIO_ID.eq(in.studio().text()).and(SHARE_LINK.SETUP_ID.eq(setup.text()));
  }

  /** The one whose secret the transaction holds, unless it has ended. */
  public static Optional<ShareLink> findHeld(AnonymousTransaction in, SecretHash secret) {
    return in.sql()
        .selectFrom(SHARE_LINK)
        .where(SHARE_LINK.TOKEN_HASH.eq(secret.bytes()))
        .and(SHARE_LINK.EXPIRES_AT.gt(in.now()))
        .fetchOptional(ShareLinks::link);
  }

  /** Notes that somebody followed one, where that was not noted lately. */
  public static void noteOpened(UpkeepTransaction in, String id, Duration lately) {
    in.sql()
        .update(SHARE_LINK)
        .set(SHARE_LINK.OPENED_AT, in.now())
        .where(SHARE_LINK.STUDIO_ID.eq(in.studio().text()))
        .and(SHARE_LINK.ID.eq(id))
        .and(SHARE_LINK.OPENED_AT.isNull().or(SHARE_LINK.OPENED_AT.lt(in.now().minus(lately))))
        .execute();
  }

  private static ShareLink link(Record found) {
    return new ShareLink(
        new StudioId(found.get(SHARE_LINK.STUDIO_ID)),
        found.get(SHARE_LINK.ID),
        new SetupId(found.get(SHARE_LINK.SETUP_ID)),
        found.get(SHARE_LINK.REVISION),
        found.get(SHARE_LINK.SHOWS_PICTURES),
        found.get(SHARE_LINK.SHOWS_PLACE),
        found.get(SHARE_LINK.CREATED_AT),
        new PersonId(found.get(SHARE_LINK.CREATED_BY)),
        found.get(SHARE_LINK.EXPIRES_AT),
        Optional.ofNullable(found.get(SHARE_LINK.OPENED_AT)));
  }
}
