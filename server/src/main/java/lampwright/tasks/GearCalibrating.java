package lampwright.tasks;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lampwright.document.Reading;
import lampwright.gear.calibration.Calibration;
import lampwright.gear.calibration.CalibrationSheet;
import lampwright.gear.stock.Adoption;
import lampwright.gear.stock.GearId;
import lampwright.gear.stock.GearItem;
import lampwright.gear.stock.GearKind;
import lampwright.gear.stock.KeptReadings;
import lampwright.people.Permission;
import lampwright.people.StudioId;
import lampwright.store.Database;
import lampwright.store.Gear;
import lampwright.store.StudioTransaction;

/** Calibrates gear by the readings that are kept with it; the gear changes only when told to. */
public final class GearCalibrating {

  private final Database database;
  private final Calibrating calibrating;

  public GearCalibrating(Database database, Calibrating calibrating) {
    this.database = database;
    this.calibrating = calibrating;
  }

  private record Before(KeptGear gear, KeptReadings readings) {}

  /**
   * Computes what the readings say; for who may read the gear.
   *
   * @throws Refused Clash where there are no readings
   */
  public CalibratedGear calibrate(Caller caller, StudioId studio, GearId id) {
    Before before = before(caller, studio, id, Permission.READ_SETUPS);
    return new CalibratedGear(
        before.gear(), calibration(caller, studio, before), before.readings().assumed(), false);
  }

  /**
   * Makes what the readings say the gear's next revision.
   *
   * @param basedOn the revision whose readings are meant
   * @throws Refused Clash where the readings do not tell it, or there are none
   */
  public CalibratedGear adopt(Caller caller, StudioId studio, GearId id, int basedOn) {
    Before before = before(caller, studio, id, Permission.WRITE_KITS);
    int revision = before.gear().revision();
    if (basedOn != revision) {
      throw Refused.stale(revision);
    }
    Calibration calibration = calibration(caller, studio, before);
    Adoption.Adoptable adoptable =
        switch (Adoption.of(before.gear().document(), calibration)) {
          case Adoption.Adoptable found -> found;
          case Adoption.NotAdoptable(String reason) ->
              throw new Refused(new Refusal.Clash("Nothing can be adopted. " + reason));
        };
    mustBeKeepable(adoptable.item());
    KeptGear after =
        database.inStudio(
            studio,
            caller.asker(),
            in -> {
              Leave.ask(in, Permission.WRITE_KITS);
              new Gear(in).holdKitsAndGear();
              KeptGear held = GearKeeping.get(in, id);
              Message message = new Message(adoptable.sentence());
              GearKeeping.save(in, held, revision, adoptable.item(), message);
              return GearKeeping.get(in, id);
            });
    return new CalibratedGear(after, calibration, before.readings().assumed(), true);
  }

  private Before before(Caller caller, StudioId studio, GearId id, Permission permission) {
    return database.inStudio(
        studio,
        caller.asker(),
        in -> {
          Leave.ask(in, permission);
          KeptGear gear = GearKeeping.get(in, id);
          if (gear.document().readings().isEmpty()) {
            throw new Refused(
                new Refusal.Clash("There are no readings kept with it. Put some into it first."));
          }
          return new Before(gear, KeptReadings.of(gear.document(), others(in)));
        });
  }

  private static List<GearItem> others(StudioTransaction in) {
    List<GearItem> others = new ArrayList<>();
    for (GearKind kind : List.of(GearKind.HEAD, GearKind.MODIFIER)) {
      GearKeeping.readable(in, new Gear(in).listAll(Optional.of(kind)))
          .forEach(gear -> others.add(gear.document()));
    }
    return others;
  }

  private Calibration calibration(Caller caller, StudioId studio, Before before) {
    CalibrationSheet sheet = before.readings().sheet();
    return switch (CalibrationSheet.FORM.read(CalibrationSheet.FORM.write(sheet))) {
      case Reading.Sound<CalibrationSheet>(CalibrationSheet sound) ->
          calibrating.calibrate(caller, studio, sound);
      case Reading.Faulty<CalibrationSheet> faulty -> throw Refused.invalid(faulty.problems());
    };
  }

  /** What a fit of wild readings gives may lie beyond what a document holds. */
  private static void mustBeKeepable(GearItem item) {
    if (GearItem.FORM.read(GearItem.FORM.write(item)) instanceof Reading.Faulty<GearItem> faulty) {
      throw Refused.invalid(faulty.problems());
    }
  }
}
