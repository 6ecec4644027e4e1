package lampwright.setup.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lampwright.engine.lens.DepthOfField;
import lampwright.engine.light.LightSum;
import lampwright.engine.light.Point;
import lampwright.engine.light.UnitVector;
import lampwright.engine.unit.LuxSeconds;
import lampwright.engine.unit.Metres;
import lampwright.language.Said;
import lampwright.setup.Camera;
import lampwright.setup.LightId;
import lampwright.setup.SetupDocument;
import lampwright.setup.Subject;
import lampwright.setup.Target;

/** Computes the light along the ways of the subjects. */
final class PathComputation {

  /** Stations from one mark to the next, and no more in all: a judgement. */
  private static final int BETWEEN_MARKS = 5;

  private static final int MOST = 40;

  /** A target so near a subject is a part of it, in metres over the ground. */
  private static final double ON_SUBJECT_M = 1.5;

  /** Nearer to the lens nothing is projected, in metres. */
  private static final double NEAREST_M = 0.05;

  /** Of a subject's height, where there is no target on it: about the face. */
  private static final double FACE = 0.9;

  private static final double USUAL_LIFT_M = 1.5;

  private final SetupDocument setup;
  private final List<ShiningLight> lights;
  private final List<LightId> names;
  private final LuxSeconds ambient;
  private final Optional<OpticsFigures.Focused> focused;

  private PathComputation(
      SetupDocument setup,
      List<ShiningLight> lights,
      Optional<AmbientFigures> ambient,
      Optional<OpticsFigures> optics) {
    this.setup = setup;
    this.lights = lights.stream().filter(ShiningLight::isKnown).toList();
    this.names = this.lights.stream().map(light -> light.figures().light().id()).toList();
    this.ambient = ambient.map(AmbientFigures::exposure).orElse(LuxSeconds.NONE);
    this.focused = optics.flatMap(OpticsFigures::focused);
  }

  static List<PathFigures> of(
      SetupDocument setup,
      List<ShiningLight> lights,
      Optional<AmbientFigures> ambient,
      Optional<OpticsFigures> optics) {
    List<PathFigures> all = new ArrayList<>();
    PathComputation computation = null;
    for (Subject subject : setup.subjects()) {
      if (subject.path().size() > 1) {
        computation =
            computation == null ? new PathComputation(setup, lights, ambient, optics) : computation;
        all.add(computation.figures(subject));
      }
    }
    return all;
  }

  private PathFigures figures(Subject subject) {
    List<Said> assumptions = new ArrayList<>(2);
    double lift = lift(subject, assumptions);
    SubjectWay way = new SubjectWay(subject);
    Optional<Sight> sight = sight(raised(way.hitMark(), lift), assumptions);
    List<Subject.Mark> marks = subject.path();
    int steps = Math.max(1, Math.min(BETWEEN_MARKS, (MOST - 1) / (marks.size() - 1)));
    List<PathFigures.Station> stations = new ArrayList<>((marks.size() - 1) * steps + 1);
    double gone = 0;
    for (int i = 0; i < marks.size(); i++) {
      Point from = raised(marks.get(i).at(), lift);
      stations.add(station(Optional.of(marks.get(i).name()), from, gone, sight));
      if (i + 1 < marks.size()) {
        Point to = raised(marks.get(i + 1).at(), lift);
        double length = from.distanceTo(to).value();
        for (int step = 1; step < steps; step++) {
          double share = (double) step / steps;
          stations.add(
              station(Optional.empty(), between(from, to, share), gone + share * length, sight));
        }
        gone += length;
      }
    }
    return new PathFigures(
        subject.name(),
        new Metres(Math.abs(lift)),
        names,
        stations,
        way.hit() * steps,
        setup.exposure().settings(),
        assumptions);
  }

  /** The height over the marks of the first target that is on the subject. */
  private double lift(Subject subject, List<Said> assumptions) {
    for (ShiningLight light : lights) {
      Target target = light.figures().light().target();
      double dx = target.at().x() - subject.place().x();
      double dy = target.at().y() - subject.place().y();
      if (target.held() != Target.Held.ON_SURFACE
          && dx * dx + dy * dy < ON_SUBJECT_M * ON_SUBJECT_M
          && target.at().z() > subject.place().z()) {
        return target.at().z() - subject.place().z();
      }
    }
    assumptions.add(Said.of("figuring.path.noTarget"));
    return subject.height().map(height -> FACE * height.value()).orElse(USUAL_LIFT_M);
  }

  private static Point raised(Point mark, double lift) {
    return new Point(mark.x(), mark.y(), mark.z() + lift);
  }

  private static Point between(Point from, Point to, double share) {
    return new Point(
        from.x() + share * (to.x() - from.x()),
        from.y() + share * (to.y() - from.y()),
        from.z() + share * (to.z() - from.z()));
  }

  /** From where the subject is seen, and along which axis. */
  private record Sight(Point camera, UnitVector axis, OpticsFigures.Focused focused) {}

  private Optional<Sight> sight(Point hit, List<Said> assumptions) {
    Optional<Point> camera = setup.camera().flatMap(Camera::place);
    if (camera.isEmpty() || focused.isEmpty()) {
      return Optional.empty();
    }
    Optional<Point> aim = setup.camera().flatMap(Camera::aim);
    if (aim.orElse(hit).distanceTo(camera.get()).value() < NEAREST_M) {
      return Optional.empty();
    }
    if (aim.isEmpty()) {
      assumptions.add(Said.of("figuring.path.aimed"));
    }
    return Optional.of(
        new Sight(camera.get(), UnitVector.between(camera.get(), aim.orElse(hit)), focused.get()));
  }

  private PathFigures.Station station(
      Optional<String> mark, Point at, double gone, Optional<Sight> sight) {
    UnitVector toward = LightComputation.towardCamera(setup, at);
    List<LuxSeconds> exposures = new ArrayList<>(lights.size());
    double flash = 0;
    for (ShiningLight light : lights) {
      double exposure = light.flat(at, toward);
      flash += exposure;
      exposures.add(exposure == 0 ? LuxSeconds.NONE : new LuxSeconds(exposure));
    }
    return new PathFigures.Station(
        mark,
        at,
        new Metres(gone),
        new LightSum(new LuxSeconds(flash), ambient),
        exposures,
        sight.flatMap(s -> focus(s, at)));
  }

  /** Absent beside and behind the lens. */
  private static Optional<PathFigures.Focus> focus(Sight sight, Point at) {
    double depth = SubjectWay.depth(sight.camera(), sight.axis(), at);
    if (depth < NEAREST_M) {
      return Optional.empty();
    }
    Metres away = new Metres(depth);
    DepthOfField sharp = sight.focused().depths().getFirst();
    return Optional.of(
        new PathFigures.Focus(
            sight.camera().distanceTo(at),
            away,
            sharp.contains(away),
            sight.focused().lens().blurDisc(away)));
  }
}
