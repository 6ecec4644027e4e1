package lampwright.setup.figures;

import java.util.List;
import java.util.Optional;
import lampwright.engine.exposure.Ev100;
import lampwright.engine.unit.LuxSeconds;
import lampwright.engine.unit.WattSeconds;
import lampwright.setup.LightId;

/**
 * Everything that is computed from a setup document.
 *
 * @param ev100 that the shooting exposure asks for
 * @param shootingExposure the light that exposes a mid-tone rightly
 * @param lights in the document's order
 * @param energyPerFrame of all heads; absent where a light's power is not known
 * @param needs what the document would have to say for the absent figures, as JSON Pointers
 * @param leftOut what these figures do not take into account, in words
 */
public record Figures(
    Ev100 ev100,
    LuxSeconds shootingExposure,
    List<LightFigures> lights,
    Optional<AmbientFigures> ambient,
    List<TargetFigures> targets,
    Optional<WattSeconds> energyPerFrame,
    List<String> needs,
    List<String> leftOut) {

  public Figures {
    lights = List.copyOf(lights);
    targets = List.copyOf(targets);
    needs = List.copyOf(needs);
    leftOut = List.copyOf(leftOut);
  }

  /** The figures of one of the setup's lights. */
  public LightFigures get(LightId id) {
    return lights.stream()
        .filter(figures -> figures.light().id().equals(id))
        .findFirst()
        .orElseThrow();
  }
}
