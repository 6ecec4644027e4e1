package lampwright.store;

import static lampwright.schema.generated.Tables.PERSON;

import java.util.Map;
import java.util.Optional;
import lampwright.people.PersonId;

/**
 * Those in the histories of the transaction's studio whose names came with an archive. They cannot
 * sign in and are no members; no other studio knows of them.
 */
public final class ArchivedAuthors {

  private final StudioTransaction in;

  public ArchivedAuthors(StudioTransaction in) {
    this.in = in;
  }

  /** Their names. */
  public Map<PersonId, String> names() {
    return in.sql()
        .select(PERSON.ID, PERSON.NAME)
        .from(PERSON)
        .where(PERSON.ARCHIVE_STUDIO_ID.eq(in.studio().text()))
        .fetchMap(found -> new PersonId(found.get(PERSON.ID)), found -> found.get(PERSON.NAME));
  }

  /** What an archive calls each of them. */
  public Map<PersonId, String> keys() {
    return in.sql()
        .select(PERSON.ID, PERSON.ARCHIVED_AS)
        .from(PERSON)
        .where(PERSON.ARCHIVE_STUDIO_ID.eq(in.studio().text()))
        .fetchMap(
            found -> new PersonId(found.get(PERSON.ID)), found -> found.get(PERSON.ARCHIVED_AS));
  }

  /** The one whom an archive calls so; one who was there before keeps their name. */
  public PersonId ensure(PersonId ifNew, String key, String name) {
    in.sql()
        .insertInto(PERSON)
        .set(PERSON.ID, ifNew.text())
        .set(PERSON.NAME, name)
        .set(PERSON.CREATED_AT, in.now())
        .set(PERSON.ARCHIVE_STUDIO_ID, in.studio().text())
        .set(PERSON.ARCHIVED_AS, key)
        .onConflict(PERSON.ARCHIVE_STUDIO_ID, PERSON.ARCHIVED_AS)
        .doNothing()
        .execute();
    return find(key).orElseThrow();
  }

  private Optional<PersonId> find(String key) {
    return in.sql()
        .select(PERSON.ID)
        .from(PERSON)
        .where(PERSON.ARCHIVE_STUDIO_ID.eq(in.studio().text()))
        .and(PERSON.ARCHIVED_AS.eq(key))
        .fetchOptional(found -> new PersonId(found.get(PERSON.ID)));
  }
}
