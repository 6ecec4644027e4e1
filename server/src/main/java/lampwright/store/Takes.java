package lampwright.store;

import static lampwright.schema.generated.Tables.TAKE;
import static org.jooq.impl.DSL.row;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lampwright.people.PersonId;
import lampwright.setup.SetupId;
import lampwright.setup.takes.TakeId;
import org.jooq.Condition;
import org.jooq.Record;
import org.jooq.impl.DSL;

/** The takes of one setup of the studio that the transaction is in. */
public final class Takes {

  private final StudioTransaction in;
  private final SetupId setup;
  private final Documents documents;

  public Takes(StudioTransaction in, SetupId setup) {
    this.in = in;
    this.setup = setup;
    this.documents = new Documents(in, Shelf.TAKES);
  }

  /** The number after the highest that a day has, or has had. */
  public int nextNumber(LocalDate day) {
    Integer highest =
        in.sql()
            .select(DSL.max(TAKE.NUMBER))
            .from(TAKE)
            .where(isOfSetup())
            .and(TAKE.DAY.eq(day))
            .fetchSingle()
            .value1();
    return highest == null ? 1 : highest + 1;
  }

  /**
   * What is new of a take.
   *
   * @param document JSON, checked before
   */
  public record NewTake(
      TakeId id,
      int setupRevision,
      Instant takenAt,
      LocalDate day,
      int number,
      String clientKey,
      String label,
      String document) {}

  /** Keeps a new take as its revision 1. */
  public StoredTake create(NewTake take) {
    documents.create(
        take.id().text(),
        take.label(),
        take.document(),
        "",
        Map.of(
            TAKE.SETUP_ID, setup.text(),
            TAKE.SETUP_REVISION, take.setupRevision(),
            TAKE.TAKEN_AT, take.takenAt(),
            TAKE.DAY, take.day(),
            TAKE.NUMBER, take.number(),
            TAKE.CLIENT_KEY, take.clientKey()));
    return find(take.id()).orElseThrow();
  }

  public Optional<StoredTake> find(TakeId id) {
    return find(TAKE.ID.eq(id.text()).and(TAKE.DELETED_AT.isNull()));
  }

  /** The take of a key, a deleted one too. */
  public Optional<TakeOfKey> findByKey(String clientKey) {
    return in.sql()
        .select(TAKE.ID, TAKE.DELETED_AT)
        .from(TAKE)
        .where(isOfSetup())
        .and(TAKE.CLIENT_KEY.eq(clientKey))
        .fetchOptional(
            found -> {
              TakeId id = new TakeId(found.get(TAKE.ID));
              return new TakeOfKey(
                  id,
                  documents.revisions().find(id.text(), 1).orElseThrow().document(),
                  found.get(TAKE.DELETED_AT) != null);
            });
  }

  /**
   * What a key was given to.
   *
   * @param first the document that came with it, JSON
   */
  public record TakeOfKey(TakeId id, String first, boolean isDeleted) {}

  /**
   * At most so many, the last taken first.
   *
   * @param day only those of it
   * @param kept only those: yes, no or undecided
   * @param after where a page ended, by the time that it was taken
   */
  public Page<StoredTake> list(
      Optional<LocalDate> day, Optional<String> kept, Optional<Page.Place> after, int limit) {
    List<StoredTake> found =
        in.sql()
            .selectFrom(TAKE)
            .where(isOfSetup())
            .and(TAKE.DELETED_AT.isNull())
            .and(day.map(TAKE.DAY::eq).orElse(DSL.noCondition()))
            .and(kept.map(TAKE.KEPT::eq).orElse(DSL.noCondition()))
            .and(
                after
                    .<Condition>map(
                        place ->
                            row(TAKE.TAKEN_AT, TAKE.ID).lessThan(place.changedAt(), place.id()))
                    .orElse(DSL.noCondition()))
            .orderBy(TAKE.TAKEN_AT.desc(), TAKE.ID.desc())
            .limit(limit + 1)
            .fetch(Takes::take);
    if (found.size() <= limit) {
      return new Page<>(found, Optional.empty());
    }
    StoredTake last = found.get(limit - 1);
    return new Page<>(
        found.subList(0, limit), Optional.of(new Page.Place(last.takenAt(), last.id().text())));
  }

  /** At most so many that a person logged, the last taken first. */
  public List<StoredTake> listBy(PersonId person, int limit) {
    return in.sql()
        .selectFrom(TAKE)
        .where(isOfSetup())
        .and(TAKE.DELETED_AT.isNull())
        .and(TAKE.CREATED_BY.eq(person.text()))
        .orderBy(TAKE.TAKEN_AT.desc(), TAKE.ID.desc())
        .limit(limit)
        .fetch(Takes::take);
  }

  /** Puts another document in the place of the revision that it was made from. */
  public Saving replace(TakeId id, int basedOn, String label, String document) {
    return documents.replace(id.text(), basedOn, label, document, "", Map.of());
  }

  /** Takes it away; its revisions, its number and its key stay taken. */
  public Saving delete(TakeId id, int basedOn) {
    return documents.delete(id.text(), basedOn, "");
  }

  private Optional<StoredTake> find(Condition which) {
    return in.sql().selectFrom(TAKE).where(isOfSetup()).and(which).fetchOptional(Takes::take);
  }

  private Condition isOfSetup() {
    return TAKE.STUDIO_ID.eq(in.studio().text()).and(TAKE.SETUP_ID.eq(setup.text()));
  }

  private static StoredTake take(Record found) {
    return new StoredTake(
        new TakeId(found.get(TAKE.ID)),
        new SetupId(found.get(TAKE.SETUP_ID)),
        found.get(TAKE.REVISION),
        found.get(TAKE.DAY),
        found.get(TAKE.NUMBER),
        found.get(TAKE.DOCUMENT).data(),
        found.get(TAKE.TAKEN_AT),
        found.get(TAKE.CHANGED_AT),
        new PersonId(found.get(TAKE.CREATED_BY)));
  }
}
