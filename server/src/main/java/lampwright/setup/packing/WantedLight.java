package lampwright.setup.packing;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.Optional;
import lampwright.engine.sun.Crossing;
import lampwright.engine.sun.HalfDay;
import lampwright.engine.sun.Observer;
import lampwright.engine.sun.SunDay;
import lampwright.engine.sun.SunPhase;
import lampwright.setup.SetupDocument;
import lampwright.setup.figures.SunComputation;
import lampwright.setup.figures.SunFigures;

/** The light that a setup waits for: when its first frame is to be made. */
public sealed interface WantedLight {

  /** At a time of the place's clocks. */
  record At(LocalTime time) implements WantedLight {}

  /** When the sun stands as high again as it stood for the setup, in the same half of the day. */
  record SunAsItWas() implements WantedLight {}

  /** When the sun reaches the lower bound of a phase: sunset ends golden light with the sun up. */
  record SunAt(SunPhase phase, HalfDay half) implements WantedLight {}

  /**
   * When that is.
   *
   * @param offset of the place's clocks on that day from universal time
   * @return empty where the setup does not say where or how high its sun stood, and on a day on
   *     which the sun does not come there
   */
  default Optional<Instant> find(SetupDocument setup, LocalDate day, ZoneOffset offset) {
    return switch (this) {
      case At(LocalTime time) -> Optional.of(day.atTime(time).toInstant(offset));
      case SunAsItWas() -> SunComputation.find(setup).flatMap(then -> again(then, day, offset));
      case SunAt(SunPhase phase, HalfDay half) ->
          SunComputation.placeOf(setup)
              .flatMap(
                  place ->
                      at(
                          SunDay.of(Observer.of(place), day, offset)
                              .crossing(half, phase.lowest())));
    };
  }

  private static Optional<Instant> again(SunFigures then, LocalDate day, ZoneOffset offset) {
    return at(
        SunDay.of(then.observer(), day, offset)
            .crossing(then.observer().halfDay(then.at()), then.position().geometricElevation()));
  }

  private static Optional<Instant> at(Crossing crossing) {
    return crossing instanceof Crossing.At(var encounter)
        ? Optional.of(encounter.at())
        : Optional.empty();
  }
}
