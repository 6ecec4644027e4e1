package lampwright.setup.figures;

import java.util.List;
import java.util.Optional;
import lampwright.engine.exposure.Ev100;
import lampwright.engine.unit.LuxSeconds;
import lampwright.engine.unit.WattSeconds;
import lampwright.language.Said;
import lampwright.setup.LightId;

/**
 * Everything that is computed from a setup document, one record a subject.
 *
 * @param ev100 that the shooting exposure asks for
 * @param shootingExposure the light that exposes a mid-tone rightly
 * @param lights in the document's order
 * @param targets that have light, in the order of their first lights
 * @param unlit the other targets, as far as anything is known of their light
 * @param againstAmbient the balance of flash and ambient at the first target
 * @param dials what a stop on each dial changes at the first target; empty where nothing lights one
 * @param optics absent without body or lens
 * @param movements of the subjects whose speed is known
 * @param paths the light along the ways of the subjects that have marks
 * @param sun absent indoors and where place, date, time or the clocks' offset is not known
 * @param winds of the lights whose stands are known; none indoors
 * @param needs what the document would have to say for the absent figures, as JSON Pointers
 * @param leftOut what these figures do not take into account, in words
 */
public record Figures(
    Ev100 ev100,
    LuxSeconds shootingExposure,
    List<LightFigures> lights,
    Optional<AmbientFigures> ambient,
    List<TargetFigures> targets,
    List<UnlitTarget> unlit,
    Optional<FlashAgainstAmbient> againstAmbient,
    List<DialStep> dials,
    Optional<OpticsFigures> optics,
    List<MovementFigures> movements,
    List<PathFigures> paths,
    Optional<SunFigures> sun,
    List<WindFigures> winds,
    PowerFigures power,
    ColourFigures colour,
    List<String> needs,
    List<Said> leftOut) {

  public Figures {
    lights = List.copyOf(lights);
    targets = List.copyOf(targets);
    unlit = List.copyOf(unlit);
    dials = List.copyOf(dials);
    movements = List.copyOf(movements);
    paths = List.copyOf(paths);
    winds = List.copyOf(winds);
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

  /** Of all heads; absent where a light's power is not known. */
  public Optional<WattSeconds> energyPerFrame() {
    return power.energyPerFrame();
  }
}
