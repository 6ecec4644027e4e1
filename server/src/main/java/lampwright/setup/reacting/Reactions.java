package lampwright.setup.reacting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lampwright.setup.LightId;
import lampwright.setup.SetupDocument;

/** Finds what to change when something happened to a setup that stands. */
public final class Reactions {

  private final Levels before;
  private final Happening happening;
  private final Means means;
  private final Toll toll;

  private Reactions(Levels before, Happening happening, Means means) {
    this.before = before;
    this.happening = happening;
    this.means = means;
    this.toll = Toll.of(before.setup());
  }

  /** What to change with the setup's own gear and every dial free; see the other. */
  public static Reaction to(SetupDocument setup, Happening happening) {
    return to(setup, happening, Means.ofSetup());
  }

  /**
   * What to change; deterministic.
   *
   * @throws IllegalArgumentException where the happening names a light that the setup does not have
   */
  public static Reaction to(SetupDocument setup, Happening happening, Means means) {
    light(happening)
        .filter(id -> setup.lights().stream().noneMatch(light -> light.id().equals(id)))
        .ifPresent(
            id -> {
              throw new IllegalArgumentException(
                  "Light (\"" + id + "\") is not one of this setup's lights.");
            });
    return new Reactions(Levels.of(setup), happening, means).reaction();
  }

  /** The light that something happened to. */
  static Optional<LightId> light(Happening happening) {
    return switch (happening) {
      case Happening.LightMoved moved -> Optional.of(moved.light());
      case Happening.HeadDead dead -> Optional.of(dead.light());
      case Happening.AmbientReads _, Happening.AmbientFalls _ -> Optional.empty();
    };
  }

  private Reaction reaction() {
    Levels after = Happened.to(before, happening);
    List<Stage> stages = Stages.of(before, after, happening, means, toll);
    WayBuilding building = new WayBuilding(before);
    OptionalDouble ambientMiss = ambientMiss(after);
    double untouchedLoss = untouchedLoss(stages.getFirst(), ambientMiss);
    Way untouched = building.untouched(after, stages.getFirst().givenUp(), untouchedLoss);
    List<String> needs = needs();
    if (!needs.isEmpty()) {
      return new Reaction.NotKnown(happening, untouched, needs);
    }
    if (untouched.holdsAll()) {
      return new Reaction.ChangeNothing(happening, untouched);
    }
    List<CameraSettings> cameras = new ArrayList<>();
    List<Candidate> found = new ArrayList<>();
    for (int i = 0; i < stages.size(); i++) {
      Stage stage = stages.get(i);
      CameraSettings camera = CameraSettings.of(stage.setup(), means);
      cameras.add(camera);
      found.addAll(new DialSearch(i, stage, camera, toll, ambientMiss, untouchedLoss).run());
    }
    List<Way> ways =
        Choosing.of(found).stream()
            .map(c -> building.of(c, stages.get(c.stage()), cameras.get(c.stage())))
            .toList();
    return ways.isEmpty()
        ? new Reaction.NothingHelps(happening, untouched)
        : new Reaction.Turns(happening, untouched, ways);
  }

  private OptionalDouble ambientMiss(Levels after) {
    return before.ofAmbient().isPresent() && after.ofAmbient().isPresent()
        ? OptionalDouble.of(after.ofAmbient().get().minus(before.ofAmbient().get()).value())
        : OptionalDouble.empty();
  }

  private double untouchedLoss(Stage stage, OptionalDouble ambientMiss) {
    double loss = stage.loss() + toll.ambient(ambientMiss.orElse(0));
    for (Stage.Aim aim : stage.lights()) {
      double miss = Math.abs(aim.nowStops() - aim.wantedStops());
      loss += miss * weight(aim.light());
    }
    return loss;
  }

  private double weight(LightId id) {
    return before.setup().lights().stream()
        .filter(light -> light.id().equals(id))
        .mapToDouble(light -> Toll.ofRole(light.role()))
        .sum();
  }

  /** What is not known of that which the happening is about. */
  private List<String> needs() {
    return switch (happening) {
      case Happening.AmbientReads _, Happening.AmbientFalls _ ->
          before.ofAmbient().isPresent() ? List.of() : List.of("/ambient");
      case Happening.LightMoved(LightId id, _) ->
          before.ofLight(id).isPresent()
              ? List.of()
              : before.find(id).map(light -> light.needs()).orElse(List.of());
      case Happening.HeadDead _ -> List.of();
    };
  }
}
