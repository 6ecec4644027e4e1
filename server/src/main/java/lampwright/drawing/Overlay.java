package lampwright.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lampwright.drawing.Label.Kind;
import lampwright.engine.light.Point;
import lampwright.language.Notation;
import lampwright.setup.Camera;
import lampwright.setup.Light;
import lampwright.setup.LightId;
import lampwright.setup.SetupDocument;
import lampwright.setup.Subject;
import lampwright.setup.Surface;
import lampwright.setup.comparing.LightPairs;

/**
 * Two setups, or two revisions of one, on one plan: the first dashed, the second as on its own
 * plan. A light or camera that moved has a thin arrow from where it stood, with how far it went
 * over the ground; one whose height changed says so in the table. Which light is which, {@link
 * LightPairs} says.
 */
public final class Overlay {

  /** A shorter way is no move: a stand is set to about this. */
  private static final double MOVED_M = 0.05;

  private static final double ARROW_HEAD = 10;
  private static final double DOT = 6;

  private final SetupDocument before;
  private final SetupDocument after;
  private final Notation notation;
  private final LightPairs pairs;
  private final List<LightOnPlan> old;
  private final List<LightOnPlan> lights;
  private final Sheet sheet;

  private Overlay(SetupDocument before, SetupDocument after, Notation notation) {
    this.before = before;
    this.after = after;
    this.notation = notation;
    this.pairs = LightPairs.of(before, after);
    this.old = all(before);
    this.lights = all(after);
    List<Point> places = new ArrayList<>();
    List<Point> ends = new ArrayList<>();
    for (SetupDocument setup : List.of(before, after)) {
      for (Subject subject : setup.subjects()) {
        places.add(subject.place());
        subject.path().forEach(mark -> places.add(mark.at()));
      }
      setup.camera().flatMap(Camera::place).ifPresent(places::add);
    }
    for (LightOnPlan light : both()) {
      places.add(light.light().place());
      ends.addAll(light.faceEnds());
    }
    for (Surface surface : after.surfaces()) {
      places.add(PlanGround.nearest(surface));
      ends.add(surface.from());
      ends.add(surface.to());
    }
    Sheet.Format format = Sheet.Format.PAGE;
    Extent extent = Extent.around(places, ends, format.groundShare);
    this.sheet = new Sheet(format, View.PLAN, extent, notation);
  }

  private static List<LightOnPlan> all(SetupDocument setup) {
    return LightOnPlan.all(
        setup, setup.numbersInBuildOrder(), light -> light.place().distanceTo(light.target().at()));
  }

  private List<LightOnPlan> both() {
    List<LightOnPlan> both = new ArrayList<>(old);
    both.addAll(lights);
    return both;
  }

  /** The drawing of both. */
  public static Svg of(SetupDocument before, SetupDocument after, Notation notation) {
    return draw(before, after, notation).svg();
  }

  static Drawing draw(SetupDocument before, SetupDocument after, Notation notation) {
    return new Overlay(before, after, notation).drawing();
  }

  /** What became of each light and of the camera. */
  public static DrawingTable table(SetupDocument before, SetupDocument after, Notation notation) {
    return new Overlay(before, after, notation).table();
  }

  /** From where to where on the ground; empty for what stayed or was not there. */
  private Optional<Move> move(Light light) {
    return pairs.before(light.id()).flatMap(was -> Move.between(was.place(), light.place()));
  }

  private Optional<Move> cameraMove() {
    return before
        .camera()
        .flatMap(Camera::place)
        .flatMap(
            was -> after.camera().flatMap(Camera::place).flatMap(now -> Move.between(was, now)));
  }

  private record Move(Point from, Point to) {

    static Optional<Move> between(Point from, Point to) {
      Move move = new Move(from, to);
      return move.metres() > MOVED_M ? Optional.of(move) : Optional.empty();
    }

    double metres() {
      return Extent.fromHitMark(new Point(to.x() - from.x(), to.y() - from.y(), 0));
    }
  }

  private List<Move> moves() {
    List<Move> moves = new ArrayList<>();
    after.lights().forEach(light -> move(light).ifPresent(moves::add));
    cameraMove().ifPresent(moves::add);
    return moves;
  }

  private Optional<Segment> arrow(Move move) {
    return sheet.frame().clip(new Segment(sheet.spot(move.from()), sheet.spot(move.to())));
  }

  private Drawing drawing() {
    PlanLights now = new PlanLights(sheet, lights);
    PlanLights then = new PlanLights(sheet, old.stream().filter(this::isElsewhere).toList());
    PlanGround ground = new PlanGround(sheet, after);
    Optional<PlanCamera> camera = after.camera().map(one -> new PlanCamera(sheet, one));
    PlanFrame frame = new PlanFrame(sheet, camera.flatMap(PlanCamera::north));
    PlacedLabels labels =
        new PlacedLabels(sheet.format(), labels(now, then, ground, camera, frame));
    Markup body = new Markup();
    body.openClipped(sheet.frame());
    now.drawWedges(body);
    body.close("svg");
    frame.draw(body);
    ground.drawSurfaces(body);
    camera.ifPresent(one -> one.draw(body));
    ground.drawPaths(body);
    ground.drawHitMark(body);
    labels.drawLeaders(body);
    drawThen(body, then);
    drawArrows(body);
    now.drawAims(body, ground.subjects());
    now.draw(body, labels);
    ground.drawSubjects(body);
    labels.draw(body);
    return new Drawing(
        sheet,
        notation.say("drawing.overlay_of", before.title(), after.title()),
        description(),
        labels.labels(),
        body);
  }

