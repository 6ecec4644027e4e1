package lampwright.setup.packing;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import lampwright.setup.BuildStep;
import lampwright.setup.Light;
import lampwright.setup.LightId;
import lampwright.setup.SetupDocument;

/**
 * The errands of a setup, and which must wait for which: the ground is walked before anything is
 * carried, ballast lies before a head goes up, a light is metered after all that its reading sums,
 * in the build order, and the subject comes last.
 */
final class Errands {

  /** From here on a head with its modifier is lifted by two: common practice, no source. */
  private static final double LIFTED_BY_TWO_KG = 6;

  /** A face this large is held by two while it goes up: common practice, no source. */
  private static final double HELD_BY_TWO_M = 1.2;

  private final List<Errand> errands = new ArrayList<>();
  private final WorkTimes times;
  private final int hands;

  private Errands(WorkTimes times, int hands) {
    this.times = times;
    this.hands = hands;
  }

  /** All until the subject stands ready. */
  static List<Errand> toBuild(SetupDocument setup, WorkTimes times, int hands) {
    Errands of = new Errands(times, hands);
    int ground = of.add(Work.GROUND, Optional.empty(), times.ground(), 1);
    Map<LightId, Integer> aimed = new HashMap<>();
    for (Light light : setup.lightsInBuildOrder()) {
      aimed.put(light.id(), of.putUp(light, ground));
    }
    int camera = of.add(Work.CAMERA, Optional.empty(), times.camera(), 1, ground);
    Optional<Integer> metered = of.meter(setup, ground, aimed);
    Integer[] before = Stream.concat(Stream.of(camera), metered.stream()).toArray(Integer[]::new);
    int through = of.add(Work.RUN_THROUGH, Optional.empty(), times.runThrough(), 2, before);
    of.add(Work.SUBJECT, Optional.empty(), times.subject(), 1, through);
    return List.copyOf(of.errands);
  }

  /** All until nothing stands any more. */
  static List<Errand> toStrike(SetupDocument setup, WorkTimes times, int hands) {
    Errands of = new Errands(times, hands);
    for (Light light : setup.lightsInBuildOrder()) {
      of.add(Work.STRIKE, Optional.of(light.id()), times.strike(), 1);
    }
    of.add(Work.STRIKE_CAMERA, Optional.empty(), times.strike(), 1);
    return List.copyOf(of.errands);
  }

  /** Carries a light and puts it up, until it is aimed. */
  private int putUp(Light light, int ground) {
    Optional<LightId> id = Optional.of(light.id());
    int there = add(Work.CARRY, id, times.carry(), 1, ground);
    if (light.stand().isPresent()) {
      there = add(Work.STAND, id, times.stand(), 1, there);
    }
    int mounted = add(Work.HEAD, id, times.head(), 1, there);
    return add(Work.AIM, id, times.aim(), wantsTwo(light) ? 2 : 1, mounted);
  }

  private static boolean wantsTwo(Light light) {
    double kg =
        light.heads()
            * (light.head().weightKg().orElse(0.0)
                + light.modifier().flatMap(modifier -> modifier.weightKg()).orElse(0.0));
    double faceM = light.modifierOrStandard().face().largestDimension().value();
    return light.stand().isPresent() && (kg >= LIFTED_BY_TWO_KG || faceM >= HELD_BY_TWO_M);
  }

  /** Meters the lights and takes the other steps, one after the other; the last of them. */
  private Optional<Integer> meter(SetupDocument setup, int ground, Map<LightId, Integer> aimed) {
    Optional<Integer> last = Optional.empty();
    List<LightId> left =
        new ArrayList<>(setup.lightsInBuildOrder().stream().map(Light::id).toList());
    for (BuildStep step : setup.buildOrder()) {
      if (step.light().isPresent()) {
        left.remove(step.light().get());
        last = Optional.of(meter(step.light().get(), aimed, last));
      } else {
        last = Optional.of(step(step, ground, last));
      }
    }
    for (LightId light : left) {
      last = Optional.of(meter(light, aimed, last));
    }
    return last;
  }

  private int meter(LightId light, Map<LightId, Integer> aimed, Optional<Integer> last) {
    Integer[] before =
        Stream.concat(Stream.of(aimed.getOrDefault(light, 0)), last.stream())
            .toArray(Integer[]::new);
    return add(Work.METER, Optional.of(light), times.meter(), 2, before);
  }

  private int step(BuildStep step, int ground, Optional<Integer> last) {
    errands.add(
        new Errand(
            Work.STEP,
            Optional.empty(),
            step.what(),
            times.step(),
            1,
            false,
            List.of(last.orElse(ground))));
    return errands.size() - 1;
  }

  private int add(Work work, Optional<LightId> light, int minutes, int wanted, Integer... after) {
    boolean isShort = wanted > hands;
    errands.add(
        new Errand(
            work,
            light,
            Optional.empty(),
            isShort ? minutes * wanted : minutes,
            Math.min(wanted, hands),
            isShort,
            List.of(after)));
    return errands.size() - 1;
  }
}
