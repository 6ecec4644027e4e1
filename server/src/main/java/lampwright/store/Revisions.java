package lampwright.store;

import static lampwright.schema.generated.Tables.CHANGE_LOG;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lampwright.people.PersonId;
import org.jooq.Field;
import org.jooq.Record;
import org.jooq.impl.DSL;

/** Every revision of one kind of document, of deleted ones too, and the change log's lines. */
final class Revisions {

  private final StudioTransaction in;
  private final Shelf.Now now;
  private final Shelf.History history;
  private final ChangedKind kind;
  private final Map<Field<?>, Field<?>> more;

  Revisions(StudioTransaction in, Shelf shelf) {
    this.in = in;
    this.now = shelf.now();
    this.history = shelf.history();
    this.kind = shelf.kind();
    this.more = shelf.more();
  }

  List<Revision> list(String id) {
    return in.sql()
        .select(history.revision(), history.changedAt(), history.changedBy())
        .select(history.message(), history.deleted())
        .from(history.table())
        .where(history.studio().eq(in.studio().text()))
        .and(history.id().eq(id))
        .orderBy(history.revision().desc())
        .fetch(this::revision);
  }

  Optional<StoredRevision> find(String id, int number) {
    return in.sql()
        .select(history.revision(), history.changedAt(), history.changedBy())
        .select(history.message(), history.deleted(), history.label(), history.document())
        .from(history.table())
        .where(history.studio().eq(in.studio().text()))
        .and(history.id().eq(id))
        .and(history.revision().eq(number))
        .fetchOptional(
            found ->
                new StoredRevision(
                    revision(found),
                    found.get(history.label()),
                    found.get(history.document()).data()));
  }

  /** Copies what is there now, so that history cannot tell another story than the document did. */
  void remember(String id, String message, Map<? extends Field<?>, ?> told) {
    List<Field<?>> columns =
        new ArrayList<>(
            List.of(
                history.studio(),
                history.id(),
                history.revision(),
                history.label(),
                history.document(),
                history.changedAt(),
                history.changedBy(),
                history.message(),
                history.deleted()));
    List<Field<?>> values =
        new ArrayList<>(
            List.of(
                now.studio(),
                now.id(),
                now.revision(),
                now.label(),
                now.document(),
                now.changedAt(),
                now.changedBy(),
                DSL.val(message),
                DSL.field(now.deletedAt().isNotNull())));
    more.forEach(
        (of, then) -> {
          columns.add(then);
          values.add(of);
        });
    told.forEach(
        (column, value) -> {
          columns.add(column);
          values.add(DSL.val(value));
        });
    in.sql()
        .insertInto(history.table())
        .columns(columns)
        .select(
            in.sql()
                .select(values)
                .from(now.table())
                .where(now.studio().eq(in.studio().text()))
                .and(now.id().eq(id)))
        .execute();
    in.sql()
        .insertInto(CHANGE_LOG)
        .columns(
            CHANGE_LOG.STUDIO_ID,
            CHANGE_LOG.KIND,
            CHANGE_LOG.SUBJECT_ID,
            CHANGE_LOG.REVISION,
            CHANGE_LOG.DELETED)
        .select(
            in.sql()
                .select(
                    now.studio(),
                    DSL.val(kind.word()),
                    now.id(),
                    now.revision(),
                    DSL.field(now.deletedAt().isNotNull()))
                .from(now.table())
                .where(now.studio().eq(in.studio().text()))
                .and(now.id().eq(id)))
        .execute();
    in.sql().execute("notify " + ChangeListener.CHANNEL);
  }

  private Revision revision(Record found) {
    return new Revision(
        found.get(history.revision()),
        found.get(history.changedAt()),
        new PersonId(found.get(history.changedBy())),
        found.get(history.message()),
        found.get(history.deleted()));
  }
}
