package lampwright.tasks;

import java.util.List;
import lampwright.people.Membership;
import lampwright.store.Database;

/** The studios that a person can go to. */
public final class Studios {

  private final Database database;

  public Studios(Database database) {
    this.database = database;
  }

  /** Those that the caller belongs to, by name. */
  public List<Membership> list(Caller caller) {
    return database.asPerson(caller.person().id(), in -> new lampwright.store.Studios(in).list());
  }
}
