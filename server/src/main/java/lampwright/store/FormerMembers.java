package lampwright.store;

import static lampwright.schema.generated.Tables.FORMER_MEMBER;

import lampwright.people.PersonId;

/**
 * Who belonged to the transaction's studio and does so no more; the database remembers each by
 * itself. One who has come back is among the members too.
 */
public final class FormerMembers {

  private final StudioTransaction in;

  public FormerMembers(StudioTransaction in) {
    this.in = in;
  }

  /** Goes on calling a former member by their name; says false where there is none of that id. */
  public boolean keepName(PersonId person) {
    return in.sql()
            .update(FORMER_MEMBER)
            .set(FORMER_MEMBER.IS_NAMED, true)
            .where(FORMER_MEMBER.STUDIO_ID.eq(in.studio().text()))
            .and(FORMER_MEMBER.PERSON_ID.eq(person.text()))
            .execute()
        == 1;
  }
}
