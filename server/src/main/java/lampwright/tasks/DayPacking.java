package lampwright.tasks;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lampwright.engine.unit.Amperes;
import lampwright.gear.Kit;
import lampwright.gear.KitId;
import lampwright.people.Ids;
import lampwright.people.StudioId;
import lampwright.place.Location;
import lampwright.place.LocationPermission;
import lampwright.place.Power;
import lampwright.setup.Occasion;
import lampwright.setup.SetupDocument;
import lampwright.setup.SetupId;
import lampwright.setup.adapting.Answer;
import lampwright.setup.adapting.Wishes;
import lampwright.setup.packing.BatteryPlan;
import lampwright.setup.packing.BatteryPlanning;
import lampwright.setup.packing.DayPlan;
import lampwright.setup.packing.DayWishes;
import lampwright.setup.packing.KitsTogether;
import lampwright.setup.packing.PackingList;
import lampwright.setup.packing.SunEvent;
import lampwright.setup.packing.WantedLight;
import lampwright.setup.packing.WorkTimes;
import lampwright.store.Database;
import lampwright.store.StudioTransaction;

/** Says what a day with stored setups takes: gear, batteries, and who does what when. */
public final class DayPacking {

  /** More setups than this are no day. */
  public static final int MOST_SETUPS = 8;

  /** More kits than this do not go into a van. */
  public static final int MOST_KITS = 4;

  private final Database database;
  private final Adapting adapting;
  private final Clock clock;

  /**
   * @param clock says which day it is where nobody names one
   */
  public DayPacking(Database database, Adapting adapting, Clock clock) {
    this.database = database;
    this.adapting = adapting;
    this.clock = clock;
  }

  /**
   * What is asked.
   *
   * @param setups in the order of the day, 1 to {@value #MOST_SETUPS}
   * @param kits that come along, at most {@value #MOST_KITS}
   * @param isAdapted whether the setups are made with the kits, and not with what they were made
   *     with
   * @param wanted the light of each setup; of fewer than the setups, the last ones' light
   * @param notBefore when the crew is there at the soonest, by the clocks of the first place
   * @param day by the clocks of the first place; today where absent
   * @param isCold whether it will be about 0 °C
   */
  public record Asked(
      List<SetupId> setups,
      List<String> kits,
      boolean isAdapted,
      int hands,
      WorkTimes times,
      List<Optional<WantedLight>> wanted,
      Optional<LocalTime> notBefore,
      Optional<LocalDate> day,
      boolean isCold) {

    public Asked {
      setups = List.copyOf(setups);
      kits = List.copyOf(kits);
      wanted = List.copyOf(wanted);
    }
  }

  /**
   * One setup of the day.
   *
   * @param made the document that is built: as it was, or as the kits make it
   * @param isShort whether the kits cannot make all of its lights
   * @param place the studio's location that it is shot at
   * @param wanted when its light is there; absent where none was asked for or found
   */
  public record OfDay(
      Catalogued setup,
      SetupDocument made,
      boolean isShort,
      Optional<Location> place,
      Optional<Instant> wanted) {}

  /**
   * What the day takes.
   *
   * @param offset of the clocks of the first place on that day
   * @param sun what it does on that day where the first setup is that says its place
   * @param leaveIsOver permissions that no longer hold on that day
   */
  public record Packed(
      LocalDate day,
      ZoneOffset offset,
      List<OfDay> setups,
      List<KeptKit> kits,
      PackingList list,
      BatteryPlan batteries,
      DayPlan plan,
      List<SunEvent.Timed> sun,
      List<LocationPermission> leaveIsOver) {

    public Packed {
      setups = List.copyOf(setups);
      kits = List.copyOf(kits);
      sun = List.copyOf(sun);
      leaveIsOver = List.copyOf(leaveIsOver);
    }
  }

  private record Stored(
      List<Catalogued> setups, List<Optional<Location>> places, List<KeptKit> kits) {}

  /**
   * Says what the day takes.
   *
   * @throws Refused NotFound for a setup that is not there, Invalid at {@code /setup} or {@code
   *     /kit} for none or too many, and at {@code /kit} for one that the studio does not have
   */
  public Packed pack(Caller caller, StudioId studio, Asked asked) {
    check(asked);
    Stored stored = database.inStudio(studio, caller.asker(), in -> stored(in, asked));
    List<Kit> kits = stored.kits().stream().map(KeptKit::document).toList();
    ZoneId clocks =
        stored
            .places()
            .getFirst()
            .flatMap(Location::timeZone)
            .or(() -> offsetOf(stored.setups().getFirst().document()).map(offset -> offset))
            .orElse(ZoneOffset.UTC);
    LocalDate day = asked.day().orElseGet(() -> LocalDate.ofInstant(clock.instant(), clocks));
    ZoneOffset offset = clocks.getRules().getOffset(day.atTime(LocalTime.NOON));
    List<OfDay> ofDay = new ArrayList<>();
    for (int i = 0; i < stored.setups().size(); i++) {
      SetupDocument original = stored.setups().get(i).document();
      Optional<Answer> answer =
          asked.isAdapted() && !kits.isEmpty()
              ? Optional.of(
                  adapting.adapt(caller, studio, original, KitsTogether.of(kits), Wishes.none()))
              : Optional.empty();
      ofDay.add(
          new OfDay(
              stored.setups().get(i),
              answer.flatMap(DayPacking::made).orElse(original),
              answer.filter(Answer.NotEnoughGear.class::isInstance).isPresent(),
              stored.places().get(i),
              wanted(asked, i).flatMap(light -> light.find(original, day, offset))));
    }
    return packed(asked, day, offset, ofDay, stored.kits());
  }

