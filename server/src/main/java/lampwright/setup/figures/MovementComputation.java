package lampwright.setup.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import lampwright.engine.lens.DepthOfField;
import lampwright.engine.lens.FocusedLens;
import lampwright.engine.lens.ImageMotion;
import lampwright.engine.light.Point;
import lampwright.engine.light.UnitVector;
import lampwright.engine.power.FlashPulse;
import lampwright.engine.unit.Metres;
import lampwright.engine.unit.MetresPerSecond;
import lampwright.engine.unit.Millimetres;
import lampwright.engine.unit.Seconds;
import lampwright.engine.unit.Stops;
import lampwright.gear.Head;
import lampwright.language.Said;
import lampwright.setup.Camera;
import lampwright.setup.Light;
import lampwright.setup.SetupDocument;
import lampwright.setup.Subject;
import lampwright.setup.Target;

/** Computes how the subjects' movement shows. */
final class MovementComputation {

  /** A target so near a subject is the part of it that is looked at, in metres over the ground. */
  private static final double ON_SUBJECT_M = 1.5;

  /** Nearer to the lens nothing is projected, in metres. */
  private static final double NEAREST_M = 0.05;

  private final SetupDocument setup;
  private final OpticsFigures optics;
  private final FocusedLens lens;
  private final DepthOfField depth;
  private final List<LightFigures> lights;
  private final List<TargetFigures> targets;

  private MovementComputation(
      SetupDocument setup,
      OpticsFigures optics,
      OpticsFigures.Focused focused,
      List<LightFigures> lights,
      List<TargetFigures> targets) {
    this.setup = setup;
    this.optics = optics;
    this.lens = focused.lens();
    this.depth = focused.depths().getFirst();
    this.lights = lights;
    this.targets = targets;
  }

  /** The movement of each subject whose speed is known; needs camera, lens and focus. */
  static List<MovementFigures> of(
      SetupDocument setup,
      Optional<OpticsFigures> optics,
      List<LightFigures> lights,
      List<TargetFigures> targets,
      Set<String> needs) {
    List<MovementFigures> all = new ArrayList<>();
    for (int i = 0; i < setup.subjects().size(); i++) {
      Subject subject = setup.subjects().get(i);
      Optional<OpticsFigures.Focused> focused = optics.flatMap(OpticsFigures::focused);
      if (subject.speedMPerS().isEmpty() && !subject.path().isEmpty()) {
        needs.add("/subjects/" + i + "/speed_m_per_s");
      }
      if (subject.speedMPerS().isPresent() && optics.isPresent() && focused.isPresent()) {
        all.add(
            new MovementComputation(setup, optics.get(), focused.get(), lights, targets)
                .figures(subject, new MetresPerSecond(subject.speedMPerS().get()), needs));
      }
    }
    return all;
  }

  /** How the subject moves before the camera, with what had to be assumed. */
  private record Seen(
      ImageMotion motion,
      boolean alongPath,
      Optional<MovementFigures.TimeInFocus> inFocus,
      List<Said> assumptions) {}

  private MovementFigures figures(Subject subject, MetresPerSecond speed, Set<String> needs) {
    Optional<TargetFigures> target = targetOn(subject);
    Seen seen = seen(subject, speed, target.map(TargetFigures::target), needs);
    List<MovementFigures.FlashBlur> flashes = new ArrayList<>(lights.size());
    for (LightFigures light : lights) {
      flash(light, seen.motion()).ifPresent(flashes::add);
    }
    Optional<MovementFigures.Ghost> ghost =
        target.flatMap(
            t ->
                t.flashOverAmbient()
                    .map(over -> new MovementFigures.Ghost(t.sum().ambientShare(), over)));
    return new MovementFigures(
        subject.name(),
        speed,
        seen.alongPath(),
        seen.motion(),
        flashes,
        blur(seen.motion(), setup.exposure().time().toSeconds()),
        ghost,
        seen.inFocus(),
        seen.assumptions());
  }

  /** The target on the subject that stands nearest to its place, seen from above. */
  private Optional<TargetFigures> targetOn(Subject subject) {
    Optional<TargetFigures> nearest = Optional.empty();
    double least = ON_SUBJECT_M;
    for (TargetFigures figures : targets) {
      double aside = overGround(figures.target().at(), subject.place());
      if (figures.target().held() != Target.Held.ON_SURFACE && aside < least) {
        least = aside;
        nearest = Optional.of(figures);
      }
    }
    return nearest;
  }

  private static double overGround(Point one, Point other) {
    double dx = one.x() - other.x();
    double dy = one.y() - other.y();
    return Math.sqrt(dx * dx + dy * dy);
  }

