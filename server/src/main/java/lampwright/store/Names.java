package lampwright.store;

import static lampwright.schema.generated.Tables.FORMER_MEMBER;
import static lampwright.schema.generated.Tables.MEMBER;
import static lampwright.schema.generated.Tables.PERSON;
import static org.jooq.impl.DSL.field;
import static org.jooq.impl.DSL.select;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import lampwright.people.FormerName;
import lampwright.people.PersonId;
import lampwright.schema.generated.tables.Person;
import org.jooq.Condition;
import org.jooq.Field;
import org.jooq.Record;

/**
 * What somebody is called in the transaction's studio: a member by their name, who was one by it
 * where they may be named, who came with an archive as that calls them.
 */
public final class Names {

  private static final Field<Boolean> IS_MEMBER =
      field(MEMBER.PERSON_ID.isNotNull()).as("is_member");
  private static final Field<Boolean> IS_OF_ARCHIVE =
      field(PERSON.ARCHIVE_STUDIO_ID.isNotNull()).as("is_of_archive");

  /** What {@link #of} reads. */
  static final List<Field<?>> COLUMNS =
      List.of(PERSON.NAME, IS_MEMBER, FORMER_MEMBER.IS_NAMED, IS_OF_ARCHIVE);

  private final StudioTransaction in;

  public Names(StudioTransaction in) {
    this.in = in;
  }

  /** Of one. */
  public String find(PersonId person) {
    return in.sql()
        .select(COLUMNS)
        .from(PERSON)
        .leftJoin(MEMBER)
        .on(isMember(in))
        .leftJoin(FORMER_MEMBER)
        .on(wasMember(in))
        .where(PERSON.ID.eq(person.text()))
        .and(isKnown(in))
        .fetchOptional(Names::of)
        .orElse(FormerName.UNNAMED);
  }

  /** Of everybody who is or was a member, or came with an archive. */
  public Map<PersonId, String> everybody() {
    String studio = in.studio().text();
    Person archived = PERSON.as("archived");
    return in.sql()
        .select(PERSON.ID)
        .select(COLUMNS)
        .from(PERSON)
        .leftJoin(MEMBER)
        .on(isMember(in))
        .leftJoin(FORMER_MEMBER)
        .on(wasMember(in))
        .where(
            PERSON.ID.in(
                select(MEMBER.PERSON_ID)
                    .from(MEMBER)
                    .where(MEMBER.STUDIO_ID.eq(studio))
                    .unionAll(
                        select(FORMER_MEMBER.PERSON_ID)
                            .from(FORMER_MEMBER)
                            .where(FORMER_MEMBER.STUDIO_ID.eq(studio)))
                    .unionAll(
                        select(archived.ID)
                            .from(archived)
                            .where(archived.ARCHIVE_STUDIO_ID.eq(studio)))))
        .fetchMap(found -> new PersonId(found.get(PERSON.ID)), Names::of);
  }

  static Condition isMember(StudioTransaction in) {
    return MEMBER.STUDIO_ID.eq(in.studio().text()).and(MEMBER.PERSON_ID.eq(PERSON.ID));
  }

  static Condition wasMember(StudioTransaction in) {
    return FORMER_MEMBER
        .STUDIO_ID
        .eq(in.studio().text())
        .and(FORMER_MEMBER.PERSON_ID.eq(PERSON.ID));
  }

  /** Whom another studio's archive told of is nobody here. */
  static Condition isKnown(StudioTransaction in) {
    return PERSON.ARCHIVE_STUDIO_ID.isNull().or(PERSON.ARCHIVE_STUDIO_ID.eq(in.studio().text()));
  }

  /** Of whom a row tells; the row may tell of nobody. */
  static String of(Record found) {
    return of(
        Optional.ofNullable(found.get(PERSON.NAME)),
        found.get(IS_MEMBER),
        Optional.ofNullable(found.get(FORMER_MEMBER.IS_NAMED)),
        found.get(IS_OF_ARCHIVE));
  }

  /**
   * The same.
   *
   * @param name empty for nobody
   * @param isNamed of who was a member: whether by name
   */
  static String of(
      Optional<String> name, boolean isMember, Optional<Boolean> isNamed, boolean isOfArchive) {
    if (name.isEmpty() || isMember) {
      return name.orElse(FormerName.UNNAMED);
    }
    if (isNamed.isPresent()) {
      return isNamed.get() ? name.get() : FormerName.UNNAMED;
    }
    return isOfArchive ? FormerName.archived(name.get()) : FormerName.UNNAMED;
  }
}
