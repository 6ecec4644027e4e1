package lampwright.setup.buildable;

import java.util.List;
import lampwright.setup.SetupDocument;
import lampwright.setup.figures.Figures;

/**
 * What a setup asks of any kit: made once, where it is saved.
 *
 * @param shotEv100 of its own settings, which the ambient is held against
 */
public record Demand(SetupDocument setup, double shotEv100, List<LightDemand> lights) {

  /** Keeps the lights as they are. */
  public Demand {
    lights = List.copyOf(lights);
  }

  /**
   * Makes a demand.
   *
   * @param figures of this setup
   */
  public static Demand of(SetupDocument setup, Figures figures) {
    return new Demand(
        setup,
        figures.ev100().value(),
        figures.lights().stream().map(light -> LightDemand.of(light, figures)).toList());
  }

  /** Asks whether a light brings a reading of its own head with its own modifier. */
  boolean bringsReadings() {
    return setup.lights().stream().anyMatch(light -> light.output().isPresent());
  }
}
