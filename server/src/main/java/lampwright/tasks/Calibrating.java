package lampwright.tasks;

import lampwright.gear.calibration.Calibration;
import lampwright.gear.calibration.CalibrationSheet;
import lampwright.people.Permission;
import lampwright.people.StudioId;
import lampwright.store.Database;

/** Computes what a member's readings say of their gear. Stores nothing. */
public final class Calibrating {

  private final Database database;

  public Calibrating(Database database) {
    this.database = database;
  }

  /** Fits the readings of a sheet; for who may read the studio's setups. */
  public Calibration calibrate(Caller caller, StudioId studio, CalibrationSheet sheet) {
    database.inStudio(studio, caller.asker(), in -> Leave.ask(in, Permission.READ_SETUPS));
    // Outside of the transaction: computing must not hold a connection.
    return Calibration.of(sheet);
  }
}
