package lampwright.tasks;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lampwright.document.Reading;
import lampwright.gear.calibration.CalibrationReading;
import lampwright.gear.stock.GearId;
import lampwright.gear.stock.GearItem;
import lampwright.gear.stock.GearKind;
import lampwright.people.Permission;
import lampwright.people.StudioId;
import lampwright.setup.LightId;
import lampwright.setup.SetupDocument;
import lampwright.setup.SetupId;
import lampwright.setup.takes.ReadingsOfGear;
import lampwright.setup.takes.Take;
import lampwright.setup.takes.TakeId;
import lampwright.store.Database;
import lampwright.store.Gear;
import lampwright.store.StoredTake;
import lampwright.store.StudioTransaction;
import lampwright.store.Takes;

/** Keeps what the meter gave on the day with the heads that gave it, for their calibration. */
public final class GearMetering {

  private final Database database;

  public GearMetering(Database database) {
    this.database = database;
  }

  /**
   * Adds chosen readings of a take to the studio's heads of the same names, each as its next
   * revision. What a head has already, it does not get twice.
   *
   * @return the heads that got readings, as they are now
   * @throws Refused Invalid, with pointers into {@code /readings}, for a reading that does not tell
   *     of its head alone, and for a head that is not exactly one of the studio's
   */
  public List<KeptGear> keep(
      Caller caller, StudioId studio, SetupId setup, TakeId id, List<LightId> lights) {
    return database.inStudio(
        studio,
        caller.asker(),
        in -> {
          Sight sight = Sight.of(Leave.ask(in, Permission.WRITE_KITS));
          sight.get(in, setup);
          StoredTake stored = new Takes(in, setup).find(id).orElseThrow(Refused::notFound);
          Take take = StoredDocuments.read(Take.FORM, stored.document());
          SetupDocument shot = TakeLogging.shot(in, setup, take.setupRevision());
          List<CalibrationReading> readings =
              switch (ReadingsOfGear.of(take, lights, shot)) {
                case Reading.Sound<List<CalibrationReading>>(var sound) -> sound;
                case Reading.Faulty<List<CalibrationReading>>(var problems) ->
                    throw Refused.invalid(problems);
              };
          new Gear(in).holdKitsAndGear();
          Message message =
              new Message("Readings of " + take.label(stored.number()) + ", " + stored.day());
          return add(in, byHead(in, readings), message);
        });
  }

  private static Map<GearId, List<CalibrationReading>> byHead(
      StudioTransaction in, List<CalibrationReading> readings) {
    List<KeptGear> heads =
        GearKeeping.readable(in, new Gear(in).listAll(Optional.of(GearKind.HEAD)));
    Map<GearId, List<CalibrationReading>> byHead = new LinkedHashMap<>();
    for (int i = 0; i < readings.size(); i++) {
      CalibrationReading reading = readings.get(i);
      List<KeptGear> named =
          heads.stream().filter(of -> of.document().name().equals(reading.head())).toList();
      if (named.size() != 1) {
        throw Refused.invalid(
            "/readings/" + i,
            "Head (\"%s\") must be exactly one of the studio's; %s called so."
                .formatted(reading.head(), named.isEmpty() ? "none is" : named.size() + " are"));
      }
      byHead.computeIfAbsent(named.getFirst().id(), _ -> new ArrayList<>()).add(reading);
    }
    return byHead;
  }

  private static List<KeptGear> add(
      StudioTransaction in, Map<GearId, List<CalibrationReading>> byHead, Message message) {
    List<KeptGear> changed = new ArrayList<>();
    byHead.forEach(
        (id, readings) -> {
          KeptGear before = GearKeeping.get(in, id);
          GearItem after = before.document().withReadings(readings);
          if (!after.equals(before.document())) {
            mustBeKeepable(after);
            GearKeeping.save(in, before, before.revision(), after, message);
          }
          changed.add(GearKeeping.get(in, id));
        });
    return changed;
  }

  /** A head holds so many readings and no more, at distances of a bounded range. */
  private static void mustBeKeepable(GearItem item) {
    if (GearItem.FORM.read(GearItem.FORM.write(item)) instanceof Reading.Faulty<GearItem> faulty) {
      throw Refused.invalid("/readings", faulty.problems().getFirst().message());
    }
  }
}
