package lampwright.web.api;

import io.javalin.http.Context;
import java.util.List;
import java.util.Set;
import lampwright.people.StudioId;
import lampwright.tasks.CalibratedGear;
import lampwright.tasks.GearCalibrating;
import lampwright.tasks.GearKeeping;
import lampwright.web.http.Door;
import lampwright.web.http.Preconditions;

/** What the readings that are kept with gear say of it. */
public final class GearCalibrationApi {

  private static final String ADOPT = "adopt";

  private final Door door;
  private final GearKeeping gear;
  private final GearCalibrating calibrating;

  public GearCalibrationApi(Door door, GearKeeping gear, GearCalibrating calibrating) {
    this.door = door;
    this.gear = gear;
    this.calibrating = calibrating;
  }

  private record Found(
      GearJson.One gear, boolean adopted, CalibrationJson calibration, List<String> assumed) {

    static Found of(CalibratedGear found) {
      return new Found(
          GearJson.One.of(found.gear()),
          found.adopted(),
          CalibrationJson.of(found.calibration()),
          found.assumed());
    }
  }

  /** Computes it; with {@code ?adopt=true} the gear takes it over as its next revision. */
  public void calibrate(Context context) {
    Query query = new Query(context, Set.of(ADOPT));
    boolean adopt = query.flag(ADOPT);
    query.mustBeSound();
    StudioId studio = SetupApi.studio(context);
    CalibratedGear found =
        adopt
            ? calibrating.adopt(
                door.caller(context), studio, GearApi.gear(context), basedOn(context))
            : calibrating.calibrate(door.caller(context), studio, GearApi.gear(context));
    Preconditions.show(context, found.gear().revision());
    context.json(Found.of(found));
  }

  private int basedOn(Context context) {
    return Preconditions.based(
        context,
        () ->
            gear.get(door.caller(context), SetupApi.studio(context), GearApi.gear(context))
                .revision());
  }
}
