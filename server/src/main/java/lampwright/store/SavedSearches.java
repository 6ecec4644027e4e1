package lampwright.store;

import static lampwright.schema.generated.Tables.MEMBER;
import static lampwright.schema.generated.Tables.SAVED_SEARCH;

import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import lampwright.setup.SetupId;
import org.jooq.Condition;
import org.jooq.Field;
import org.jooq.Record;
import org.jooq.impl.DSL;

/**
 * The searches that the person of a transaction keeps in its studio, each with the setups that it
 * found when they last looked. Nobody else's are ever seen.
 */
public final class SavedSearches {

  /** So many setups are kept as seen, and told to be new or not; the table takes a few more. */
  public static final int MOST_SEEN = 10_000;

  private final StudioTransaction in;

  public SavedSearches(StudioTransaction in) {
    this.in = in;
  }

  /**
   * Holds them until the transaction ends, so that two that are kept at once are not one too many
   * and do not have one name.
   */
  public void hold() {
    in.sql()
        .select(MEMBER.PERSON_ID)
        .from(MEMBER)
        .where(MEMBER.STUDIO_ID.eq(in.studio().text()))
        .and(MEMBER.PERSON_ID.eq(in.person().text()))
        .forUpdate()
        .fetch();
  }

  public int count() {
    return in.sql().fetchCount(SAVED_SEARCH, isOwn());
  }

  /** Whether another than this has the name, compared by its key. */
  public boolean isTaken(String nameKey, String except) {
    return in.sql()
        .fetchExists(
            SAVED_SEARCH,
            isOwn().and(SAVED_SEARCH.NAME_KEY.eq(nameKey)).and(SAVED_SEARCH.ID.ne(except)));
  }

  /**
   * Keeps a new one as its revision 1.
   *
   * @param seen what it finds now; empty where that is more than is kept
   */
  public StoredSearch create(
      String id, String name, String nameKey, String question, Optional<Set<SetupId>> seen) {
    in.sql()
        .insertInto(SAVED_SEARCH)
        .set(SAVED_SEARCH.STUDIO_ID, in.studio().text())
        .set(SAVED_SEARCH.PERSON_ID, in.person().text())
        .set(SAVED_SEARCH.ID, id)
        .set(SAVED_SEARCH.REVISION, 1)
        .set(SAVED_SEARCH.NAME, name)
        .set(SAVED_SEARCH.NAME_KEY, nameKey)
        .set(SAVED_SEARCH.QUESTION, question)
        .set(SAVED_SEARCH.CREATED_AT, in.now())
        .set(SAVED_SEARCH.CHANGED_AT, in.now())
        .set(SAVED_SEARCH.SEEN_AT, in.now())
        .set(SAVED_SEARCH.SEEN, array(seen))
        .execute();
    return find(id).orElseThrow();
  }

  public Optional<StoredSearch> find(String id) {
    return list(SAVED_SEARCH.ID.eq(id)).stream().findFirst();
  }

  /** All of them, by name. */
  public List<StoredSearch> list() {
    return list(DSL.noCondition());
  }

  private List<StoredSearch> list(Condition which) {
    return in.sql()
        .select(SAVED_SEARCH.ID, SAVED_SEARCH.REVISION, SAVED_SEARCH.NAME, SAVED_SEARCH.QUESTION)
        .select(SAVED_SEARCH.CREATED_AT, SAVED_SEARCH.CHANGED_AT, SAVED_SEARCH.SEEN_AT)
        .from(SAVED_SEARCH)
        .where(isOwn())
        .and(which)
        .orderBy(SAVED_SEARCH.NAME_KEY, SAVED_SEARCH.ID)
        .fetch(SavedSearches::search);
  }

  /** Puts another name and question in the place of those of a revision. */
  public Saving replace(String id, int basedOn, String name, String nameKey, String question) {
    return saving(
        id,
        in.sql()
            .update(SAVED_SEARCH)
            .set(SAVED_SEARCH.REVISION, basedOn + 1)
            .set(SAVED_SEARCH.NAME, name)
            .set(SAVED_SEARCH.NAME_KEY, nameKey)
            .set(SAVED_SEARCH.QUESTION, question)
            .set(SAVED_SEARCH.CHANGED_AT, in.now())
            .where(is(id))
            .and(SAVED_SEARCH.REVISION.eq(basedOn))
            .execute(),
        basedOn + 1);
  }