  private static void check(Asked asked) {
    if (asked.setups().isEmpty() || asked.setups().size() > MOST_SETUPS) {
      throw Refused.invalid(
          "/setup",
          "Setups (%d) must be 1 to %d. Name each as setup=ID."
              .formatted(asked.setups().size(), MOST_SETUPS));
    }
    if (asked.isAdapted() && asked.kits().isEmpty()) {
      throw Refused.invalid(
          "/kit", "Kit must be named where setups are adapted. Name each as kit=ID.");
    }
    if (asked.kits().size() > MOST_KITS) {
      throw Refused.invalid(
          "/kit",
          "Kits (%d) must be at most %d. Leave some at home."
              .formatted(asked.kits().size(), MOST_KITS));
    }
  }

  private static Packed packed(
      Asked asked, LocalDate day, ZoneOffset offset, List<OfDay> ofDay, List<KeptKit> kept) {
    List<Kit> kits = kept.stream().map(KeptKit::document).toList();
    List<SetupDocument> made = ofDay.stream().map(OfDay::made).toList();
    BatteryPlan batteries =
        BatteryPlanning.of(
            made, kits, ofDay.stream().map(DayPacking::circuit).toList(), asked.isCold());
    DayWishes wishes =
        new DayWishes(
            asked.hands(),
            asked.times(),
            ofDay.stream().map(OfDay::wanted).toList(),
            asked.notBefore().map(time -> day.atTime(time).toInstant(offset)));
    return new Packed(
        day,
        offset,
        ofDay,
        kept,
        PackingList.of(made, kits, batteries.spares()),
        batteries,
        DayPlan.of(made, wishes),
        ofDay.stream()
            .map(one -> SunEvent.of(one.setup().document(), day, offset))
            .filter(events -> !events.isEmpty())
            .findFirst()
            .orElse(List.of()),
        ofDay.stream()
            .flatMap(one -> one.place().stream())
            .distinct()
            .flatMap(place -> place.permissions().stream())
            .filter(leave -> leave.isOver(day))
            .toList());
  }

  private static Optional<SetupDocument> made(Answer answer) {
    return switch (answer) {
      case Answer.Adapted adapted -> Optional.of(adapted.adaptations().getFirst().document());
      case Answer.NotEnoughGear less ->
          less.nearest().stream().findFirst().map(nearest -> nearest.document());
    };
  }

  private static Optional<Amperes> circuit(OfDay one) {
    return one.place().flatMap(Location::power).flatMap(Power::current);
  }

  /** Lights that are asked for fill up from the last setup: it is the one that is waited for. */
  private static Optional<WantedLight> wanted(Asked asked, int setup) {
    int index = setup - asked.setups().size() + asked.wanted().size();
    return index < 0 ? Optional.empty() : asked.wanted().get(index);
  }

  private static Optional<ZoneId> offsetOf(SetupDocument setup) {
    return setup.occasion().flatMap(Occasion::utcOffset).map(offset -> offset);
  }

  private static Stored stored(StudioTransaction in, Asked asked) {
    Sight sight = Sight.ask(in);
    List<Catalogued> setups =
        asked.setups().stream().map(id -> Cataloguing.get(in, sight, id)).toList();
    return new Stored(
        setups,
        setups.stream().map(setup -> place(in, setup.document())).toList(),
        asked.kits().stream().map(id -> kit(in, id)).toList());
  }

  private static Optional<Location> place(StudioTransaction in, SetupDocument setup) {
    return setup
        .occasion()
        .flatMap(Occasion::place)
        .flatMap(Occasion.Place::location)
        .flatMap(id -> LocationKeeping.find(in, id))
        .map(KeptLocation::document);
  }

  private static KeptKit kit(StudioTransaction in, String id) {
    Optional<KeptKit> found = Ids.isId(id) ? KitKeeping.find(in, new KitId(id)) : Optional.empty();
    return found.orElseThrow(
        () -> Refused.invalid("/kit", "Kit must be the id of one of the studio's kits."));
  }
}
