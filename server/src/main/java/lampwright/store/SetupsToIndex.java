package lampwright.store;

import static lampwright.schema.generated.Tables.CHANGE_LOG;
import static lampwright.schema.generated.Tables.LOCATION;
import static lampwright.schema.generated.Tables.LOCATION_REVISION;
import static lampwright.schema.generated.Tables.PICTURE;
import static lampwright.schema.generated.Tables.PICTURE_REVISION;
import static lampwright.schema.generated.Tables.SETUP;
import static org.jooq.impl.DSL.exists;
import static org.jooq.impl.DSL.inline;
import static org.jooq.impl.DSL.jsonbGetAttribute;
import static org.jooq.impl.DSL.selectOne;

import lampwright.place.LocationId;
import lampwright.setup.PictureId;
import lampwright.setup.PictureKind;
import org.jooq.Condition;
import org.jooq.Field;
import org.jooq.JSONB;
import org.jooq.impl.DSL;

/**
 * Tells the change log of setups that are as they were, but of which something has changed that is
 * indexed with them ({@link Beside}). It names the revision that each setup has: nothing of the
 * setup's history is told by it.
 */
final class SetupsToIndex {

  private final StudioTransaction in;

  SetupsToIndex(StudioTransaction in) {
    this.in = in;
  }

  /**
   * Tells of the setup of a picture whose last revision has just been written, where the picture is
   * or was a finished one. It may be of another kind now, so both of its last revisions count.
   */
  void becauseOf(PictureId picture) {
    Condition isOfSetup =
        PICTURE
            .STUDIO_ID
            .eq(in.studio().text())
            .and(PICTURE.ID.eq(picture.text()))
            .and(PICTURE.SETUP_ID.eq(SETUP.ID));
    Condition isOneOfTheLast =
        PICTURE_REVISION
            .STUDIO_ID
            .eq(PICTURE.STUDIO_ID)
            .and(PICTURE_REVISION.PICTURE_ID.eq(PICTURE.ID))
            .and(PICTURE_REVISION.REVISION.ge(PICTURE.REVISION.minus(inline(1))));
    tell(
        exists(
            selectOne()
                .from(PICTURE)
                .join(PICTURE_REVISION)
                .on(isOneOfTheLast)
                .where(isOfSetup)
                .and(PICTURE_REVISION.KIND.eq(PictureKind.FINAL.word()))));
  }

  /**
   * Tells of the setups at a location whose last revision has just been written, where it is
   * somewhere else than before, or has gone or come back. All else of a location is not indexed.
   */
  void becauseOf(LocationId location) {
    Condition isBefore =
        LOCATION_REVISION
            .STUDIO_ID
            .eq(LOCATION.STUDIO_ID)
            .and(LOCATION_REVISION.LOCATION_ID.eq(LOCATION.ID))
            .and(LOCATION_REVISION.REVISION.eq(LOCATION.REVISION.minus(inline(1))));
    Condition isElsewhere =
        DSL.condition(LOCATION_REVISION.DELETED)
            .or(LOCATION.DELETED_AT.isNotNull())
            .or(differs("latitude_deg"))
            .or(differs("longitude_deg"));
    tell(
        SETUP
            .LOCATION_ID
            .eq(location.text())
            .and(
                exists(
                    selectOne()
                        .from(LOCATION)
                        .join(LOCATION_REVISION)
                        .on(isBefore)
                        .where(LOCATION.STUDIO_ID.eq(in.studio().text()))
                        .and(LOCATION.ID.eq(location.text()))
                        .and(isElsewhere))));
  }

  private static Condition differs(String name) {
    Field<JSONB> before = jsonbGetAttribute(LOCATION_REVISION.DOCUMENT, inline(name));
    return before.isDistinctFrom(jsonbGetAttribute(LOCATION.DOCUMENT, inline(name)));
  }

  private void tell(Condition which) {
    int lines =
        in.sql()
            .insertInto(CHANGE_LOG)
            .columns(
                CHANGE_LOG.STUDIO_ID,
                CHANGE_LOG.KIND,
                CHANGE_LOG.SUBJECT_ID,
                CHANGE_LOG.REVISION,
                CHANGE_LOG.DELETED)
            .select(
                DSL.select(
                        SETUP.STUDIO_ID,
                        inline(ChangedKind.SETUP.word()),
                        SETUP.ID,
                        SETUP.REVISION,
                        inline(false))
                    .from(SETUP)
                    .where(SETUP.STUDIO_ID.eq(in.studio().text()))
                    .and(SETUP.DELETED_AT.isNull())
                    .and(which))
            .execute();
    if (lines > 0) {
      in.sql().execute("notify " + ChangeListener.CHANNEL);
    }
  }
}
