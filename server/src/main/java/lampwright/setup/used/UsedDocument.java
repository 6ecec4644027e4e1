package lampwright.setup.used;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import lampwright.document.Pointer;
import lampwright.document.Problem;
import lampwright.document.Problems;
import lampwright.document.Reading;
import lampwright.engine.Known;
import lampwright.engine.light.Point;
import lampwright.engine.light.UnitVector;
import lampwright.engine.unit.Metres;
import lampwright.engine.unit.Stops;
import lampwright.gear.Head;
import lampwright.setup.Light;
import lampwright.setup.LightId;
import lampwright.setup.MeterReading;
import lampwright.setup.SetupDocument;
import lampwright.setup.ShootingExposure;
import lampwright.setup.Used;

/**
 * Writes what was really used down as a complete setup.
 *
 * <p>A reading of the plan stays only where it still holds: it goes where the light was moved or
 * its head changed; where its power was turned, it moves along and is known by the dial; taken
 * together with the ambient, it goes where power or time changed.
 */
public final class UsedDocument {

  private final SetupDocument planned;
  private final Used used;
  private final ShootingExposure exposure;

  private UsedDocument(SetupDocument planned, Used used) {
    this.planned = planned;
    this.used = used;
    this.exposure = used.exposure().in(planned.exposure());
  }

  /**
   * The setup as it was used, or what is wrong with what was told, with pointers into the latter.
   */
  public static Reading<SetupDocument> of(SetupDocument planned, Used used) {
    UsedDocument of = new UsedDocument(planned, used);
    List<Problem> unknown = of.unknownLights();
    if (!unknown.isEmpty()) {
      return new Reading.Faulty<>(unknown);
    }
    // Read again, so that it is held to all that any document is held to.
    return switch (SetupDocument.FORM.read(SetupDocument.FORM.write(of.document()))) {
      case Reading.Sound<SetupDocument> sound -> sound;
      case Reading.Faulty<SetupDocument> faulty ->
          new Reading.Faulty<>(faulty.problems().stream().map(of::inWhatWasTold).toList());
    };
  }

  private List<Problem> unknownLights() {
    Problems problems = new Problems();
    List<LightId> known = planned.lights().stream().map(Light::id).toList();
    for (int i = 0; i < used.lights().size(); i++) {
      LightId id = used.lights().get(i).light();
      if (!known.contains(id)) {
        problems.add(
            Pointer.root().field("lights").item(i).field("light"),
            "Light (\""
                + id
                + "\") is not one of this setup's lights. They are: "
                + known.stream().map(LightId::text).collect(Collectors.joining(", "))
                + ".");
      }
    }
    return problems.list();
  }

  private SetupDocument document() {
    return new SetupDocument(
        planned.title(),
        planned.intent(),
        planned.moods(),
        planned.genre(),
        planned.occasion(),
        exposure,
        planned.camera(),
        planned.subjects(),
        planned.surfaces(),
        planned.lights().stream().map(this::light).toList(),
        planned.ambient(),
        planned.plan(),
        planned.buildOrder(),
        planned.cautions(),
        planned.outcome(),
        planned.retouchNotes());
  }

  private Optional<Used.OfLight> told(LightId id) {
    return used.lights().stream().filter(told -> told.light().equals(id)).findFirst();
  }

  private Light light(Light old) {
    Optional<Used.OfLight> told = told(old.id());
    Point place = told.flatMap(of -> place(old, of)).orElse(old.place());
    Head head = told.flatMap(Used.OfLight::head).orElse(old.head());
    Optional<Stops> down = told.flatMap(Used.OfLight::stopsDown).or(old::stopsDown);
    boolean isMoved = !place.equals(old.place());
    boolean isOtherHead = !head.equals(old.head());
    Optional<MeterReading> kept =
        isMoved || isOtherHead ? Optional.empty() : old.reading().flatMap(r -> kept(r, old, down));
    return new Light(
        old.id(),
        old.role(),
        old.reason(),
        head,
        old.heads(),
        old.pops(),
        old.modifier(),
        isOtherHead ? Optional.empty() : old.output(),
        old.gels(),
        place,
        isMoved ? Known.SET : old.placeKnown(),
        old.aim(),
        old.target(),
        old.stand(),
        down,
        told.flatMap(Used.OfLight::reading).or(() -> kept));
  }

  private static Optional<Point> place(Light old, Used.OfLight told) {
    return told.place().or(() -> told.distance().map(distance -> at(old, distance)));
  }

  private static Point at(Light old, Metres distance) {
    Point target = old.target().at();
    return target.moved(UnitVector.between(target, old.place()), distance.value());
  }

  private Optional<MeterReading> kept(MeterReading reading, Light old, Optional<Stops> down) {
    Stops turned = old.stopsDown().flatMap(was -> down.map(was::minus)).orElse(Stops.ZERO);
    boolean isTurned = turned.value() != 0;
    boolean isOtherTime = !exposure.time().equals(planned.exposure().time());
    if (reading.includesAmbient() && (isTurned || isOtherTime)) {
      return Optional.empty();
    }
    MeterReading moved = isTurned ? reading.turnedBy(turned) : reading;
    boolean isOtherIso = !exposure.iso().equals(planned.exposure().iso());
    return Optional.of(isOtherIso ? moved.withIsoOr(planned.exposure().iso()) : moved);
  }

  /** A problem of the document, where it stands in what was told. */
  private Problem inWhatWasTold(Problem problem) {
    String[] parts = problem.pointer().split("/", 4);
    if (parts.length < 4 || !parts[1].equals("lights")) {
      return problem;
    }
    Light light = planned.lights().get(Integer.parseInt(parts[2]));
    for (int i = 0; i < used.lights().size(); i++) {
      Used.OfLight told = used.lights().get(i);
      if (told.light().equals(light.id())) {
        boolean byDistance = parts[3].startsWith("place") && told.distance().isPresent();
        return new Problem(
            "/lights/" + i + "/" + (byDistance ? "distance_m" : parts[3]), problem.message());
      }
    }
    return new Problem(
        "/exposure/time",
        "The reading of light \""
            + light.id()
            + "\" was taken together with the ambient at the planned time. Tell its reading or its"
            + " power too.");
  }
}
