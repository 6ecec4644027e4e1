package lampwright.store;

import static lampwright.schema.generated.Tables.MEMBER;
import static lampwright.schema.generated.Tables.PERSON;
import static lampwright.schema.generated.Tables.STUDIO;

import java.util.List;
import java.util.Optional;
import lampwright.people.Member;
import lampwright.people.Membership;
import lampwright.people.PersonId;
import lampwright.people.Role;
import lampwright.people.Studio;
import org.jooq.Condition;
import org.jooq.Record;
import org.jooq.SelectConditionStep;

/** The studio that the transaction is in, and who belongs to it. */
public final class Members {

  private final StudioTransaction in;

  public Members(StudioTransaction in) {
    this.in = in;
  }

  /** Founds the studio that the transaction is in, with its person as the owner. */
  public Membership found(String studioName) {
    in.sql()
        .insertInto(STUDIO)
        .set(STUDIO.ID, in.studio().text())
        .set(STUDIO.NAME, studioName)
        .set(STUDIO.CREATED_AT, in.now())
        .execute();
    add(in.person(), Role.OWNER);
    return new Membership(in.studio(), studioName, Role.OWNER);
  }

  /** Whether the studio has been founded. */
  public boolean isFounded() {
    return in.sql().fetchExists(STUDIO, STUDIO.ID.eq(in.studio().text()));
  }

  /** The studio itself; empty where it has not been founded. */
  public Optional<Studio> findStudio() {
    return in.sql()
        .selectFrom(STUDIO)
        .where(STUDIO.ID.eq(in.studio().text()))
        .fetchOptional(
            found ->
                new Studio(
                    in.studio(),
                    found.get(STUDIO.NAME),
                    found.get(STUDIO.REVISION),
                    found.get(STUDIO.CREATED_AT)));
  }

  /**
   * Gives the studio another name.
   *
   * @param basedOn the revision that was looked at
   */
  public Saving rename(int basedOn, String name) {
    int changed =
        in.sql()
            .update(STUDIO)
            .set(STUDIO.NAME, name)
            .set(STUDIO.REVISION, basedOn + 1)
            .where(STUDIO.ID.eq(in.studio().text()))
            .and(STUDIO.REVISION.eq(basedOn))
            .execute();
    return changed == 1
        ? new Saving.Saved(basedOn + 1)
        : findStudio()
            .<Saving>map(now -> new Saving.Stale(now.revision()))
            .orElseGet(Saving.Absent::new);
  }

  /** Everybody, by name. */
  public List<Member> list() {
    return members(MEMBER.STUDIO_ID.eq(in.studio().text()))
        .orderBy(PERSON.NAME, PERSON.ID)
        .fetch(Members::member);
  }

  public Optional<Member> find(PersonId person) {
    return members(MEMBER.STUDIO_ID.eq(in.studio().text()).and(MEMBER.PERSON_ID.eq(person.text())))
        .fetchOptional(Members::member);
  }

  private SelectConditionStep<? extends Record> members(Condition which) {
    return in.sql()
        .select(People.OF_A_PERSON)
        .select(MEMBER.ROLE, MEMBER.REVISION, MEMBER.CREATED_AT)
        .from(MEMBER)
        .join(PERSON)
        .on(PERSON.ID.eq(MEMBER.PERSON_ID))
        .where(which);
  }

  private static Member member(Record found) {
    return new Member(
        People.person(found),
        Role.of(found.get(MEMBER.ROLE)),
        found.get(MEMBER.REVISION),
        found.get(MEMBER.CREATED_AT));
  }

  /** Takes a person in; says false where they belong to it already. */
  public boolean add(PersonId person, Role role) {
    return in.sql()
            .insertInto(MEMBER)
            .set(MEMBER.STUDIO_ID, in.studio().text())
            .set(MEMBER.PERSON_ID, person.text())
            .set(MEMBER.ROLE, role.word())
            .set(MEMBER.CREATED_AT, in.now())
            .onConflict(MEMBER.STUDIO_ID, MEMBER.PERSON_ID)
            .doNothing()
            .execute()
        == 1;
  }

  /** Says false where the person does not belong to it. */
  public boolean changeRole(PersonId person, Role role) {
    return in.sql()
            .update(MEMBER)
            .set(MEMBER.ROLE, role.word())
            .set(MEMBER.REVISION, MEMBER.REVISION.plus(1))
            .where(MEMBER.STUDIO_ID.eq(in.studio().text()))
            .and(MEMBER.PERSON_ID.eq(person.text()))
            .execute()
        == 1;
  }

  /**
   * Gives a member another role.
   *
   * @param basedOn the revision that was looked at
   */
  public Saving changeRole(PersonId person, int basedOn, Role role) {
    int changed =
        in.sql()
            .update(MEMBER)
            .set(MEMBER.ROLE, role.word())
            .set(MEMBER.REVISION, basedOn + 1)
            .where(MEMBER.STUDIO_ID.eq(in.studio().text()))
            .and(MEMBER.PERSON_ID.eq(person.text()))
            .and(MEMBER.REVISION.eq(basedOn))
            .execute();
    return changed == 1
        ? new Saving.Saved(basedOn + 1)
        : find(person)
            .<Saving>map(now -> new Saving.Stale(now.revision()))
            .orElseGet(Saving.Absent::new);
  }

  /** Says false where the person does not belong to it. */
  public boolean remove(PersonId person) {
    return in.sql()
            .deleteFrom(MEMBER)
            .where(MEMBER.STUDIO_ID.eq(in.studio().text()))
            .and(MEMBER.PERSON_ID.eq(person.text()))
            .execute()
        == 1;
  }

  /**
   * The owners, who stay so until the transaction ends: two of them cannot take each other's role
   * away at once and leave the studio without one.
   */
  public List<PersonId> listOwnersAndHold() {
    return in.sql()
        .select(MEMBER.PERSON_ID)
        .from(MEMBER)
        .where(MEMBER.STUDIO_ID.eq(in.studio().text()))
        .and(MEMBER.ROLE.eq(Role.OWNER.word()))
        .orderBy(MEMBER.PERSON_ID)
        .forUpdate()
        .fetch(found -> new PersonId(found.get(MEMBER.PERSON_ID)));
  }
}
