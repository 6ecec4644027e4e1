package lampwright.engine.sun;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lampwright.engine.exposure.Ev100;
import lampwright.engine.exposure.MeterConstant;
import lampwright.engine.unit.Bounds;
import lampwright.engine.unit.Degrees;
import lampwright.engine.unit.Seconds;
import lampwright.engine.unit.Stops;

/**
 * Looks ahead for the next times at which the sun stands as wanted.
 *
 * <p>Each solar day is searched once by halving a bracket over a smooth function, so the work is
 * bounded (under 120 positions a day), the answer is to the second and always the same.
 *
 * @param observer who looks
 * @param from nothing earlier is found
 * @param days how many solar days ahead, the one that runs besides; {@value #FEWEST_DAYS} to
 *     {@value #MOST_DAYS}
 */
public record SunSearch(Observer observer, Instant from, int days) {

  /** The shortest search. */
  public static final int FEWEST_DAYS = 1;

  /** The longest search: a year comes round, with a month to spare. */
  public static final int MOST_DAYS = 400;

  /** Checks the bound. */
  public SunSearch {
    Bounds.requireBetween("Days to search", days, "", FEWEST_DAYS, MOST_DAYS);
  }

  /**
   * Returns when the sun stands in a direction again.
   *
   * @param within how near is near enough, above 0; the sun is 0.53 degree wide
   */
  public SunAgain again(SunTarget target, Degrees within) {
    Bounds.requirePositive("Nearness", within.value(), "°");
    List<SunAgain.Spell> spells = new ArrayList<>();
    Optional<SunAgain.Spell> running = Optional.empty();
    Optional<Encounter> nearest = Optional.empty();
    SunDay day = SunDay.around(observer, from);
    for (int count = 0; count <= days || nearest.isEmpty(); count++, day = day.next()) {
      Encounter best = day.nearestTo(target);
      if (best.at().isBefore(from)) {
        continue;
      }
      nearest = Optional.of(nearer(nearest, best));
      if (best.miss().compareTo(within) <= 0) {
        running =
            Optional.of(
                running
                    .map(
                        spell ->
                            new SunAgain.Spell(
                                spell.first(), nearer(Optional.of(spell.nearest()), best), best))
                    .orElseGet(() -> new SunAgain.Spell(best, best, best)));
      } else {
        running.ifPresent(spells::add);
        running = Optional.empty();
      }
    }
    running.ifPresent(spells::add);
    return spells.isEmpty()
        ? new SunAgain.StaysAway(nearest.orElseThrow())
        : new SunAgain.Returns(spells);
  }

  /**
   * Returns when the sun stands at an elevation again.
   *
   * @param half in which half of the day
   * @param geometricElevation -90 to 90
   * @param most no more times than this, at least 1
   */
  public HeightAgain height(HalfDay half, Degrees geometricElevation, int most) {
    List<Encounter> times = new ArrayList<>();
    Optional<Encounter> nearest = Optional.empty();
    SunDay day = SunDay.around(observer, from);
    for (int count = 0;
        (count <= days || nearest.isEmpty()) && times.size() < most;
        count++, day = day.next()) {
      Crossing crossing = day.crossing(half, geometricElevation);
      if (crossing.encounter().at().isBefore(from)) {
        continue;
      }
      nearest = Optional.of(nearer(nearest, crossing.encounter()));
      if (crossing instanceof Crossing.At) {
        times.add(crossing.encounter());
      }
    }
    return times.isEmpty()
        ? new HeightAgain.OutOfReach(nearest.orElseThrow())
        : new HeightAgain.Reached(times);
  }

  /**
   * Returns when the ambient on a level plane falls to a level under a clear sky.
   *
   * @param level down to what the model tells with the sun at {@link ClearSky#DARKEST}
   * @param readingOverModel by how much a reading is above the model; zero to trust the model
   */
  public AmbientFall ambientFallsTo(Ev100 level, MeterConstant constant, Stops readingOverModel) {
    Ev100 ofModel = level.plus(readingOverModel.negated());
    Degrees now = observer.position(from).geometricElevation();
    if (ClearSky.smooth(now).ev100(constant).compareTo(ofModel) <= 0) {
      return new AmbientFall.IsLower();
    }
    Optional<Degrees> elevation = ClearSky.elevationOf(ofModel, constant);
    if (elevation.isEmpty()
        || !(height(HalfDay.SETTING, elevation.get(), 1)
            instanceof HeightAgain.Reached(List<Encounter> times))) {
      return new AmbientFall.StaysBrighter();
    }
    Encounter fallen = times.getFirst();
    Seconds waiting = new Seconds(fallen.at().getEpochSecond() - from.getEpochSecond());
    return new AmbientFall.Falls(fallen.at(), waiting, fallen.sun());
  }

  private static Encounter nearer(Optional<Encounter> known, Encounter other) {
    return known.isPresent() && known.get().miss().compareTo(other.miss()) <= 0
        ? known.get()
        : other;
  }
}
