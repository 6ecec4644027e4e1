package lampwright.learning.drill;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import lampwright.engine.sun.Observer;
import lampwright.engine.sun.PlaceOnEarth;
import lampwright.engine.sun.SunPosition;
import lampwright.engine.unit.Degrees;
import lampwright.engine.unit.Metres;
import lampwright.language.Filling;
import lampwright.language.Said;
import lampwright.setup.Camera;
import lampwright.setup.Occasion;
import lampwright.setup.Subject;
import lampwright.setup.figures.SunComputation;

/** Where the sun will stand for the camera, and how long its shadows will be. */
final class SunDirection implements Maker {

  private static final int HALF_HOURS = 48;
  private static final double LOWEST_DEG = 8;
  private static final double HIGHEST_DEG = 65;

  /** From the middle of a quarter; beyond it one could argue. */
  private static final double SURE_DEG = 30;

  /** Four quarters, clockwise from where the camera looks. */
  private enum Quarter {
    FRONT,
    RIGHT,
    BEHIND,
    LEFT;

    Said text() {
      return Said.of(
          switch (this) {
            case FRONT -> "drilling.sunDirection.option.front";
            case RIGHT -> "drilling.sunDirection.option.right";
            case BEHIND -> "drilling.sunDirection.option.behind";
            case LEFT -> "drilling.sunDirection.option.left";
          });
    }

    double middleDeg() {
      return switch (this) {
        case FRONT -> 0;
        case RIGHT -> 90;
        case BEHIND -> 180;
        case LEFT -> 270;
      };
    }
  }

  /** The sun at a time. */
  private record Sun(LocalTime time, double bearingDeg, double elevationDeg) {}

  @Override
  public Optional<Drill> make(Material material, Dice dice) {
    Optional<Occasion> occasion = material.setup().occasion();
    Optional<PlaceOnEarth> place = SunComputation.placeOf(material.setup());
    Optional<LocalDate> date = occasion.flatMap(Occasion::date);
    Optional<ZoneOffset> offset = occasion.flatMap(Occasion::utcOffset);
    if (place.isEmpty() || date.isEmpty() || offset.isEmpty()) {
      return Optional.empty();
    }
    Observer observer = Observer.of(place.get());
    LocalTime time =
        LocalTime.MIDNIGHT.plusMinutes(
            30L * dice.pick(IntStream.range(0, HALF_HOURS).boxed().toList()));
    SunPosition position = observer.position(date.get().atTime(time).toInstant(offset.get()));
    Sun sun =
        new Sun(
            time,
            Math.rint(position.azimuth().value()) % 360,
            Math.rint(position.elevation().value()));
    if (sun.elevationDeg() < LOWEST_DEG || sun.elevationDeg() > HIGHEST_DEG) {
      return Optional.empty();
    }
    Said given =
        Said.of(
            "drilling.sunDirection.given",
            Filling.text(occasion.flatMap(Occasion::place).map(Occasion.Place::name).orElse("")),
            Filling.text(date.get()),
            Filling.text(sun.time()),
            Filling.number(sun.bearingDeg(), 0),
            Filling.number(sun.elevationDeg(), 0));
    return dice.flip() ? side(material, sun, given) : shadow(material, sun, given);
  }

  private static Optional<Drill> side(Material material, Sun sun, Said given) {
    return material
        .setup()
        .camera()
        .flatMap(Camera::bearing)
        .map(bearing -> new Degrees(Math.rint(bearing.value()) % 360))
        .flatMap(
            bearing ->
                quarter(sun.bearingDeg() - bearing.value())
                    .map(right -> side(sun, given, bearing, right)));
  }

  private static Drill side(Sun sun, Said given, Degrees bearing, Quarter right) {
    double clockwise = (sun.bearingDeg() - bearing.value() + 360) % 360;
    return new Drill(
        DrillKind.SUN_DIRECTION,
        List.of(
            given,
            Said.of("drilling.sunDirection.given.camera", Filling.number(bearing.value(), 0))),
        Said.of("drilling.sunDirection.question.side"),
        Choosing.among(
            Arrays.asList(Quarter.values()),
            right,
            Quarter::text,
            option ->
                (option.middleDeg() + right.middleDeg()) % 360 == 0
                    ? Optional.of(Said.of("drilling.sunDirection.slip.mirrored"))
                    : (option.middleDeg() - right.middleDeg() + 360) % 360 == 180
                        ? Optional.of(Said.of("drilling.sunDirection.slip.opposite"))
                        : Optional.empty()),
        List.of(
            Said.of(
                "drilling.sunDirection.why.side",
                Filling.number(sun.bearingDeg(), 0),
                Filling.number(bearing.value(), 0),
                Filling.number(clockwise, 0))),
        List.of());
  }

  private static Optional<Quarter> quarter(double clockwiseDeg) {
    return Arrays.stream(Quarter.values())
        .filter(
            quarter -> {
              double off = Math.abs(clockwiseDeg - quarter.middleDeg()) % 360;
              return Math.min(off, 360 - off) <= SURE_DEG;
            })
        .findFirst();
  }

  private static Optional<Drill> shadow(Material material, Sun sun, Said given) {
    return material.setup().subjects().stream()
        .filter(subject -> subject.height().isPresent())
        .findFirst()
        .map(subject -> shadow(sun, given, subject, subject.height().orElseThrow()));
  }

  private static Drill shadow(Sun sun, Said given, Subject subject, Metres height) {
    double heightM = Fair.shown(height.value(), 1);
    double radians = sun.elevationDeg() * StrictMath.PI / 180;
    double tangent = StrictMath.sin(radians) / StrictMath.cos(radians);
    double longM = heightM / tangent;
    return new Drill(
        DrillKind.SUN_DIRECTION,
        List.of(given),
        Said.of(
            "drilling.sunDirection.question.shadow",
            Filling.text(subject.name()),
            Filling.length(heightM, 1)),
        Fair.number(
            Measure.GROUND_LENGTH_M,
            longM,
            new Answer.Slip(heightM * tangent, Said.of("drilling.sunDirection.slip.tangent")),
            new Answer.Slip(
                heightM / StrictMath.sin(radians), Said.of("drilling.sunDirection.slip.ray"))),
        List.of(
            Said.of(
                "drilling.sunDirection.why.shadow",
                Filling.length(heightM, 1),
                Filling.number(sun.elevationDeg(), 0),
                Filling.number(tangent, 2),
                Filling.length(longM, 1))),
        List.of());
  }
}
