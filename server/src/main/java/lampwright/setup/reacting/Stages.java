package lampwright.setup.reacting;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import lampwright.engine.unit.Stops;
import lampwright.gear.Head;
import lampwright.setup.Light;
import lampwright.setup.LightId;
import lampwright.setup.SetupDocument;
import lampwright.setup.figures.TargetFigures;

/** The ways in which the heads can stand after something happened. */
final class Stages {

  /** A neighbour that has to give more than so much more makes another picture: a judgement. */
  private static final double MOST_CARRIED_STOPS = 2;

  private final Levels before;
  private final Levels after;
  private final Toll toll;
  private final List<Stage> all = new ArrayList<>();

  private Stages(Levels before, Levels after, Toll toll) {
    this.before = before;
    this.after = after;
    this.toll = toll;
  }

  /**
   * All of them, the one where no head is moved first.
   *
   * @param after the setup as it is if nobody touches it
   */
  static List<Stage> of(Levels before, Levels after, Happening happening, Means means, Toll toll) {
    Stages stages = new Stages(before, after, toll);
    stages.all.add(stages.stage(after, List.of()));
    if (happening instanceof Happening.HeadDead(LightId id)) {
      stages.withSpares(id, means.spares());
      stages.withOthersHeads(id);
      stages.carriedByNeighbours(id);
    }
    return List.copyOf(stages.all);
  }

  private Stage stage(Levels levels, List<Turn.Replacement> fixed) {
    List<Stage.Aim> aims = new ArrayList<>();
    List<LightId> givenUp = new ArrayList<>();
    double loss = 0;
    for (Light light : before.setup().lights()) {
      Optional<Stops> wanted = before.ofLight(light.id());
      if (wanted.isEmpty()) {
        continue;
      }
      Optional<Stops> now = levels.ofLight(light.id());
      if (now.isPresent()) {
        boolean isFree = fixed.stream().anyMatch(turn -> turn.light().equals(light.id()));
        aims.add(new Stage.Aim(light.id(), wanted.get().value(), now.get().value(), isFree));
      } else {
        givenUp.add(light.id());
        loss += toll.givenUp(light.role());
      }
    }
    return new Stage(levels.setup(), fixed, aims, givenUp, loss);
  }

  private void withSpares(LightId dead, List<Head> spares) {
    Set<String> tried = new HashSet<>();
    for (Head spare : spares) {
      if (tried.add(spare.name())) {
        replace(dead, spare, Optional.empty());
      }
    }
  }

  private void withOthersHeads(LightId dead) {
    for (Light other : before.setup().lights()) {
      if (!other.id().equals(dead)) {
        replace(dead, other.head(), Optional.of(other.id()));
      }
    }
  }

  /** Puts a head in the dead one's place, where it fits there. */
  private void replace(LightId dead, Head head, Optional<LightId> from) {
    Light lost = get(dead);
    boolean isSame = head.equals(lost.head());
    boolean fits = isSame || (lost.heads() == 1 && lost.modifierOrStandard().fits(head));
    if (!fits) {
      return;
    }
    Light stands = isSame ? alone(dead) : Changed.head(alone(dead), head);
    List<Light> lights = new ArrayList<>();
    for (Light light : before.setup().lights()) {
      if (light.id().equals(dead)) {
        lights.add(stands);
      } else if (from.filter(light.id()::equals).isEmpty()) {
        lights.add(alone(light.id()));
      } else if (light.heads() > 1) {
        lights.add(Changed.heads(alone(light.id()), light.heads() - 1));
      }
    }
    SetupDocument setup = before.setup();
    Levels levels = Levels.of(Changed.setup(setup, setup.exposure(), lights, setup.ambient()));
    Turn.Replacement turn = new Turn.Replacement(dead, head, from, Stops.ZERO);
    all.add(stage(levels, List.of(turn)));
  }

  /** A light for the same thing at the same target makes the sum there whole again. */
  private void carriedByNeighbours(LightId dead) {
    if (after.ofLight(dead).isPresent()) {
      return;
    }
    Stage alone = all.getFirst();
    for (TargetFigures target : before.figures().targets()) {
      double lost = share(target, dead);
      for (Light light : after.setup().lights()) {
        double own = share(target, light.id());
        boolean isOther = !light.id().equals(dead) && light.role() == get(dead).role();
        if (lost > 0 && own > 0 && isOther) {
          double more = Stops.ofRatio((own + lost) / own).value();
          if (more <= MOST_CARRIED_STOPS) {
            all.add(carried(alone, light, more, toll.givenUp(light.role())));
          }
        }
      }
    }
  }

  private static Stage carried(Stage alone, Light by, double more, double givenUp) {
    List<Stage.Aim> aims =
        alone.lights().stream()
            .map(
                aim ->
                    aim.light().equals(by.id())
                        ? new Stage.Aim(
                            aim.light(), aim.wantedStops() + more, aim.nowStops(), false)
                        : aim)
            .toList();
    double loss = alone.loss() - Toll.CARRIED * givenUp + Toll.ofRole(by.role()) * more;
    return new Stage(alone.setup(), List.of(), aims, alone.givenUp(), loss);
  }

  private static double share(TargetFigures target, LightId id) {
    return target.shares().stream()
        .filter(share -> share.light().equals(id))
        .mapToDouble(share -> share.exposure().value())
        .sum();
  }

  private Light get(LightId id) {
    return before.setup().lights().stream()
        .filter(light -> light.id().equals(id))
        .findFirst()
        .orElseThrow();
  }

  /** The light with a reading that says its ISO. */
  private Light alone(LightId id) {
    return Happened.readAlone(before).lights().stream()
        .filter(light -> light.id().equals(id))
        .findFirst()
        .orElseThrow();
  }
}