  /** Whether a light of before has moved or is gone. */
  private boolean isElsewhere(LightOnPlan light) {
    return pairs.after(light.light().id()).map(now -> move(now).isPresent()).orElse(true);
  }

  private void drawThen(Markup body, PlanLights then) {
    for (LightOnPlan light : then.lights()) {
      if (sheet.shows(light.light().place())) {
        body.path("plan-before", then.hollow(light));
      }
    }
    cameraMove()
        .map(Move::from)
        .filter(sheet::shows)
        .ifPresent(place -> body.circle("plan-before", sheet.spot(place), DOT));
  }

  private void drawArrows(Markup body) {
    Strokes arrows = new Strokes();
    for (Move move : moves()) {
      arrow(move)
          .filter(line -> line.length() > ARROW_HEAD)
          .ifPresent(
              line -> {
                Spot back = line.to().unitTo(line.from());
                arrows
                    .line(line)
                    .from(line.to().along(back.turned(22), ARROW_HEAD))
                    .to(line.to())
                    .to(line.to().along(back.turned(-22), ARROW_HEAD));
              });
    }
    body.path("plan-move", arrows);
  }

  private List<Label.Placed> labels(
      PlanLights now,
      PlanLights then,
      PlanGround ground,
      Optional<PlanCamera> camera,
      PlanFrame frame) {
    LabelPlacer placer = new LabelPlacer(sheet);
    now.keepFree(placer, ground.subjects());
    then.lights().stream()
        .filter(light -> sheet.shows(light.light().place()))
        .forEach(light -> placer.keepFree(then.face(light)));
    cameraMove()
        .map(Move::from)
        .filter(sheet::shows)
        .ifPresent(place -> placer.keepFree(Box.around(sheet.spot(place), DOT + 2, DOT + 2)));
    ground.keepFree(placer);
    camera.ifPresent(one -> one.keepFree(placer));
    frame.keepFree(placer);
    List<Label> labels = new ArrayList<>(now.numbers());
    labels.addAll(frame.labels());
    labels.addAll(ground.labels());
    camera.ifPresent(one -> labels.addAll(one.labels()));
    double half = TextSize.line(sheet.format().figures) / 2;
    for (Move move : moves()) {
      arrow(move)
          .ifPresent(
              line -> {
                placer.avoid(line, 12);
                labels.add(
                    new Label(
                        notation.length(move.metres()),
                        Kind.FIGURE,
                        line.at(0.5),
                        Wishes.on(line, half),
                        75,
                        44));
              });
    }
    return placer.place(labels);
  }

  private String description() {
    StringBuilder words = new StringBuilder(160);
    words.append(notation.say("drawing.overlay_shows"));
    for (List<String> row : table().rows()) {
      words.append(' ').append(row.get(0)).append(": ").append(row.get(1)).append('.');
    }
    return words.toString();
  }

  private DrawingTable table() {
    List<List<String>> rows = new ArrayList<>();
    Map<LightId, Integer> numbers = after.numbersInBuildOrder();
    Places places = new Places(notation);
    for (Light light : after.lightsInBuildOrder()) {
      String name = numbers.get(light.id()) + " " + places.role(light);
      Optional<Light> was = pairs.before(light.id());
      rows.add(
          List.of(
              name,
              was.map(one -> change(one.place(), light.place()))
                  .orElseGet(() -> notation.say("drawing.added"))));
    }
    for (Light light : before.lightsInBuildOrder()) {
      if (pairs.after(light.id()).isEmpty()) {
        rows.add(List.of(places.role(light), notation.say("drawing.removed")));
      }
    }
    Optional<Point> from = before.camera().flatMap(Camera::place);
    Optional<Point> to = after.camera().flatMap(Camera::place);
    if (from.isPresent() && to.isPresent()) {
      rows.add(List.of(notation.say("drawing.camera"), change(from.get(), to.get())));
    }
    return new DrawingTable(
        List.of(notation.say("drawing.what"), notation.say("drawing.change")), rows);
  }

  private String change(Point from, Point to) {
    List<String> changes = new ArrayList<>();
    Move.between(from, to)
        .ifPresent(
            move -> changes.add(notation.say("drawing.moved", notation.tape(move.metres()))));
    double up = to.z() - from.z();
    if (Math.abs(up) > MOVED_M) {
      changes.add(
          notation.say(up > 0 ? "drawing.raised" : "drawing.lowered", notation.tape(Math.abs(up))));
    }
    return changes.isEmpty() ? notation.say("drawing.stayed") : String.join(", ", changes);
  }
}
