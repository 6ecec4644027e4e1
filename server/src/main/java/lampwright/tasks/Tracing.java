package lampwright.tasks;

import java.util.List;
import lampwright.people.StudioId;
import lampwright.setup.Child;
import lampwright.setup.SetupId;
import lampwright.store.Database;
import lampwright.store.Setups;
import lampwright.store.StoredSetup;
import lampwright.store.StudioTransaction;

/** Traces which setups were made from which. */
public final class Tracing {

  /** More than a page or a program has a use for; the last changed come first. */
  private static final int MOST_CHILDREN = 100;

  private final Database database;

  public Tracing(Database database) {
    this.database = database;
  }

  /**
   * Whom a setup is related to, beside its parent's name.
   *
   * @param hasParentStill whether its parent is still in the catalogue
   * @param children that were made from it, the last changed first
   */
  public record Kin(boolean hasParentStill, List<Child> children) {}

  /** The kin of a setup. */
  public Kin kin(Caller caller, StudioId studio, Catalogued of) {
    return database.inStudio(studio, caller.asker(), in -> kin(in, Sight.ask(in), of));
  }

  static Kin kin(StudioTransaction in, Sight sight, Catalogued of) {
    return new Kin(
        of.parent().flatMap(parent -> sight.find(in, parent.id())).isPresent(),
        new Setups(in).listChildren(of.id(), sight.standings(), MOST_CHILDREN));
  }

  /** The setups that were made from a setup, at most a hundred, the last changed first. */
  public List<Child> children(Caller caller, StudioId studio, SetupId of) {
    return database.inStudio(
        studio,
        caller.asker(),
        in -> {
          Sight sight = Sight.ask(in);
          StoredSetup parent = sight.get(in, of);
          return new Setups(in).listChildren(parent.id(), sight.standings(), MOST_CHILDREN);
        });
  }
}
