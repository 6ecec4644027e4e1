package lampwright.tasks;

import java.util.List;
import lampwright.people.Member;
import lampwright.people.Permission;
import lampwright.people.StudioId;
import lampwright.store.Database;
import lampwright.store.Members;

/** Tells who belongs to a studio. */
public final class MemberListing {

  private final Database database;

  public MemberListing(Database database) {
    this.database = database;
  }

  /**
   * Everybody who belongs to it, by name.
   *
   * @throws Refused NotFound for who is no member
   */
  public List<Member> list(Caller caller, StudioId studio) {
    return database.inStudio(
        studio,
        caller.asker(),
        in -> {
          Leave.ask(in, Permission.READ_SETUPS);
          return new Members(in).list();
        });
  }

  /**
   * Whether the caller may do something there.
   *
   * @throws Refused NotFound for who is no member
   */
  public boolean may(Caller caller, StudioId studio, Permission permission) {
    return database.inStudio(
        studio, caller.asker(), in -> Leave.ask(in, Permission.READ_SETUPS).may(permission));
  }
}
