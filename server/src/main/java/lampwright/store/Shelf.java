package lampwright.store;

import static lampwright.schema.generated.Tables.GEAR;
import static lampwright.schema.generated.Tables.GEAR_REVISION;
import static lampwright.schema.generated.Tables.KIT;
import static lampwright.schema.generated.Tables.KIT_REVISION;
import static lampwright.schema.generated.Tables.LOCATION;
import static lampwright.schema.generated.Tables.LOCATION_REVISION;
import static lampwright.schema.generated.Tables.NOTE;
import static lampwright.schema.generated.Tables.NOTE_REVISION;
import static lampwright.schema.generated.Tables.PICTURE;
import static lampwright.schema.generated.Tables.PICTURE_REVISION;
import static lampwright.schema.generated.Tables.SETUP;
import static lampwright.schema.generated.Tables.SETUP_REVISION;
import static lampwright.schema.generated.Tables.TAKE;
import static lampwright.schema.generated.Tables.TAKE_REVISION;
import static lampwright.schema.generated.Tables.TRAIL;
import static lampwright.schema.generated.Tables.TRAIL_REVISION;

import java.time.Instant;
import java.util.Map;
import org.jooq.Field;
import org.jooq.JSONB;
import org.jooq.Record;
import org.jooq.Table;

/**
 * The pair of tables that one kind of document is kept in: as it is now, and every revision.
 *
 * @param more columns that only this kind has and each revision keeps: of now, with that of then
 */
record Shelf(ChangedKind kind, Now now, History history, Map<Field<?>, Field<?>> more) {

  Shelf(ChangedKind kind, Now now, History history) {
    this(kind, now, history, Map.of());
  }

  static final Shelf SETUPS =
      new Shelf(
          ChangedKind.SETUP,
          new Now(
              SETUP,
              SETUP.STUDIO_ID,
              SETUP.ID,
              SETUP.REVISION,
              SETUP.TITLE,
              SETUP.DOCUMENT,
              SETUP.CREATED_AT,
              SETUP.CREATED_BY,
              SETUP.CHANGED_AT,
              SETUP.CHANGED_BY,
              SETUP.DELETED_AT),
          new History(
              SETUP_REVISION,
              SETUP_REVISION.STUDIO_ID,
              SETUP_REVISION.SETUP_ID,
              SETUP_REVISION.REVISION,
              SETUP_REVISION.TITLE,
              SETUP_REVISION.DOCUMENT,
              SETUP_REVISION.CHANGED_AT,
              SETUP_REVISION.CHANGED_BY,
              SETUP_REVISION.MESSAGE,
              SETUP_REVISION.DELETED),
          Map.of(
              SETUP.STATE, SETUP_REVISION.STATE,
              SETUP.ARCHIVED, SETUP_REVISION.ARCHIVED));

  static final Shelf KITS =
      new Shelf(
          ChangedKind.KIT,
          new Now(
              KIT,
              KIT.STUDIO_ID,
              KIT.ID,
              KIT.REVISION,
              KIT.NAME,
              KIT.DOCUMENT,
              KIT.CREATED_AT,
              KIT.CREATED_BY,
              KIT.CHANGED_AT,
              KIT.CHANGED_BY,
              KIT.DELETED_AT),
          new History(
              KIT_REVISION,
              KIT_REVISION.STUDIO_ID,
              KIT_REVISION.KIT_ID,
              KIT_REVISION.REVISION,
              KIT_REVISION.NAME,
              KIT_REVISION.DOCUMENT,
              KIT_REVISION.CHANGED_AT,
              KIT_REVISION.CHANGED_BY,
              KIT_REVISION.MESSAGE,
              KIT_REVISION.DELETED));

  static final Shelf LOCATIONS =
      new Shelf(
          ChangedKind.LOCATION,
          new Now(
              LOCATION,
              LOCATION.STUDIO_ID,
              LOCATION.ID,
              LOCATION.REVISION,
              LOCATION.NAME,
              LOCATION.DOCUMENT,
              LOCATION.CREATED_AT,
              LOCATION.CREATED_BY,
              LOCATION.CHANGED_AT,
              LOCATION.CHANGED_BY,
              LOCATION.DELETED_AT),
          new History(
              LOCATION_REVISION,
              LOCATION_REVISION.STUDIO_ID,
              LOCATION_REVISION.LOCATION_ID,
              LOCATION_REVISION.REVISION,
              LOCATION_REVISION.NAME,
              LOCATION_REVISION.DOCUMENT,
              LOCATION_REVISION.CHANGED_AT,
              LOCATION_REVISION.CHANGED_BY,
              LOCATION_REVISION.MESSAGE,
              LOCATION_REVISION.DELETED));

