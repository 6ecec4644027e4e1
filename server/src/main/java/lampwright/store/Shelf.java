package lampwright.store;

import static lampwright.schema.generated.Tables.KIT;
import static lampwright.schema.generated.Tables.KIT_REVISION;
import static lampwright.schema.generated.Tables.SETUP;
import static lampwright.schema.generated.Tables.SETUP_REVISION;

import java.time.Instant;
import org.jooq.Field;
import org.jooq.JSONB;
import org.jooq.Record;
import org.jooq.Table;

/** The pair of tables that one kind of document is kept in: as it is now, and every revision. */
record Shelf(ChangedKind kind, Now now, History history) {

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
              SETUP_REVISION.DELETED));

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
