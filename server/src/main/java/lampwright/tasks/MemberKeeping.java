package lampwright.tasks;

import java.util.List;
import java.util.Optional;
import lampwright.people.Ids;
import lampwright.people.Member;
import lampwright.people.Permission;
import lampwright.people.PersonId;
import lampwright.people.Role;
import lampwright.people.StudioId;
import lampwright.store.Database;
import lampwright.store.Invitations;
import lampwright.store.Members;
import lampwright.store.Saving;
import lampwright.store.StudioTransaction;

/** Who belongs to a studio: tells it, changes roles, and lets people go. */
public final class MemberKeeping {

  private final Database database;

  public MemberKeeping(Database database) {
    this.database = database;
  }

  /**
   * The person that an address names.
   *
   * @throws Refused NotFound where nobody can have that id
   */
  public static PersonId id(String text) {
    if (!Ids.isId(text)) {
      throw Refused.notFound();
    }
    return new PersonId(text);
  }

  /**
   * A member, as far as the asker may know them.
   *
   * @param email empty where the asker neither is an owner nor that person
   */
  public record Known(Member member, Optional<String> email) {

    private static Known to(Caller caller, Role role, Member member) {
      boolean isOne = member.person().id().equals(caller.person().id());
      return new Known(
          member,
          isOne || role.may(Permission.MANAGE_MEMBERS)
              ? Optional.of(member.person().email())
              : Optional.empty());
    }

    /** No record's text may carry an address into a log. */
    @Override
    public String toString() {
      return "Known[" + member.person() + "]";
    }
  }

  /**
   * Everybody who belongs to it, by name.
   *
   * @throws Refused NotFound for who is no member
   */
  public List<Known> list(Caller caller, StudioId studio) {
    return database.inStudio(
        studio,
        caller.asker(),
        in -> {
          Role role = Leave.ask(in, Permission.READ_SETUPS);
          return new Members(in)
              .list().stream().map(member -> Known.to(caller, role, member)).toList();
        });
  }

  /**
   * One member.
   *
   * @throws Refused NotFound for who is no member, and where the person is none
   */
  public Known get(Caller caller, StudioId studio, PersonId person) {
    return database.inStudio(
        studio,
        caller.asker(),
        in -> Known.to(caller, Leave.ask(in, Permission.READ_SETUPS), find(in, person)));
  }

  /**
   * Gives a member another role.
   *
   * @param based the revision that was looked at
   * @throws Refused NotAllowed for who is no owner, Stale where it was changed since, Clash where
   *     the studio would have no owner left
   */
  public Known changeRole(Caller caller, StudioId studio, PersonId person, int based, Role role) {
    return database.inStudio(
        studio,
        caller.asker(),
        in -> {
          Role own = Leave.ask(in, Permission.MANAGE_MEMBERS);
          find(in, person);
          if (role != Role.OWNER) {
            mustNotBeTheLastOwner(in, person);
          }
          switch (new Members(in).changeRole(person, based, role)) {
            case Saving.Saved _ -> new Invitations(in).forgetVoid();
            case Saving.Stale(int current) -> throw Refused.stale(current);
            case Saving.Absent() -> throw Refused.notFound();
          }
          return Known.to(caller, own, find(in, person));
        });
  }

  /**
   * Lets a member go: an owner takes somebody out, or anybody leaves. They are out at once; what
   * they wrote stays.
   *
   * @param based the revision that was looked at
   * @throws Refused NotAllowed for who is neither that person nor an owner, Stale where it was
   *     changed since, Clash where the studio would have no owner left
   */
  public void remove(Caller caller, StudioId studio, PersonId person, int based) {
    database.inStudio(
        studio,
        caller.asker(),
        in -> {
          Leave.ask(
              in,
              person.equals(caller.person().id())
                  ? Permission.READ_SETUPS
                  : Permission.MANAGE_MEMBERS);
          mustNotBeTheLastOwner(in, person);
          Member member = find(in, person);
          if (member.revision() != based) {
            throw Refused.stale(member.revision());
          }
          return new Members(in).remove(person);
        });
  }

  private static Member find(StudioTransaction in, PersonId person) {
    return new Members(in).find(person).orElseThrow(Refused::notFound);
  }

  private static void mustNotBeTheLastOwner(StudioTransaction in, PersonId person) {
    if (new Members(in).listOwnersAndHold().equals(List.of(person))) {
      throw new Refused(
          new Refusal.Clash(
              "A studio needs an owner, and this is the only one. Make somebody else an owner"
                  + " first."));
    }
  }
}
