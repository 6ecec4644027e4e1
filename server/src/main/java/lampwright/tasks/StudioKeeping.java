package lampwright.tasks;

import java.util.ArrayList;
import java.util.List;
import lampwright.document.Problem;
import lampwright.people.Ids;
import lampwright.people.Permission;
import lampwright.people.Role;
import lampwright.people.Studio;
import lampwright.people.StudioId;
import lampwright.store.Database;
import lampwright.store.Members;
import lampwright.store.Saving;

/** Founds further studios and renames them. */
public final class StudioKeeping {

  private static final int MOST_OWNED = 50;

  private final Database database;
  private final Ids ids;

  public StudioKeeping(Database database, Ids ids) {
    this.database = database;
    this.ids = ids;
  }

  /**
   * The studio as it is now.
   *
   * @throws Refused NotFound for who is no member
   */
  public Studio get(Caller caller, StudioId studio) {
    return database.inStudio(
        studio,
        caller.asker(),
        in -> {
          Leave.ask(in, Permission.READ_SETUPS);
          return new Members(in).findStudio().orElseThrow(Refused::notFound);
        });
  }

  /**
   * Founds a studio that the caller owns; who owns one may found another.
   *
   * @throws Refused NotAllowed for who owns none, Invalid at {@code /name}, Clash for who owns as
   *     many as one may
   */
  public Studio found(Caller caller, String name) {
    long owned =
        database.asPerson(
            caller.asker(),
            in ->
                new lampwright.store.Studios(in)
                    .list().stream().filter(membership -> membership.role() == Role.OWNER).count());
    if (owned == 0) {
      throw Refused.notAllowed("Only who owns a studio founds another. Ask an owner of one.");
    }
    if (owned >= MOST_OWNED) {
      throw new Refused(
          new Refusal.Clash("You own %d studios, and that is the most.".formatted(MOST_OWNED)));
    }
    String sound = sound(name);
    return database.anonymous(
        in -> {
          Members members = new Members(in.enter(new StudioId(ids.next()), caller.person().id()));
          members.found(sound);
          return members.findStudio().orElseThrow();
        });
  }

  /**
   * Gives a studio another name.
   *
   * @param based the revision that was looked at
   * @throws Refused NotAllowed for who is no owner, Invalid at {@code /name}, Stale where it was
   *     changed since
   */
  public Studio rename(Caller caller, StudioId studio, int based, String name) {
    return database.inStudio(
        studio,
        caller.asker(),
        in -> {
          Leave.ask(in, Permission.MANAGE_MEMBERS);
          Members members = new Members(in);
          switch (members.rename(based, sound(name))) {
            case Saving.Saved _ -> {}
            case Saving.Stale(int current) -> throw Refused.stale(current);
            case Saving.Absent() -> throw Refused.notFound();
          }
          return members.findStudio().orElseThrow(Refused::notFound);
        });
  }

  private static String sound(String name) {
    List<Problem> problems = new ArrayList<>();
    NewAccount.bounded(
        problems, "/name", "Name of the studio", name.strip(), NewAccount.LONGEST_NAME);
    if (!problems.isEmpty()) {
      throw Refused.invalid(problems);
    }
    return name.strip();
  }
}
