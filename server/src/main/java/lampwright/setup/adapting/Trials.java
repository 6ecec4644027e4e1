package lampwright.setup.adapting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import lampwright.engine.exposure.ExposureSettings;
import lampwright.engine.exposure.ShutterTime;
import lampwright.engine.light.Point;
import lampwright.engine.unit.Metres;
import lampwright.engine.unit.Seconds;
import lampwright.engine.unit.Stops;
import lampwright.gear.Kit;
import lampwright.gear.Modifier;
import lampwright.setup.LightId;

/**
 * Solves a problem again with one change, at the plan's camera setting.
 *
 * @param stop ends a trial with the best that it has found
 */
record Trials(AdaptationProblem problem, Kit kit, AdaptationPlan plan, BooleanSupplier stop) {

  /** What a light still misses when it is changed; absent where it is then not made at all. */
  Optional<Stops> withTrial(Trial trial, int light) {
    return missOf(light, again(kit, pinned(light, Optional.empty(), 0), trial), setting());
  }

  /** What a light would miss at another place, with whatever of the kit is best for it. */
  Optional<Stops> missAt(Point place, int light) {
    Trial trial = Trial.at(problem.setup().lights().get(light).id(), place);
    return missOf(light, again(kit, problem.wishes(), trial), setting());
  }

  Optional<Stops> withModifier(Modifier modifier, int light) {
    return missOf(
        light, again(kit, pinned(light, Optional.of(modifier), 0), Trial.NONE), setting());
  }

  /** With as many more heads, and modifiers for them, as are needed for so many on a light. */
  Optional<Stops> withHeads(int heads, Making now, int light) {
    int more = heads - now.heads();
    Kit larger =
        KitChange.withModifiers(KitChange.withHeads(kit, now.head(), more), now.modifier(), more);
    return missOf(
        light,
        again(larger, pinned(light, Optional.of(now.modifier()), heads), Trial.NONE),
        setting());
  }

  /** With more flashes in a shutter time that is long enough for them. */
  Optional<Stops> withPops(int pops, int light) {
    Wishes pinned = pinned(light, Optional.empty(), 0);
    Limits limits = pinned.limits().withPops(pops);
    Making now = plan.lit().get(light).orElseThrow().making();
    double recycle = now.head().recycle().map(Seconds::value).orElse(0.0);
    double open = Math.max(setting().time().seconds(), (pops - 1) * recycle);
    ExposureSettings longer = setting().withTime(new ShutterTime(open));
    return missOf(light, again(kit, pinned.withLimits(limits), Trial.NONE), longer);
  }

  Optional<Stops> atSetting(ExposureSettings other, int light) {
    return missOf(light, again(kit, problem.wishes(), Trial.NONE), other);
  }

  /** How many lights are outside of their limits with another kit. */
  int outsideWith(Kit other, Wishes wishes) {
    return solved(again(other, wishes, Trial.NONE), setting()).outside();
  }

  /** Asks whether a light that is moved would be in the picture, and was not before. */
  boolean isInThePicture(Point before, Point now, Making making) {
    Metres radius = new Metres(making.modifier().face().largestDimension().value() / 2);
    return CameraView.of(problem.setup(), problem.cameras().get(plan.camera()))
        .filter(view -> view.sees(now, radius) && !view.sees(before, radius))
        .isPresent();
  }

  private ExposureSettings setting() {
    return plan.setting().exposure();
  }

  private AdaptationProblem again(Kit other, Wishes wishes, Trial trial) {
    return new AdaptationProblem(
        problem.setup(), problem.original(), other, wishes, problem.ambient(), trial);
  }

  private Optional<Stops> missOf(int light, AdaptationProblem changed, ExposureSettings settings) {
    return solved(changed, settings).lit().get(light).map(lit -> new Stops(lit.miss()));
  }

  private AdaptationPlan solved(AdaptationProblem changed, ExposureSettings settings) {
    CameraChoice.Setting setting = new CameraChoice.Setting(settings, plan.setting().filter());
    return changed
        .solve(plan.camera(), setting, changed.cameraCost(plan.camera(), settings), stop)
        .plan();
  }

  /** The light keeps its head, and its modifier and number of heads where they are given. */
  private Wishes pinned(int light, Optional<Modifier> modifier, int heads) {
    LightId id = problem.setup().lights().get(light).id();
    Making now = plan.lit().get(light).orElseThrow().making();
    List<Pin> pins = new ArrayList<>();
    problem.wishes().pins().stream().filter(p -> !p.light().equals(id)).forEach(pins::add);
    pins.add(
        new Pin(
            id,
            Optional.of(now.head().name()),
            Optional.of(modifier.orElse(now.modifier()).name()),
            Optional.of(heads == 0 ? now.heads() : heads),
            true));
    return problem.wishes().withPins(pins);
  }
}