  static final Shelf TAKES =
      new Shelf(
          ChangedKind.TAKE,
          new Now(
              TAKE,
              TAKE.STUDIO_ID,
              TAKE.ID,
              TAKE.REVISION,
              TAKE.LABEL,
              TAKE.DOCUMENT,
              TAKE.CREATED_AT,
              TAKE.CREATED_BY,
              TAKE.CHANGED_AT,
              TAKE.CHANGED_BY,
              TAKE.DELETED_AT),
          new History(
              TAKE_REVISION,
              TAKE_REVISION.STUDIO_ID,
              TAKE_REVISION.TAKE_ID,
              TAKE_REVISION.REVISION,
              TAKE_REVISION.LABEL,
              TAKE_REVISION.DOCUMENT,
              TAKE_REVISION.CHANGED_AT,
              TAKE_REVISION.CHANGED_BY,
              TAKE_REVISION.MESSAGE,
              TAKE_REVISION.DELETED));

  static final Shelf NOTES =
      new Shelf(
          ChangedKind.NOTE,
          new Now(
              NOTE,
              NOTE.STUDIO_ID,
              NOTE.ID,
              NOTE.REVISION,
              NOTE.LABEL,
              NOTE.DOCUMENT,
              NOTE.CREATED_AT,
              NOTE.CREATED_BY,
              NOTE.CHANGED_AT,
              NOTE.CHANGED_BY,
              NOTE.DELETED_AT),
          new History(
              NOTE_REVISION,
              NOTE_REVISION.STUDIO_ID,
              NOTE_REVISION.NOTE_ID,
              NOTE_REVISION.REVISION,
              NOTE_REVISION.LABEL,
              NOTE_REVISION.DOCUMENT,
              NOTE_REVISION.CHANGED_AT,
              NOTE_REVISION.CHANGED_BY,
              NOTE_REVISION.MESSAGE,
              NOTE_REVISION.DELETED));

  static final Shelf PICTURES =
      new Shelf(
          ChangedKind.PICTURE,
          new Now(
              PICTURE,
              PICTURE.STUDIO_ID,
              PICTURE.ID,
              PICTURE.REVISION,
              PICTURE.KIND,
              PICTURE.DOCUMENT,
              PICTURE.CREATED_AT,
              PICTURE.CREATED_BY,
              PICTURE.CHANGED_AT,
              PICTURE.CHANGED_BY,
              PICTURE.DELETED_AT),
          new History(
              PICTURE_REVISION,
              PICTURE_REVISION.STUDIO_ID,
              PICTURE_REVISION.PICTURE_ID,
              PICTURE_REVISION.REVISION,
              PICTURE_REVISION.KIND,
              PICTURE_REVISION.DOCUMENT,
              PICTURE_REVISION.CHANGED_AT,
              PICTURE_REVISION.CHANGED_BY,
              PICTURE_REVISION.MESSAGE,
              PICTURE_REVISION.DELETED));

  static final Shelf ALL_GEAR =
      new Shelf(
          ChangedKind.GEAR,
          new Now(
              GEAR,
              GEAR.STUDIO_ID,
              GEAR.ID,
              GEAR.REVISION,
              GEAR.NAME,
              GEAR.DOCUMENT,
              GEAR.CREATED_AT,
              GEAR.CREATED_BY,
              GEAR.CHANGED_AT,
              GEAR.CHANGED_BY,
              GEAR.DELETED_AT),
          new History(
              GEAR_REVISION,
              GEAR_REVISION.STUDIO_ID,
              GEAR_REVISION.GEAR_ID,
              GEAR_REVISION.REVISION,
              GEAR_REVISION.NAME,
              GEAR_REVISION.DOCUMENT,
              GEAR_REVISION.CHANGED_AT,
              GEAR_REVISION.CHANGED_BY,
              GEAR_REVISION.MESSAGE,
              GEAR_REVISION.DELETED));

  static final Shelf TRAILS =
      new Shelf(
          ChangedKind.TRAIL,
          new Now(
              TRAIL,
              TRAIL.STUDIO_ID,
              TRAIL.ID,
              TRAIL.REVISION,
              TRAIL.NAME,
              TRAIL.DOCUMENT,
              TRAIL.CREATED_AT,
              TRAIL.CREATED_BY,
              TRAIL.CHANGED_AT,
              TRAIL.CHANGED_BY,
              TRAIL.DELETED_AT),
          new History(
              TRAIL_REVISION,
              TRAIL_REVISION.STUDIO_ID,
              TRAIL_REVISION.TRAIL_ID,
              TRAIL_REVISION.REVISION,
              TRAIL_REVISION.NAME,
              TRAIL_REVISION.DOCUMENT,
              TRAIL_REVISION.CHANGED_AT,
              TRAIL_REVISION.CHANGED_BY,
              TRAIL_REVISION.MESSAGE,
              TRAIL_REVISION.DELETED));

  /** Each document as it is now. */
  record Now(
      Table<Record> table,
      Field<String> studio,
      Field<String> id,
      Field<Integer> revision,
      Field<String> label,
      Field<JSONB> document,
      Field<Instant> createdAt,
      Field<String> createdBy,
      Field<Instant> changedAt,
      Field<String> changedBy,
      Field<Instant> deletedAt) {}

  /** Each document as it ever was. */
  record History(
      Table<Record> table,
      Field<String> studio,
      Field<String> id,
      Field<Integer> revision,
      Field<String> label,
      Field<JSONB> document,
      Field<Instant> changedAt,
      Field<String> changedBy,
      Field<String> message,
      Field<Boolean> deleted) {}
}
