package lampwright.setup.adapting;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import lampwright.engine.Known;
import lampwright.engine.unit.Stops;
import lampwright.gear.Kit;
import lampwright.gear.Modifier;
import lampwright.gear.Stand;
import lampwright.setup.Ambient;
import lampwright.setup.Camera;
import lampwright.setup.Light;
import lampwright.setup.LightId;
import lampwright.setup.SetupDocument;

/** Writes a plan down as a complete setup that could be saved. */
final class AdaptedDocument {

  private final AdaptationProblem problem;
  private final SetupDocument setup;
  private final PairedReadings readings;
  private final NewConditions conditions;

  AdaptedDocument(AdaptationProblem problem, Kit kit, NewConditions conditions) {
    this.problem = problem;
    this.setup = problem.setup();
    this.readings = new PairedReadings(setup, kit);
    this.conditions = conditions;
  }

  /**
   * The document.
   *
   * @param stands what carries each light, in the setup's order
   */
  SetupDocument of(AdaptationPlan plan, List<Optional<Stand>> stands) {
    List<Light> lights = new ArrayList<>();
    Set<LightId> lit = new HashSet<>();
    for (int i = 0; i < setup.lights().size(); i++) {
      Light old = setup.lights().get(i);
      Optional<Stand> stand = stands.get(i);
      plan.lit()
          .get(i)
          .ifPresent(
              made -> {
                lights.add(light(old, made, stand));
                lit.add(old.id());
              });
    }
    return new SetupDocument(
        setup.title(),
        setup.intent(),
        setup.moods(),
        setup.genre(),
        conditions.occasion(),
        setup.exposure().with(plan.setting().exposure()),
        camera(problem.cameras().get(plan.camera())),
        setup.subjects(),
        setup.surfaces(),
        lights,
        ambient(),
        setup.plan(),
        setup.buildOrder().stream()
            .filter(step -> step.light().isEmpty() || lit.contains(step.light().get()))
            .toList(),
        setup.cautions(),
        List.of(),
        List.of());
  }

  private Optional<Camera> camera(CameraChoice choice) {
    if (choice.body().isEmpty() && choice.lens().isEmpty()) {
      return setup.camera();
    }
    return Optional.of(
        new Camera(
            choice.body(),
            choice.lens(),
            setup.camera().flatMap(Camera::place),
            setup.camera().flatMap(Camera::aim),
            setup.camera().flatMap(Camera::bearing),
            setup.camera().flatMap(Camera::focusDistance)));
  }

  private Optional<Ambient> ambient() {
    return conditions
        .ambient()
        .map(
            level ->
                setup
                    .ambient()
                    .filter(own -> own.level().equals(level))
                    .orElseGet(
                        () ->
                            new Ambient(
                                level,
                                conditions.known() == Known.ESTIMATED ? Known.ESTIMATED : Known.SET,
                                Optional.empty(),
                                setup.ambient().flatMap(Ambient::source),
                                Optional.empty())));
  }

  /** The light as the kit makes it. The old reading was another head's, so it goes. */
  private Light light(Light old, LightRow.Lit made, Optional<Stand> stand) {
    Making making = made.making();
    Modifier modifier = making.modifier();
    return new Light(
        old.id(),
        old.role(),
        old.reason(),
        making.head(),
        making.heads(),
        making.pops(),
        Optional.of(modifier),
        readings.of(making.head(), modifier),
        making.gels(),
        making.place(),
        old.placeKnown(),
        old.aim(),
        old.target(),
        stand,
        Optional.of(new Stops(making.dial().down(made.step()))),
        Optional.empty());
  }
}
