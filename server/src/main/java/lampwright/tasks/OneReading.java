package lampwright.tasks;

import java.util.function.Supplier;
import lampwright.people.StudioId;
import lampwright.store.Database;

/**
 * Reads what one answer is put together from in one transaction, instead of one for each of its
 * parts. Each task asks leave as it does by itself; whoever writes meanwhile fails.
 */
public final class OneReading {

  private final Database database;

  public OneReading(Database database) {
    this.database = database;
  }

  /** Does what asks other tasks for what the caller may see of a studio; nothing long. */
  public <T> T of(Caller caller, StudioId studio, Supplier<T> work) {
    return database.reading(studio, caller.asker(), work);
  }
}
