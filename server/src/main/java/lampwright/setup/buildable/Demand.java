package lampwright.setup.buildable;

import java.util.List;
import lampwright.engine.unit.Seconds;
import lampwright.setup.Plan;
import lampwright.setup.SetupDocument;
import lampwright.setup.adapting.KitOffer;
import lampwright.setup.figures.Figures;

/**
 * What a setup asks of any kit: made once, where it is saved. {@link PackedDemand} is the same as
 * bytes.
 *
 * @param shotEv100 of its own settings, which the ambient is held against
 * @param betweenFramesS infinite where the plan does not say
 * @param frames 0 where the plan does not say
 * @param readings that its lights bring of their own heads with their own modifiers
 */
public record Demand(
    KitOffer.Shot shot,
    double shotEv100,
    double betweenFramesS,
    int frames,
    List<LightDemand> lights,
    List<OwnReading> readings) {

  /** Keeps the lists as they are. */
  public Demand {
    lights = List.copyOf(lights);
    readings = List.copyOf(readings);
  }

  /**
   * Makes a demand.
   *
   * @param figures of this setup
   */
  public static Demand of(SetupDocument setup, Figures figures) {
    return new Demand(
        KitOffer.Shot.of(setup),
        figures.ev100().value(),
        setup
            .plan()
            .flatMap(Plan::betweenFrames)
            .map(Seconds::value)
            .orElse(Double.POSITIVE_INFINITY),
        setup.plan().flatMap(Plan::frames).orElse(0),
        figures.lights().stream().map(light -> LightDemand.of(light, figures)).toList(),
        setup.lights().stream()
            .filter(light -> light.output().isPresent())
            .map(OwnReading::of)
            .toList());
  }
}
