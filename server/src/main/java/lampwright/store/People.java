package lampwright.store;

import static lampwright.schema.generated.Tables.PERSON;

import java.util.Collection;
import java.util.Locale;
import java.util.Optional;
import lampwright.people.Person;
import lampwright.people.PersonId;
import org.jooq.Record;

/** Who can sign in; not those whose name only came with an archive, see {@link ArchivedAuthors}. */
public final class People {

  /** A person, and what their password is checked against. */
  public record WithPassword(Person person, String passwordHash) {

    /** No record's text may carry a hash into a log. */
    @Override
    public String toString() {
      return "WithPassword[" + person + "]";
    }
  }

  private final Transaction in;

  public People(Transaction in) {
    this.in = in;
  }

  /** Takes a person in; empty where somebody has that address already. */
  public Optional<Person> create(PersonId id, String email, String name, String passwordHash) {
    Person person = new Person(id, email.toLowerCase(Locale.ROOT), name);
    int inserted =
        in.sql()
            .insertInto(PERSON)
            .set(PERSON.ID, id.text())
            .set(PERSON.EMAIL, person.email())
            .set(PERSON.NAME, name)
            .set(PERSON.PASSWORD_HASH, passwordHash)
            .set(PERSON.CREATED_AT, in.now())
            .onConflict(PERSON.EMAIL)
            .doNothing()
            .execute();
    return inserted == 1 ? Optional.of(person) : Optional.empty();
  }

  public Optional<Person> find(PersonId id) {
    return in.sql()
        .select(PERSON.ID, PERSON.EMAIL, PERSON.NAME)
        .from(PERSON)
        .where(PERSON.ID.eq(id.text()))
        .and(PERSON.SIGNS_IN)
        .fetchOptional(People::person);
  }

  public Optional<WithPassword> findWithPassword(PersonId id) {
    return in.sql()
        .select(PERSON.ID, PERSON.EMAIL, PERSON.NAME, PERSON.PASSWORD_HASH)
        .from(PERSON)
        .where(PERSON.ID.eq(id.text()))
        .and(PERSON.SIGNS_IN)
        .fetchOptional(found -> new WithPassword(person(found), found.get(PERSON.PASSWORD_HASH)));
  }

  /** In whatever case the address is written. */
  public Optional<WithPassword> findByEmail(String email) {
    return in.sql()
        .select(PERSON.ID, PERSON.EMAIL, PERSON.NAME, PERSON.PASSWORD_HASH)
        .from(PERSON)
        .where(PERSON.EMAIL.eq(email.toLowerCase(Locale.ROOT)))
        .and(PERSON.SIGNS_IN)
        .fetchOptional(found -> new WithPassword(person(found), found.get(PERSON.PASSWORD_HASH)));
  }

  /** Says false where there is nobody of that id. */
  public boolean changePassword(PersonId id, String passwordHash) {
    return in.sql()
            .update(PERSON)
            .set(PERSON.PASSWORD_HASH, passwordHash)
            .where(PERSON.ID.eq(id.text()))
            .and(PERSON.SIGNS_IN)
            .execute()
        == 1;
  }

  /** Whether nobody has signed up yet. */
  public boolean isEmpty() {
    return !in.sql().fetchExists(PERSON, PERSON.SIGNS_IN.isTrue());
  }

  /** Whether nobody has signed up yet but those of some addresses. */
  public boolean isNobodyBut(Collection<String> emails) {
    return !in.sql().fetchExists(PERSON, PERSON.SIGNS_IN.isTrue().and(PERSON.EMAIL.notIn(emails)));
  }

  static Person person(Record found) {
    return new Person(
        new PersonId(found.get(PERSON.ID)), found.get(PERSON.EMAIL), found.get(PERSON.NAME));
  }
}
