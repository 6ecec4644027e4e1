package lampwright.tasks;

import lampwright.engine.beam.CandelaFile;
import lampwright.people.Permission;
import lampwright.people.StudioId;
import lampwright.store.Database;

/** Reads files of measured intensities for a member. Stores nothing. */
public final class PhotometricFiles {

  private final Database database;

  public PhotometricFiles(Database database) {
    this.database = database;
  }

  /**
   * The table in a file's text.
   *
   * @throws Refused Invalid where the file cannot be used, with the line and the reason
   */
  public CandelaFile.Read read(Caller caller, StudioId studio, String text) {
    database.inStudio(studio, caller.asker(), in -> Leave.ask(in, Permission.READ_SETUPS));
    // Outside of the transaction: reading must not hold a connection.
    return switch (CandelaFile.read(text)) {
      case CandelaFile.Read file -> file;
      case CandelaFile.Refused(int line, String reason) ->
          throw Refused.invalid("", "Line " + line + ": " + reason);
    };
  }
}
