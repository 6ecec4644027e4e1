package lampwright.store;

import static lampwright.schema.generated.Tables.CHANGE_LOG;
import static org.jooq.impl.DSL.row;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import lampwright.people.PersonId;
import org.jooq.Condition;
import org.jooq.Field;
import org.jooq.JSONB;
import org.jooq.Record;
import org.jooq.impl.DSL;

/**
 * What setups and kits have in common: a document that is replaced whole, by revision. Every change
 * leaves a revision and a line in the change log behind, in the same transaction.
 */
final class Documents {

  /** A document as it is now. */
  record Stored(
      String id,
      int revision,
      String label,
      String document,
      Instant changedAt,
      PersonId changedBy) {}

  private final StudioTransaction in;
  private final Shelf.Now now;
  private final Shelf.History history;
  private final ChangedKind kind;

  Documents(StudioTransaction in, Shelf shelf) {
    this.in = in;
    this.now = shelf.now();
    this.history = shelf.history();
    this.kind = shelf.kind();
  }

  /**
   * Keeps a new document.
   *
   * @param more columns that only this kind of document has, with their values
   */
  Stored create(
      String id, String label, String document, String message, Map<? extends Field<?>, ?> more) {
    in.sql()
        .insertInto(now.table())
        .set(now.studio(), in.studio().text())
        .set(now.id(), id)
        .set(now.revision(), 1)
        .set(now.label(), label)
        .set(now.document(), JSONB.jsonb(document))
        .set(now.createdAt(), in.now())
        .set(now.createdBy(), in.person().text())
        .set(now.changedAt(), in.now())
        .set(now.changedBy(), in.person().text())
        .set(more)
        .execute();
    remember(id, message, Map.of());
    return find(id).orElseThrow();
  }

  Optional<Stored> find(String id) {
    return in.sql()
        .select(now.id(), now.revision(), now.label(), now.document())
        .select(now.changedAt(), now.changedBy())
        .from(now.table())
        .where(isLiving(id))
        .fetchOptional(this::stored);
  }

  /** Those of some documents that are living, in no order. */
  List<Stored> listOf(Collection<String> ids) {
    return in.sql()
        .select(now.id(), now.revision(), now.label(), now.document())
        .select(now.changedAt(), now.changedBy())
        .from(now.table())
        .where(now.studio().eq(in.studio().text()))
        .and(now.id().in(ids))
        .and(now.deletedAt().isNull())
        .fetch(this::stored);
  }

  Page<Stored> list(Optional<Page.Place> after, int limit) {
    List<Stored> found =
        in.sql()
            .select(now.id(), now.revision(), now.label(), now.document())
            .select(now.changedAt(), now.changedBy())
            .from(now.table())
            .where(now.studio().eq(in.studio().text()))
            .and(now.deletedAt().isNull())
            .and(
                after
                    .<Condition>map(
                        place ->
                            row(now.changedAt(), now.id()).lessThan(place.changedAt(), place.id()))
                    .orElse(DSL.noCondition()))
            .orderBy(now.changedAt().desc(), now.id().desc())
            .limit(limit + 1)
            .fetch(this::stored);
    if (found.size() <= limit) {
      return new Page<>(found, Optional.empty());
    }
    Stored last = found.get(limit - 1);
    return new Page<>(
        found.subList(0, limit), Optional.of(new Page.Place(last.changedAt(), last.id())));
  }

  /** What the documents are called, of deleted ones too. */
  Set<String> labelsEver() {
    return in.sql()
        .select(now.label())
        .from(now.table())
        .where(now.studio().eq(in.studio().text()))
        .fetchSet(now.label());
  }

  int count() {
    return in.sql()
        .fetchCount(now.table(), now.studio().eq(in.studio().text()).and(now.deletedAt().isNull()));
  }

  /**
   * Puts another document in the place of the revision that it was made from.
   *
   * @param more columns that only this kind's revisions have, with their values
   */
  Saving replace(
      String id,
      int basedOn,
      String label,
      String document,
      String message,
      Map<? extends Field<?>, ?> more) {
    int changed =
        in.sql()
            .update(now.table())
            .set(now.revision(), basedOn + 1)
            .set(now.label(), label)
            .set(now.document(), JSONB.jsonb(document))
            .set(now.changedAt(), in.now())
            .set(now.changedBy(), in.person().text())
            .where(isLiving(id))
            .and(now.revision().eq(basedOn))
            .execute();
    return saving(id, changed, basedOn, message, more);
  }

  Saving delete(String id, int basedOn, String message) {
    int changed =
        in.sql()
            .update(now.table())
            .set(now.revision(), basedOn + 1)
            .set(now.deletedAt(), in.now())
            .set(now.changedAt(), in.now())
            .set(now.changedBy(), in.person().text())
            .where(isLiving(id))
            .and(now.revision().eq(basedOn))
            .execute();
    return saving(id, changed, basedOn, message, Map.of());
  }

  private Saving saving(
      String id, int changed, int basedOn, String message, Map<? extends Field<?>, ?> more) {
    if (changed == 1) {
      remember(id, message, more);
      return new Saving.Saved(basedOn + 1);
    }
    return find(id)
        .<Saving>map(current -> new Saving.Stale(current.revision()))
        .orElse(new Saving.Absent());
  }

  List<Revision> listRevisions(String id) {
    return in.sql()
        .select(history.revision(), history.changedAt(), history.changedBy())
        .select(history.message(), history.deleted())
        .from(history.table())
        .where(history.studio().eq(in.studio().text()))
        .and(history.id().eq(id))
        .orderBy(history.revision().desc())
        .fetch(this::revision);
  }

  Optional<StoredRevision> findRevision(String id, int number) {
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
  private void remember(String id, String message, Map<? extends Field<?>, ?> more) {
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

  private Condition isLiving(String id) {
    return now.studio().eq(in.studio().text()).and(now.id().eq(id)).and(now.deletedAt().isNull());
  }

  private Stored stored(Record found) {
    return new Stored(
        found.get(now.id()),
        found.get(now.revision()),
        found.get(now.label()),
        found.get(now.document()).data(),
        found.get(now.changedAt()),
        new PersonId(found.get(now.changedBy())));
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
