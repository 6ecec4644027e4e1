package lampwright.web.api;

import io.javalin.http.Context;
import lampwright.gear.calibration.CalibrationSheet;
import lampwright.tasks.Calibrating;
import lampwright.web.http.Door;

/** What readings of one's own gear say of it. */
public final class CalibrationApi {

  private final Door door;
  private final Calibrating calibrating;

  public CalibrationApi(Door door, Calibrating calibrating) {
    this.door = door;
    this.calibrating = calibrating;
  }

  /** The heads and modifiers of a sheet in the body, calibrated. */
  public void calibrate(Context context) {
    CalibrationSheet sheet = Documents.read(context, CalibrationSheet.FORM);
    context.json(
        CalibrationJson.of(
            calibrating.calibrate(door.caller(context), SetupApi.studio(context), sheet)));
  }
}
