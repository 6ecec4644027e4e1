package lampwright.setup.adapting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import lampwright.engine.exposure.ExposureSettings;
import lampwright.engine.light.FallOff;
import lampwright.engine.light.Point;
import lampwright.engine.light.UnitVector;
import lampwright.engine.power.HeadCount;
import lampwright.engine.power.PowerSetting;
import lampwright.engine.unit.Metres;
import lampwright.engine.unit.Stops;
import lampwright.gear.Modifier;
import lampwright.language.Filling;
import lampwright.language.Said;
import lampwright.setup.Light;
import lampwright.setup.LightId;

/**
 * What would help the lights of a plan that fall short, smallest change first. Each is tried out:
 * the problem is solved again with it at the same camera setting, and what is still missing is
 * told.
 */
final class Remedies {

  /** Less than what a meter repeats needs no remedy. */
  private static final double WORTH_MENDING = 0.1;

  /** Four heads on one light are the most that anybody rigs. */
  private static final int MOST_HEADS = 4;

  /** More flashes than this on one picture, and nobody keeps still. */
  private static final int MOST_POPS = 16;

  /** Beyond this the picture is another one. */
  private static final double MOST_BY_CAMERA_STOPS = 3;

  /** A remedy that leaves more than this of what was missing is none. */
  private static final double HELPS = 0.5;

  private final Trials trials;
  private final AdaptationProblem problem;
  private final AdaptationPlan plan;

  private Remedies(Trials trials) {
    this.trials = trials;
    this.problem = trials.problem();
    this.plan = trials.plan();
  }

  /** The remedies for every light of a plan that is made but misses its level. */
  static List<Remedy> of(Trials trials) {
    return new Remedies(trials).all();
  }

  private List<Remedy> all() {
    List<Remedy> remedies = new ArrayList<>();
    for (int i = 0; i < plan.lit().size(); i++) {
      if (plan.lit().get(i).isPresent()) {
        LightRow.Lit lit = plan.lit().get(i).get();
        PowerSetting power = lit.making().dial().setting(lit.exact(), lit.step(), lit.miss());
        if (power.shortfall().value() > WORTH_MENDING) {
          ofShortfall(i, lit, power.shortfall(), remedies);
        } else if (power.excess().value() > WORTH_MENDING) {
          ofExcess(i, lit, power.excess(), remedies);
        }
      }
    }
    remedies.sort(Comparator.comparing(Remedy::kind));
    return remedies;
  }

  private void ofShortfall(int i, LightRow.Lit lit, Stops shortfall, List<Remedy> remedies) {
    closer(i, lit, shortfall).ifPresent(remedies::add);
    otherModifier(i, lit).ifPresent(remedies::add);
    if (shortfall.value() <= MOST_BY_CAMERA_STOPS) {
      widerAperture(i, shortfall).ifPresent(remedies::add);
      higherIso(i, shortfall).ifPresent(remedies::add);
    }
    moreHeads(i, lit, shortfall).ifPresent(remedies::add);
    morePops(i, lit, shortfall).ifPresent(remedies::add);
  }

  private void ofExcess(int i, LightRow.Lit lit, Stops excess, List<Remedy> remedies) {
    Making making = lit.making();
    FallOff.distanceForGain(making.modifier().face(), making.distance(), excess.negated())
        .flatMap(
            to ->
                helping(
                    Remedy.Kind.FARTHER,
                    i,
                    Said.of("adapting.remedy.farther", metres(making.distance()), metres(to)),
                    trials.withTrial(Trial.at(id(i), along(light(i), to)), i)))
        .ifPresent(remedies::add);
    helping(
            Remedy.Kind.DIM,
            i,
            Said.of("adapting.remedy.dim", Filling.stops(excess.value())),
            trials.withTrial(Trial.dimmed(id(i), excess), i))
        .ifPresent(remedies::add);
  }

  private Optional<Remedy> closer(int i, LightRow.Lit lit, Stops shortfall) {
    Making making = lit.making();
    Metres nearest = problem.wishes().limits().nearest();
    return FallOff.distanceForGain(making.modifier().face(), making.distance(), shortfall)
        .filter(to -> to.value() >= nearest.value())
        .filter(to -> !trials.isInThePicture(light(i).place(), along(light(i), to), making))
        .flatMap(
            to ->
                helping(
                    Remedy.Kind.CLOSER,
                    i,
                    Said.of("adapting.remedy.closer", metres(making.distance()), metres(to)),
                    trials.withTrial(Trial.at(id(i), along(light(i), to)), i)));
  }

