package lampwright.setup.figures;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lampwright.engine.light.Direction;
import lampwright.engine.light.Pattern;
import lampwright.engine.light.Point;
import lampwright.engine.sun.ClearSky;
import lampwright.engine.sun.Observer;
import lampwright.engine.sun.PlaceOnEarth;
import lampwright.engine.sun.SunPosition;
import lampwright.engine.unit.Degrees;
import lampwright.setup.Camera;
import lampwright.setup.Occasion;
import lampwright.setup.SetupDocument;
import lampwright.setup.Subject;

/** Computes where the sun stood for a setup: in standard air, at the height of the sea. */
public final class SunComputation {

  private static final String BEARING = "/camera/bearing_deg";

  private SunComputation() {}

  /**
   * The sun of a setup; none indoors and where place, date, time or the clock's offset is not known
   * (see {@link #needs}).
   */
  public static Optional<SunFigures> find(SetupDocument setup) {
    if (isIndoors(setup)) {
      return Optional.empty();
    }
    Optional<Occasion> occasion = setup.occasion();
    return placeOf(setup)
        .flatMap(
            place ->
                occasion
                    .flatMap(SunComputation::instantOf)
                    .map(at -> figures(setup, Observer.of(place), at)));
  }

  /** What a setup would have to say for every figure of its sun; nothing indoors. */
  public static List<String> needs(SetupDocument setup) {
    if (isIndoors(setup)) {
      return List.of();
    }
    List<String> needs = new ArrayList<>();
    Optional<Occasion> occasion = setup.occasion();
    Optional<Occasion.Place> place = occasion.flatMap(Occasion::place);
    need(needs, place.flatMap(Occasion.Place::latitude), "/occasion/place/latitude_deg");
    need(needs, place.flatMap(Occasion.Place::longitude), "/occasion/place/longitude_deg");
    need(needs, occasion.flatMap(Occasion::date), "/occasion/date");
    need(needs, occasion.flatMap(Occasion::time), "/occasion/time");
    need(needs, occasion.flatMap(Occasion::utcOffset), "/occasion/utc_offset");
    needs.addAll(needsOfFigures(setup));
    return List.copyOf(needs);
  }

  /** Where the setup was made, if it says so. */
  public static Optional<PlaceOnEarth> placeOf(SetupDocument setup) {
    return setup
        .occasion()
        .flatMap(Occasion::place)
        .flatMap(
            place ->
                place
                    .latitude()
                    .flatMap(
                        latitude ->
                            place
                                .longitude()
                                .map(longitude -> PlaceOnEarth.of(latitude, longitude))));
  }

  static boolean isIndoors(SetupDocument setup) {
    return setup.occasion().flatMap(Occasion::place).flatMap(Occasion.Place::indoors).orElse(false);
  }

  private static Optional<Instant> instantOf(Occasion occasion) {
    return occasion
        .date()
        .flatMap(
            date ->
                occasion
                    .time()
                    .flatMap(
                        time -> occasion.utcOffset().map(o -> date.atTime(time).toInstant(o))));
  }

  private static List<String> needsOfFigures(SetupDocument setup) {
    List<String> needs = new ArrayList<>();
    need(needs, setup.camera().flatMap(Camera::bearing), BEARING);
    if (!setup.subjects().isEmpty()) {
      need(needs, setup.subjects().getFirst().height(), "/subjects/0/height_m");
    }
    return needs;
  }

  private static void need(List<String> needs, Optional<?> value, String pointer) {
    if (value.isEmpty()) {
      needs.add(pointer);
    }
  }

  private static SunFigures figures(SetupDocument setup, Observer observer, Instant at) {
    SunPosition sun = observer.position(at);
    Optional<Degrees> bearing = setup.camera().flatMap(Camera::bearing);
    Optional<Subject> subject = setup.subjects().stream().findFirst();
    boolean isDark = sun.geometricElevation().compareTo(ClearSky.DARKEST) < 0;
    return new SunFigures(
        observer,
        at,
        sun,
        bearing.map(
            known ->
                new SunFigures.OfCamera(
                    sun.relativeAzimuth(known), sun.angleToAxis(known, tilt(setup)))),
        bearing.flatMap(known -> subject.map(who -> ofSubject(sun, known, who, setup))),
        subject.flatMap(Subject::height).flatMap(sun::shadow),
        isDark ? Optional.empty() : Optional.of(ClearSky.smooth(sun.geometricElevation())),
        needsOfFigures(setup));
  }

  private static SunFigures.OfSubject ofSubject(
      SunPosition sun, Degrees bearing, Subject subject, SetupDocument setup) {
    Direction direction =
        setup
            .camera()
            .flatMap(Camera::place)
            .map(camera -> sun.fromSubject(bearing, subject.place(), camera))
            .orElseGet(() -> sun.fromSubject(bearing));
    return new SunFigures.OfSubject(
        direction,
        sun.elevation().value() > 0
            ? Optional.of(Pattern.of(direction.fromNose(subject.facing())))
            : Optional.empty());
  }

  /** How the camera is tilted; level where it does not say at what it aims. */
  private static Degrees tilt(SetupDocument setup) {
    return setup
        .camera()
        .flatMap(camera -> camera.place().flatMap(from -> camera.aim().map(to -> tilt(from, to))))
        .orElse(new Degrees(0));
  }

  private static Degrees tilt(Point from, Point to) {
    double x = to.x() - from.x();
    double y = to.y() - from.y();
    return Degrees.ofRadians(StrictMath.atan2(to.z() - from.z(), Math.sqrt(x * x + y * y)));
  }
}
