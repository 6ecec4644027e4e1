package lampwright.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lampwright.drawing.PlanTable.Row;
import lampwright.engine.light.Direction;
import lampwright.engine.light.Point;
import lampwright.engine.unit.Degrees;
import lampwright.language.Notation;
import lampwright.setup.Camera;
import lampwright.setup.Light;
import lampwright.setup.LightId;
import lampwright.setup.SetupDocument;
import lampwright.setup.Subject;
import lampwright.setup.Surface;
import lampwright.setup.figures.Figures;

/** Writes the rows of a plan's table. */
record PlanRows(SetupDocument setup, Notation notation) {

  /** Nearer to the hit mark than this, a thing stands on it and has no bearing. */
  private static final double ON_MARK_M = 0.05;

  PlanTable table(Figures figures, Map<LightId, Integer> numbers) {
    List<Row> rows = new ArrayList<>();
    for (Light light : setup.lightsInBuildOrder()) {
      String length = notation.tape(figures.get(light.id()).distance());
      rows.add(
          row(
              Optional.ofNullable(numbers.get(light.id())),
              new Places(notation).role(light),
              gear(light),
              light.place(),
              notation.say("drawing.distance_to", length, light.target().name())));
    }
    setup.camera().flatMap(this::camera).ifPresent(rows::add);
    for (Subject subject : setup.subjects()) {
      rows.add(row(subject.name(), facing(subject), subject.place()));
      for (Subject.Mark mark : subject.path()) {
        String what = notation.say("drawing.mark_row", mark.name());
        rows.add(row(what, mark.cue().orElse(""), mark.at()));
      }
    }
    for (Surface surface : setup.surfaces()) {
      String height =
          surface
              .height()
              .map(high -> notation.say("drawing.high", notation.tape(high)))
              .orElse("");
      rows.add(row(notation.say("drawing.one_end", surface.name()), height, surface.from()));
      rows.add(row(notation.say("drawing.other_end", surface.name()), "", surface.to()));
    }
    return new PlanTable(rows);
  }

  private static String gear(Light light) {
    List<String> gear = new ArrayList<>();
    gear.add((light.heads() > 1 ? light.heads() + " × " : "") + light.head().name());
    gear.add(light.modifierOrStandard().name());
    light.gels().forEach(gel -> gear.add(gel.name()));
    return String.join(", ", gear);
  }

  private Optional<Row> camera(Camera camera) {
    List<String> gear = new ArrayList<>();
    camera.body().ifPresent(body -> gear.add(body.name()));
    camera.lens().ifPresent(lens -> gear.add(lens.name()));
    return camera
        .place()
        .map(place -> row(notation.say("drawing.camera"), String.join(", ", gear), place));
  }

  private String facing(Subject subject) {
    double degrees = subject.facing().value();
    return degrees == 0
        ? notation.say("drawing.faces_camera")
        : notation.say(
            degrees > 0 ? "drawing.faces_right" : "drawing.faces_left",
            notation.fixed(Math.abs(degrees), 0));
  }

  private Row row(String what, String gear, Point at) {
    return row(Optional.empty(), what, gear, at, "");
  }

  private Row row(Optional<Integer> number, String what, String gear, Point at, String distance) {
    Places places = new Places(notation);
    return new Row(
        number,
        what,
        gear,
        places.across(at.x()),
        places.away(at.y()),
        notation.tape(at.z()),
        distance,
        bearing(at));
  }

  /**
   * How far from the hit mark, and on which bearing; where the camera's bearing is not known, at
   * which angle from the direction to the camera.
   */
  private String bearing(Point at) {
    if (Extent.fromHitMark(at) < ON_MARK_M) {
      return "";
    }
    String length = notation.tape(Extent.fromHitMark(at));
    Optional<Degrees> north = setup.camera().flatMap(Camera::bearing);
    if (north.isPresent()) {
      Camera known = setup.camera().orElseThrow();
      Point from = known.place().orElse(new Point(0, -1, 0));
      Point to = known.aim().orElse(new Point(0, 0, 0));
      double axis = StrictMath.atan2(to.x() - from.x(), to.y() - from.y());
      double there = StrictMath.atan2(at.x(), at.y());
      double bearing = north.get().value() + (there - axis) * 180 / Math.PI;
      return notation.say("drawing.bearing", length, Places.bearing(new Degrees(bearing)));
    }
    Point ground = new Point(at.x(), at.y(), 0);
    double azimuth = Direction.of(new Point(0, 0, 0), ground).azimuth().value();
    String key =
        Math.round(Math.abs(azimuth)) % 180 == 0
            ? "drawing.from_camera_side"
            : azimuth > 0 ? "drawing.from_camera_side_right" : "drawing.from_camera_side_left";
    return notation.say(key, length, notation.fixed(Math.abs(azimuth), 0));
  }
}
