package lampwright.store;

import static lampwright.schema.generated.Tables.PERSON;

import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import lampwright.language.Language;
import lampwright.language.LengthUnit;
import lampwright.language.StopFraction;
import lampwright.people.Person;
import lampwright.people.PersonId;
import lampwright.people.Preferred;
import org.jooq.Field;
import org.jooq.Record;
import org.jooq.impl.DSL;

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

  /** What a person chose, and the revision of that choice. */
  public record Chosen(Preferred preferred, int revision) {}

  /** A person, and the revision of their name and e-mail. */
  public record Account(Person person, int revision) {}

  static final List<Field<?>> OF_A_PERSON =
      List.of(
          PERSON.ID,
          PERSON.EMAIL,
          PERSON.NAME,
          PERSON.LANGUAGE,
          PERSON.LENGTHS,
          PERSON.STOP_FRACTION);

  private final Transaction in;

  public People(Transaction in) {
    this.in = in;
  }

  /** Takes a person in; empty where somebody has that address already. */
  public Optional<Person> create(PersonId id, String email, String name, String passwordHash) {
    Person person = new Person(id, email.toLowerCase(Locale.ROOT), name, Preferred.NOTHING);
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
        .select(OF_A_PERSON)
        .from(PERSON)
        .where(PERSON.ID.eq(id.text()))
        .and(PERSON.SIGNS_IN)
        .fetchOptional(People::person);
  }

  public Optional<WithPassword> findWithPassword(PersonId id) {
    return in.sql()
        .select(OF_A_PERSON)
        .select(PERSON.PASSWORD_HASH)
        .from(PERSON)
        .where(PERSON.ID.eq(id.text()))
        .and(PERSON.SIGNS_IN)
        .fetchOptional(found -> new WithPassword(person(found), found.get(PERSON.PASSWORD_HASH)));
  }

  /** In whatever case the address is written. */
  public Optional<WithPassword> findByEmail(String email) {
    return in.sql()
        .select(OF_A_PERSON)
        .select(PERSON.PASSWORD_HASH)
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

  /**
   * A person with the revision of their name and e-mail; empty where there is nobody of that id.
   */
  public Optional<Account> findAccount(PersonId id) {
    return in.sql()
        .select(OF_A_PERSON)
        .select(PERSON.ACCOUNT_REVISION)
        .from(PERSON)
        .where(PERSON.ID.eq(id.text()))
        .and(PERSON.SIGNS_IN)
        .fetchOptional(found -> new Account(person(found), found.get(PERSON.ACCOUNT_REVISION)));
  }

  /** Whether somebody else has an address. */
  public boolean isTaken(String email, PersonId by) {
    return in.sql()
        .fetchExists(
            PERSON, PERSON.EMAIL.eq(email.toLowerCase(Locale.ROOT)).and(PERSON.ID.ne(by.text())));
  }

  /**
   * Keeps a person's name and e-mail.
   *
   * @param basedOn the revision that was looked at
   */
  public Saving changeAccount(PersonId id, int basedOn, String name, String email) {
    int changed =
        in.sql()
            .update(PERSON)
            .set(PERSON.NAME, name)
            .set(PERSON.EMAIL, email.toLowerCase(Locale.ROOT))
            .set(PERSON.ACCOUNT_REVISION, basedOn + 1)
            .where(PERSON.ID.eq(id.text()))
            .and(PERSON.SIGNS_IN)
            .and(PERSON.ACCOUNT_REVISION.eq(basedOn))
            .execute();
    return changed == 1
        ? new Saving.Saved(basedOn + 1)
        : findAccount(id)
            .<Saving>map(now -> new Saving.Stale(now.revision()))
            .orElseGet(Saving.Absent::new);
  }

  /** How a person has chosen to read; empty where there is nobody of that id. */
  public Optional<Chosen> findPreferred(PersonId id) {
    return in.sql()
        .select(PERSON.LANGUAGE, PERSON.LENGTHS, PERSON.STOP_FRACTION, PERSON.PREFERENCES_REVISION)
        .from(PERSON)
        .where(PERSON.ID.eq(id.text()))
        .and(PERSON.SIGNS_IN)
        .fetchOptional(
            found -> new Chosen(preferred(found), found.get(PERSON.PREFERENCES_REVISION)));
  }

  /**
   * Keeps how a person has chosen to read.
   *
   * @param basedOn the revision that was looked at
   */
  public Saving prefer(PersonId id, int basedOn, Preferred preferred) {
    int changed =
        in.sql()
            .update(PERSON)
            .set(
                PERSON.LANGUAGE,
                preferred
                    .language()
                    .<Field<String>>map(language -> DSL.val(language.tag()))
                    .orElseGet(() -> DSL.castNull(PERSON.LANGUAGE)))
            .set(PERSON.LENGTHS, preferred.lengths().key())
            .set(PERSON.STOP_FRACTION, preferred.stops().key())
            .set(PERSON.PREFERENCES_REVISION, basedOn + 1)
            .where(PERSON.ID.eq(id.text()))
            .and(PERSON.SIGNS_IN)
            .and(PERSON.PREFERENCES_REVISION.eq(basedOn))
            .execute();
    return changed == 1
        ? new Saving.Saved(basedOn + 1)
        : findPreferred(id)
            .<Saving>map(now -> new Saving.Stale(now.revision()))
            .orElseGet(Saving.Absent::new);
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
        new PersonId(found.get(PERSON.ID)),
        found.get(PERSON.EMAIL),
        found.get(PERSON.NAME),
        preferred(found));
  }

  private static Preferred preferred(Record found) {
    return preferred(
        Optional.ofNullable(found.get(PERSON.LANGUAGE)),
        found.get(PERSON.LENGTHS),
        found.get(PERSON.STOP_FRACTION));
  }

  static Preferred preferred(Optional<String> language, String lengths, String stopFraction) {
    return new Preferred(
        language.flatMap(Language::find),
        LengthUnit.find(lengths).orElseThrow(),
        StopFraction.find(stopFraction).orElseThrow());
  }
}
