package lampwright.store;

import static lampwright.schema.generated.Tables.MEMBER;
import static lampwright.schema.generated.Tables.PERSON;
import static lampwright.schema.generated.Tables.STUDIO;

import java.util.List;
import lampwright.people.Member;
import lampwright.people.Membership;
import lampwright.people.PersonId;
import lampwright.people.Role;

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

  /** Everybody, by name. */
  public List<Member> list() {
    return in.sql()
        .select(People.OF_A_PERSON)
        .select(MEMBER.ROLE)
        .from(MEMBER)
        .join(PERSON)
        .on(PERSON.ID.eq(MEMBER.PERSON_ID))
        .where(MEMBER.STUDIO_ID.eq(in.studio().text()))
        .orderBy(PERSON.NAME, PERSON.ID)
        .fetch(found -> new Member(People.person(found), Role.of(found.get(MEMBER.ROLE))));
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
            .where(MEMBER.STUDIO_ID.eq(in.studio().text()))
            .and(MEMBER.PERSON_ID.eq(person.text()))
            .execute()
        == 1;
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