  private Seen seen(
      Subject subject, MetresPerSecond speed, Optional<Target> target, Set<String> needs) {
    SubjectWay way = new SubjectWay(subject);
    Optional<Point> camera = setup.camera().flatMap(Camera::place);
    if (!way.hasDirection()) {
      return across(speed, "figuring.movement.noPath");
    }
    if (camera.isEmpty()) {
      needs.add("/camera/place");
      return across(speed, "figuring.movement.noCamera");
    }
    double lift =
        target
            .map(t -> t.at().z() - subject.place().z())
            .or(() -> subject.height().map(height -> height.value() * 0.75))
            .orElse(0.0);
    Point mark = way.hitMark();
    Point body = new Point(mark.x(), mark.y(), mark.z() + lift);
    Optional<Point> aim = setup.camera().flatMap(Camera::aim);
    Point aimed = aim.orElse(body);
    if (aimed.distanceTo(camera.get()).value() < NEAREST_M) {
      needs.add("/camera/aim");
      return across(speed, "figuring.movement.noAim");
    }
    UnitVector axis = UnitVector.between(camera.get(), aimed);
    double away = SubjectWay.depth(camera.get(), axis, body);
    if (away < NEAREST_M) {
      return across(speed, "figuring.movement.behind");
    }
    return new Seen(
        project(camera.get(), axis, body, way.direction(), speed),
        true,
        inFocus(way, speed, camera.get(), axis, lift * axis.z()),
        aim.isPresent() ? List.of() : List.of(Said.of("figuring.movement.aimed")));
  }

  private Seen across(MetresPerSecond speed, String key) {
    return new Seen(
        ImageMotion.across(lens, speed), false, Optional.empty(), List.of(Said.of(key)));
  }

  private ImageMotion project(
      Point camera, UnitVector axis, Point body, UnitVector direction, MetresPerSecond speed) {
    double level = Math.sqrt(axis.x() * axis.x() + axis.y() * axis.y());
    UnitVector right =
        level < 1e-9 ? UnitVector.of(1, 0, 0) : UnitVector.of(axis.y(), -axis.x(), 0);
    UnitVector up =
        UnitVector.of(
            right.y() * axis.z() - right.z() * axis.y(),
            right.z() * axis.x() - right.x() * axis.z(),
            right.x() * axis.y() - right.y() * axis.x());
    double v = speed.value();
    return new ImageMotion(
        lens.imageDistance(),
        new Metres(SubjectWay.depth(camera, axis, body)),
        SubjectWay.depth(camera, right, body),
        SubjectWay.depth(camera, up, body),
        v * direction.cosineTo(right),
        v * direction.cosineTo(up),
        v * direction.cosineTo(axis));
  }

  private Optional<MovementFigures.TimeInFocus> inFocus(
      SubjectWay way, MetresPerSecond speed, Point camera, UnitVector axis, double lift) {
    if (speed.value() == 0) {
      return Optional.empty();
    }
    double near = depth.near().value();
    double far = depth.far().map(Metres::value).orElse(Double.MAX_VALUE);
    SubjectWay.Sharp before = way.sharpFrom(-1, camera, axis, lift, near, far);
    SubjectWay.Sharp after = way.sharpFrom(1, camera, axis, lift, near, far);
    return Optional.of(
        new MovementFigures.TimeInFocus(
            new Seconds((before.metres() + after.metres()) / speed.value()),
            before.pathEnds(),
            after.pathEnds()));
  }

  private Optional<MovementFigures.FlashBlur> flash(LightFigures figures, ImageMotion motion) {
    Light light = figures.light();
    Seconds open = setup.exposure().time().toSeconds();
    if (figures.shutter().filter(ShutterEffect::longBurst).isPresent()) {
      MovementFigures.Blur whole = blur(motion, open);
      return Optional.of(
          new MovementFigures.FlashBlur(light.id(), whole, whole, true, light.pops(), false));
    }
    Optional<FlashPulse> pulse = ShutterComputation.pulse(light.head());
    if (pulse.isEmpty() || light.stopsDown().isEmpty()) {
      return Optional.empty();
    }
    Stops down = light.stopsDown().get();
    return Optional.of(
        new MovementFigures.FlashBlur(
            light.id(),
            blur(motion, shorter(pulse.get().tenthTime(down), open)),
            blur(motion, shorter(pulse.get().equivalentDuration(down), open)),
            false,
            light.pops(),
            light.head().control() == Head.FlashControl.VOLTAGE && down.value() > 0));
  }

  private static Seconds shorter(Seconds one, Seconds other) {
    return one.value() < other.value() ? one : other;
  }

  private MovementFigures.Blur blur(ImageMotion motion, Seconds time) {
    Millimetres onSensor = motion.blur(time);
    return new MovementFigures.Blur(
        time,
        onSensor,
        optics.pixelPitch().map(pitch -> onSensor.toMicrometres().value() / pitch.value()),
        onSensor.value() / optics.format().height().value());
  }
}
