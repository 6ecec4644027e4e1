package lampwright.store;

import static org.jooq.impl.DSL.row;

import java.time.Instant;
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

  /**
   * A document as it is now.
   *
   * @param more columns that only this kind of document has
   */
  record Stored(
      String id,
      int revision,
      String label,
      String document,
      Instant changedAt,
      PersonId changedBy,
      Record more) {}

  private final StudioTransaction in;
  private final Shelf.Now now;
  private final Map<Field<?>, Field<?>> more;
  private final Revisions revisions;

  Documents(StudioTransaction in, Shelf shelf) {
    this.in = in;
    this.now = shelf.now();
    this.more = shelf.more();
    this.revisions = new Revisions(in, shelf);
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
    revisions.remember(id, message, Map.of());
    return find(id).orElseThrow();
  }

  Optional<Stored> find(String id) {
    return in.sql()
        .select(now.id(), now.revision(), now.label(), now.document())
        .select(now.changedAt(), now.changedBy())
        .select(more.keySet())
        .from(now.table())
        .where(isLiving(id))
        .fetchOptional(this::stored);
  }

  /** Those of some documents that are living, in no order. */
  List<Stored> listOf(Collection<String> ids) {
    return in.sql()
        .select(now.id(), now.revision(), now.label(), now.document())
        .select(now.changedAt(), now.changedBy())
        .select(more.keySet())
        .from(now.table())
        .where(now.studio().eq(in.studio().text()))
        .and(now.id().in(ids))
        .and(now.deletedAt().isNull())
        .fetch(this::stored);
  }

  Page<Stored> list(Optional<Page.Place> after, int limit) {
    return list(DSL.noCondition(), after, limit);
  }

  /**
   * Those of which something more holds.
   *
   * @param also over columns that this kind's table has
   */
  Page<Stored> list(Condition also, Optional<Page.Place> after, int limit) {
    List<Stored> found =
        in.sql()
            .select(now.id(), now.revision(), now.label(), now.document())
            .select(now.changedAt(), now.changedBy())
            .select(more.keySet())
            .from(now.table())
            .where(now.studio().eq(in.studio().text()))
            .and(now.deletedAt().isNull())
            .and(also)
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
  Set<String> idsEver() {
    return in.sql()
        .select(now.id())
        .from(now.table())
        .where(now.studio().eq(in.studio().text()))
        .fetchSet(now.id());
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

  /**
   * Puts a document in the place of the revision that it was made from, which may be a deletion.
   *
   * @param more columns that only this kind's revisions have, with their values
   * @return absent only where there never was such a document
   */
  Saving restore(
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
            .set(now.deletedAt(), DSL.castNull(now.deletedAt()))
            .set(now.changedAt(), in.now())
            .set(now.changedBy(), in.person().text())
            .where(isKept(id))
            .and(now.revision().eq(basedOn))
            .execute();
    return saving(id, isKept(id), changed, basedOn, message, more);
  }

  /**
   * Makes a revision with the same document, of which only other columns change.
   *
   * @param columns of this kind of document, with their new values
   */
  Saving mark(String id, int basedOn, String message, Map<? extends Field<?>, ?> columns) {
    int changed =
        in.sql()
            .update(now.table())
            .set(now.revision(), basedOn + 1)
            .set(columns)
            .set(now.changedAt(), in.now())
            .set(now.changedBy(), in.person().text())
            .where(isLiving(id))
            .and(now.revision().eq(basedOn))
            .execute();
    return saving(id, changed, basedOn, message, Map.of());
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
    return saving(id, isLiving(id), changed, basedOn, message, more);
  }

  private Saving saving(
      String id,
      Condition which,
      int changed,
      int basedOn,
      String message,
      Map<? extends Field<?>, ?> more) {
    if (changed == 1) {
      revisions.remember(id, message, more);
      return new Saving.Saved(basedOn + 1);
    }
    return in.sql()
        .select(now.revision())
        .from(now.table())
        .where(which)
        .fetchOptional(now.revision())
        .<Saving>map(Saving.Stale::new)
        .orElse(new Saving.Absent());
  }

  Revisions revisions() {
    return revisions;
  }

  private Condition isLiving(String id) {
    return isKept(id).and(now.deletedAt().isNull());
  }

  private Condition isKept(String id) {
    return now.studio().eq(in.studio().text()).and(now.id().eq(id));
  }

  private Stored stored(Record found) {
    return new Stored(
        found.get(now.id()),
        found.get(now.revision()),
        found.get(now.label()),
        found.get(now.document()).data(),
        found.get(now.changedAt()),
        new PersonId(found.get(now.changedBy())),
        found);
  }
}
