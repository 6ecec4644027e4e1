package lampwright.store;

import static lampwright.schema.generated.Tables.NOTE;
import static org.jooq.impl.DSL.row;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import lampwright.people.PersonId;
import lampwright.setup.SetupId;
import lampwright.setup.notes.NoteId;
import org.jooq.Condition;
import org.jooq.Record;
import org.jooq.impl.DSL;

/** The notes beside one setup of the studio that the transaction is in. */
public final class Notes {

  /** Notes carry no title; their revisions are told apart by their numbers. */
  private static final String LABEL = "Note";

  private final StudioTransaction in;
  private final SetupId setup;
  private final Documents documents;

  public Notes(StudioTransaction in, SetupId setup) {
    this.in = in;
    this.setup = setup;
    this.documents = new Documents(in, Shelf.NOTES);
  }

  /**
   * Keeps a new note as its revision 1.
   *
   * @param document JSON, checked before
   */
  public StoredNote create(NoteId id, String document) {
    documents.create(id.text(), LABEL, document, "", Map.of(NOTE.SETUP_ID, setup.text()));
    return find(id).orElseThrow();
  }

  public Optional<StoredNote> find(NoteId id) {
    return in.sql()
        .selectFrom(NOTE)
        .where(isOfSetup())
        .and(NOTE.ID.eq(id.text()))
        .fetchOptional(Notes::note);
  }

  public int count() {
    return in.sql().fetchCount(NOTE, isOfSetup());
  }

  /** At most so many, the last written first; places of pages are by when they were written. */
  public Page<StoredNote> list(Optional<Page.Place> after, int limit) {
    List<StoredNote> found =
        in.sql()
            .selectFrom(NOTE)
            .where(isOfSetup())
            .and(
                after
                    .<Condition>map(
                        place ->
                            row(NOTE.CREATED_AT, NOTE.ID).lessThan(place.changedAt(), place.id()))
                    .orElse(DSL.noCondition()))
            .orderBy(NOTE.CREATED_AT.desc(), NOTE.ID.desc())
            .limit(limit + 1)
            .fetch(Notes::note);
    if (found.size() <= limit) {
      return new Page<>(found, Optional.empty());
    }
    StoredNote last = found.get(limit - 1);
    return new Page<>(
        found.subList(0, limit), Optional.of(new Page.Place(last.createdAt(), last.id().text())));
  }

  /** Puts another document in the place of the revision that it was made from. */
  public Saving replace(NoteId id, int basedOn, String document) {
    return documents.replace(id.text(), basedOn, LABEL, document, "", Map.of());
  }

  /** Takes it away; its revisions stay. */
  public Saving delete(NoteId id, int basedOn) {
    return documents.delete(id.text(), basedOn, "");
  }

  private Condition isOfSetup() {
    return NOTE.STUDIO_ID
        .eq(in.studio().text())
        .and(NOTE.SETUP_ID.eq(setup.text()))
        .and(NOTE.DELETED_AT.isNull());
  }

  private static StoredNote note(Record found) {
    return new StoredNote(
        new NoteId(found.get(NOTE.ID)),
        found.get(NOTE.REVISION),
        found.get(NOTE.DOCUMENT).data(),
        found.get(NOTE.CREATED_AT),
        new PersonId(found.get(NOTE.CREATED_BY)),
        found.get(NOTE.CHANGED_AT));
  }
}
