package lampwright.tasks;

import java.util.List;
import lampwright.people.Membership;
import lampwright.people.Permission;
import lampwright.people.Role;
import lampwright.people.StudioId;
import lampwright.store.Database;

/** The studios that a person can go to. */
public final class Studios {

  private final Database database;

  public Studios(Database database) {
    this.database = database;
  }

  /** Those that the caller belongs to, by name. */
  public List<Membership> list(Caller caller) {
    return database.asPerson(caller.asker(), in -> new lampwright.store.Studios(in).list());
  }

  /**
   * Lets a member of a studio pass whose role covers something.
   *
   * @throws Refused NotFound for who is no member, NotAllowed for whom the role does not cover it
   */
  public void mustMay(Caller caller, StudioId studio, Permission permission) {
    database.inStudio(studio, caller.asker(), in -> Leave.ask(in, permission));
  }

  /**
   * As what the caller belongs to a studio.
   *
   * @throws Refused NotFound for who is no member
   */
  public Role role(Caller caller, StudioId studio) {
    return list(caller).stream()
        .filter(membership -> membership.studio().equals(studio))
        .map(Membership::role)
        .findFirst()
        .orElseThrow(Refused::notFound);
  }
}