  /** The likest modifier of the kit with which the same head is enough. */
  private Optional<Remedy> otherModifier(int i, LightRow.Lit lit) {
    Making now = lit.making();
    return problem.lights().get(i).makings().stream()
        .filter(m -> m.model() == now.model() && m.heads() == now.heads() && !m.moved())
        .filter(m -> m.pops() == now.pops() && m.gels().equals(now.gels()))
        .filter(m -> !m.modifier().equals(now.modifier()))
        .filter(m -> lit.exact() + m.atFullStops() - now.atFullStops() > -WORTH_MENDING)
        .min(Comparator.comparingDouble(m -> m.costs().sum()))
        .flatMap(
            m ->
                helping(
                    Remedy.Kind.OTHER_MODIFIER,
                    i,
                    Said.of(
                        shape(now, m),
                        Filling.text(m.modifier().name()),
                        Filling.text(now.modifier().name())),
                    trials.withModifier(m.modifier(), i)));
  }

  private static String shape(Making now, Making other) {
    double softer =
        Likeness.softer(now.modifier(), now.distance(), other.modifier(), other.distance());
    return Math.abs(softer) < HELPS
        ? "adapting.remedy.otherModifier"
        : softer > 0 ? "adapting.remedy.softerModifier" : "adapting.remedy.harderModifier";
  }

  private Optional<Remedy> widerAperture(int i, Stops shortfall) {
    ExposureSettings now = plan.setting().exposure();
    return problem.cameras().get(plan.camera()).apertures(Limits.none()).stream()
        .filter(a -> a.stopsAbove(now.aperture()).value() <= -shortfall.value() + WORTH_MENDING)
        .max(Comparator.naturalOrder())
        .flatMap(
            aperture ->
                helping(
                    Remedy.Kind.WIDER_APERTURE,
                    i,
                    Said.of("adapting.remedy.openUp", Filling.shown(aperture)),
                    trials.atSetting(now.withAperture(aperture), i)));
  }

  private Optional<Remedy> higherIso(int i, Stops shortfall) {
    ExposureSettings now = plan.setting().exposure();
    return problem.cameras().get(plan.camera()).isos(Limits.none()).stream()
        .filter(iso -> iso.stopsOver(now.iso()).value() >= shortfall.value() - WORTH_MENDING)
        .min(Comparator.naturalOrder())
        .flatMap(
            iso ->
                helping(
                    Remedy.Kind.HIGHER_ISO,
                    i,
                    Said.of("adapting.remedy.higherIso", Filling.shown(iso)),
                    trials.atSetting(now.withIso(iso), i)));
  }

  private Optional<Remedy> moreHeads(int i, LightRow.Lit lit, Stops shortfall) {
    if (shortfall.value() > MOST_BY_CAMERA_STOPS) {
      return Optional.empty();
    }
    int needed = HeadCount.neededFor(shortfall) * lit.making().heads();
    if (needed > MOST_HEADS) {
      return Optional.empty();
    }
    Modifier modifier = lit.making().modifier();
    return helping(
        Remedy.Kind.MORE_HEADS,
        i,
        modifier.equals(Modifier.standardReflector()) || modifier.takesHeads() >= needed
            ? Said.of("adapting.remedy.moreHeads", count(needed))
            : Said.of(
                "adapting.remedy.moreHeadsEach", count(needed), Filling.text(modifier.name())),
        trials.withHeads(needed, lit.making(), i));
  }

  /** Flashes in the dark: while the shutter stays open the ambient adds up, which the words say. */
  private Optional<Remedy> morePops(int i, LightRow.Lit lit, Stops shortfall) {
    if (Gathering.isMoving(problem.setup()) || shortfall.value() > MOST_BY_CAMERA_STOPS) {
      return Optional.empty();
    }
    int needed = HeadCount.neededFor(shortfall) * lit.making().pops();
    if (needed > MOST_POPS) {
      return Optional.empty();
    }
    return helping(
        Remedy.Kind.MORE_POPS,
        i,
        Said.of("adapting.remedy.morePops", count(needed)),
        trials.withPops(needed, i));
  }

  private Optional<Remedy> helping(Remedy.Kind kind, int i, Said words, Optional<Stops> leaves) {
    double before = Math.abs(plan.lit().get(i).orElseThrow().miss());
    return leaves
        .filter(left -> Math.abs(left.value()) <= Math.max(WORTH_MENDING, before * HELPS))
        .map(left -> new Remedy(kind, Optional.of(id(i)), words, Optional.of(left)));
  }

  private Light light(int i) {
    return problem.setup().lights().get(i);
  }

  private LightId id(int i) {
    return light(i).id();
  }

  private static Point along(Light light, Metres to) {
    Point target = light.target().at();
    return target.moved(UnitVector.between(target, light.place()), to.value());
  }

  private static Filling count(int count) {
    return switch (count) {
      case 2 -> Said.of("adapting.count.two").asFilling();
      case 3 -> Said.of("adapting.count.three").asFilling();
      case 4 -> Said.of("adapting.count.four").asFilling();
      default -> Filling.number(count, 0);
    };
  }

  private static Filling metres(Metres distance) {
    return Filling.length(distance.value(), 1);
  }
}
