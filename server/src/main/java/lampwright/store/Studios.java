package lampwright.store;

import static lampwright.schema.generated.Tables.MEMBER;
import static lampwright.schema.generated.Tables.STUDIO;

import java.util.List;
import java.util.Optional;
import lampwright.people.Membership;
import lampwright.people.Role;
import lampwright.people.StudioId;

/** The studios of the person that the transaction is for. */
public final class Studios {

  private final PersonTransaction in;

  public Studios(PersonTransaction in) {
    this.in = in;
  }

  /** Every studio that the person belongs to, by name. */
  public List<Membership> list() {
    return in
        .sql()
        .select(STUDIO.ID, STUDIO.NAME, MEMBER.ROLE)
        .from(MEMBER)
        .join(STUDIO)
        .on(STUDIO.ID.eq(MEMBER.STUDIO_ID))
        .where(MEMBER.PERSON_ID.eq(in.person().text()))
        .orderBy(STUDIO.NAME, STUDIO.ID)
        .fetch(
            found ->
                new Membership(
                    new StudioId(found.get(STUDIO.ID)),
                    found.get(STUDIO.NAME),
                    in.reach().limit(Role.of(found.get(MEMBER.ROLE)))))
        .stream()
        .filter(membership -> in.reach().includes(membership.studio()))
        .toList();
  }

  /** What the person is in a studio; empty where they do not belong to it, or it is none. */
  public Optional<Role> findRole(StudioId studio) {
    return in.sql()
        .select(MEMBER.ROLE)
        .from(MEMBER)
        .where(MEMBER.STUDIO_ID.eq(studio.text()))
        .and(MEMBER.PERSON_ID.eq(in.person().text()))
        .fetchOptional(found -> in.reach().limit(Role.of(found.get(MEMBER.ROLE))))
        .filter(_ -> in.reach().includes(studio));
  }
}