  /** Forgets it. */
  public Saving delete(String id, int basedOn) {
    return saving(
        id,
        in.sql()
            .deleteFrom(SAVED_SEARCH)
            .where(is(id))
            .and(SAVED_SEARCH.REVISION.eq(basedOn))
            .execute(),
        basedOn);
  }

  private Saving saving(String id, int changed, int revision) {
    return changed == 1
        ? new Saving.Saved(revision)
        : find(id)
            .<Saving>map(found -> new Saving.Stale(found.revision()))
            .orElseGet(Saving.Absent::new);
  }

  /** What the person saw of some of them; for each empty where that was more than is kept. */
  public Map<String, Optional<Set<SetupId>>> seen(Collection<String> ids) {
    return in.sql()
        .select(SAVED_SEARCH.ID, SAVED_SEARCH.SEEN)
        .from(SAVED_SEARCH)
        .where(isOwn())
        .and(SAVED_SEARCH.ID.in(ids))
        .fetchMap(
            found -> found.get(SAVED_SEARCH.ID), found -> setups(found.get(SAVED_SEARCH.SEEN)));
  }

  /**
   * The person has looked.
   *
   * @param seen what there was; empty where that is more than is kept
   */
  public void look(String id, Optional<Set<SetupId>> seen) {
    in.sql()
        .update(SAVED_SEARCH)
        .set(SAVED_SEARCH.SEEN_AT, in.now())
        .set(SAVED_SEARCH.SEEN, array(seen))
        .where(is(id))
        .execute();
  }

  /**
   * Counts setups among those seen without the person having looked: none is news to them. Where
   * too many are kept already, nothing changes.
   */
  public void know(String id, Set<SetupId> setups) {
    Field<String[]> more = array(Optional.of(setups));
    in.sql()
        .update(SAVED_SEARCH)
        .set(SAVED_SEARCH.SEEN, DSL.arrayConcat(SAVED_SEARCH.SEEN, more))
        .where(is(id))
        .and(DSL.cardinality(SAVED_SEARCH.SEEN).le(MOST_SEEN - setups.size()))
        .execute();
  }

  /** What there is of what was not kept: from here on it is told what is new. */
  public void begin(String id, Set<SetupId> setups) {
    in.sql()
        .update(SAVED_SEARCH)
        .set(SAVED_SEARCH.SEEN, array(Optional.of(setups)))
        .where(is(id))
        .and(SAVED_SEARCH.SEEN.isNull())
        .execute();
  }

  private Condition is(String id) {
    return isOwn().and(SAVED_SEARCH.ID.eq(id));
  }

  private Condition isOwn() {
    return SAVED_SEARCH
        .STUDIO_ID
        .eq(in.studio().text())
        .and(SAVED_SEARCH.PERSON_ID.eq(in.person().text()));
  }

  private static Field<String[]> array(Optional<Set<SetupId>> setups) {
    return setups.isEmpty()
        ? DSL.castNull(SAVED_SEARCH.SEEN)
        : DSL.val(
            setups.get().stream().map(SetupId::text).toArray(String[]::new),
            SAVED_SEARCH.SEEN.getDataType());
  }

  private static Optional<Set<SetupId>> setups(String[] ids) {
    if (ids == null) {
      return Optional.empty();
    }
    Set<SetupId> setups = new LinkedHashSet<>();
    Arrays.stream(ids).map(SetupId::new).forEach(setups::add);
    return Optional.of(setups);
  }

  private static StoredSearch search(Record found) {
    return new StoredSearch(
        found.get(SAVED_SEARCH.ID),
        found.get(SAVED_SEARCH.REVISION),
        found.get(SAVED_SEARCH.NAME),
        found.get(SAVED_SEARCH.QUESTION),
        found.get(SAVED_SEARCH.CREATED_AT),
        found.get(SAVED_SEARCH.CHANGED_AT),
        found.get(SAVED_SEARCH.SEEN_AT));
  }
}
