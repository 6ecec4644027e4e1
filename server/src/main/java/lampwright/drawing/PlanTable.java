package lampwright.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.StringJoiner;
import lampwright.engine.light.Direction;
import lampwright.engine.light.Point;
import lampwright.engine.unit.Bounds;
import lampwright.engine.unit.Degrees;
import lampwright.setup.Camera;
import lampwright.setup.Light;
import lampwright.setup.LightId;
import lampwright.setup.SetupDocument;
import lampwright.setup.Subject;
import lampwright.setup.Surface;
import lampwright.setup.figures.Figures;

/**
 * What a plan shows, as rows: the lights in build order, then camera, subjects with their marks,
 * and surfaces.
 */
public record PlanTable(List<Row> rows) {

  public PlanTable {
    rows = List.copyOf(rows);
  }

  /**
   * One thing on the plan, in words and the person's unit.
   *
   * @param number a light's place in the build order; empty for what has none
   * @param what "Key", "camera", a name in full
   * @param gear head, modifier and gels; may be empty
   * @param across to the right or left of the hit mark, seen from the camera
   * @param away beyond the hit mark, or nearer to the camera
   * @param height above the ground of the hit mark
   * @param distance from a light to its target and what that is called; may be empty
   * @param bearing where it stands, seen from the hit mark; empty on the mark
   */
  public record Row(
      Optional<Integer> number,
      String what,
      String gear,
      String across,
      String away,
      String height,
      String distance,
      String bearing) {

    /** Everything that has no column of its own where a table is narrow. */
    public String note() {
      StringJoiner note = new StringJoiner("; ");
      for (String part : List.of(gear, distance, bearing)) {
        if (!part.isEmpty()) {
          note.add(part);
        }
      }
      return note.toString();
    }

    /** The number and the name together, "1 Key". */
    public String numbered() {
      return number.map(n -> n + " " + what).orElse(what);
    }
  }

  /** The rows of a setup's plan. */
  public static PlanTable of(SetupDocument setup, Figures figures) {
    return of(setup, figures, setup.numbersInBuildOrder());
  }

  /** The rows of the plan of a setup that was made of another, whose numbers its lights keep. */
  public static PlanTable of(SetupDocument setup, Figures figures, Map<LightId, Integer> numbers) {
    List<Row> rows = new ArrayList<>();
    for (Light light : setup.lightsInBuildOrder()) {
      String distance =
          Lengths.inTable(figures.get(light.id()).distance().value())
              + " to "
              + light.target().name();
      rows.add(
          row(
              Optional.ofNullable(numbers.get(light.id())),
              role(light),
              gear(light),
              light.place(),
              distance,
              setup.camera()));
    }
    setup.camera().flatMap(PlanTable::camera).ifPresent(rows::add);
    for (Subject subject : setup.subjects()) {
      rows.add(
          row(
              Optional.empty(),
              subject.name(),
              facing(subject),
              subject.place(),
              "",
              setup.camera()));
      for (Subject.Mark mark : subject.path()) {
        String what = mark.name() + " (mark)";
        String cue = mark.cue().orElse("");
        rows.add(row(Optional.empty(), what, cue, mark.at(), "", setup.camera()));
      }
    }
    for (Surface surface : setup.surfaces()) {
      String height =
          surface.height().map(high -> Lengths.inTable(high.value()) + " high").orElse("");
      String name = surface.name();
      rows.add(
          row(Optional.empty(), name + ", one end", height, surface.from(), "", setup.camera()));
      rows.add(row(Optional.empty(), name + ", other end", "", surface.to(), "", setup.camera()));
    }
    return new PlanTable(rows);
  }

  /** "Key", as a heading writes it. */
  static String role(Light light) {
    String name = light.role().name();
    return name.charAt(0) + name.substring(1).toLowerCase(Locale.ROOT);
  }

  private static String gear(Light light) {
    StringJoiner gear = new StringJoiner(", ");
    gear.add((light.heads() > 1 ? light.heads() + " × " : "") + light.head().name());
    gear.add(light.modifierOrStandard().name());
    light.gels().forEach(gel -> gear.add(gel.name()));
    return gear.toString();
  }

  private static Optional<Row> camera(Camera camera) {
    return camera
        .place()
        .map(
            place -> {
              StringJoiner gear = new StringJoiner(", ");
              camera.body().ifPresent(body -> gear.add(body.name()));
              camera.lens().ifPresent(lens -> gear.add(lens.name()));
              return row(
                  Optional.empty(), "camera", gear.toString(), place, "", Optional.of(camera));
            });
  }

  private static String facing(Subject subject) {
    double degrees = subject.facing().value();
    return degrees == 0
        ? "faces the camera"
        : "faces "
            + Bounds.rounded(Math.abs(degrees), 0)
            + "° to camera "
            + (degrees > 0 ? "right" : "left");
  }

  private static Row row(
      Optional<Integer> number,
      String what,
      String gear,
      Point at,
      String distance,
      Optional<Camera> camera) {
    return new Row(
        number,
        what,
        gear,
        Lengths.across(at.x()),
        Lengths.away(at.y()),
        Lengths.inTable(at.z()),
        distance,
        bearing(at, camera));
  }

  /** A true bearing where the camera's is known, else an angle from the direction to the camera. */
  private static String bearing(Point at, Optional<Camera> camera) {
    if (Extent.fromHitMark(at) < 0.05) {
      return "";
    }
    Optional<Degrees> north = camera.flatMap(Camera::bearing);
    if (north.isPresent()) {
      Camera known = camera.orElseThrow();
      Point from = known.place().orElse(new Point(0, -1, 0));
      Point to = known.aim().orElse(new Point(0, 0, 0));
      double axis = StrictMath.atan2(to.x() - from.x(), to.y() - from.y());
      double there = StrictMath.atan2(at.x(), at.y());
      double bearing = north.get().value() + (there - axis) * 180 / Math.PI;
      long whole = Math.floorMod(Math.round(bearing), 360L);
      return String.format(Locale.ROOT, "bearing %03d°", whole);
    }
    Point ground = new Point(at.x(), at.y(), 0);
    double azimuth = Direction.of(new Point(0, 0, 0), ground).azimuth().value();
    return Bounds.rounded(Math.abs(azimuth), 0)
        + "° from the camera's side"
        + (Math.round(Math.abs(azimuth)) % 180 == 0 ? "" : azimuth > 0 ? ", right" : ", left");
  }
}
