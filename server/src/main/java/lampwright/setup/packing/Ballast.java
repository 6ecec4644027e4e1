package lampwright.setup.packing;

import java.util.List;
import lampwright.setup.Light;
import lampwright.setup.LightId;
import lampwright.setup.SetupDocument;
import lampwright.setup.figures.WindComputation;
import lampwright.setup.figures.WindFigures;

/**
 * What one setup's stands carry as ballast, sand or water: what lies on them as the setup was, and
 * what the wind figures miss beyond it. Whether a plan is plausible, and no permission.
 *
 * @param kg in all, each stand's rounded up to a whole kilogram
 * @param stands that carry some
 * @param windUnknown the lights on stands whose wind figures lack the wind or the legs' radius; for
 *     these only what lay on them is counted
 */
public record Ballast(int kg, List<OnStand> stands, List<LightId> windUnknown) {

  /** What lies on one light's stand, rounded up to a whole kilogram. */
  public record OnStand(LightId light, int kg) {}

  public Ballast {
    stands = List.copyOf(stands);
    windUnknown = List.copyOf(windUnknown);
  }

  /** Of one setup; outdoors by the wind that it states. */
  public static Ballast of(SetupDocument setup) {
    List<WindFigures> winds = WindComputation.of(setup);
    List<OnStand> stands =
        setup.lights().stream()
            .filter(light -> light.stand().isPresent())
            .map(light -> new OnStand(light.id(), kg(light, winds)))
            .filter(on -> on.kg() > 0)
            .toList();
    return new Ballast(
        stands.stream().mapToInt(OnStand::kg).sum(),
        stands,
        winds.stream().filter(w -> w.ballast().isEmpty()).map(WindFigures::light).toList());
  }

  private static int kg(Light light, List<WindFigures> winds) {
    double missing =
        winds.stream()
            .filter(wind -> wind.light().equals(light.id()))
            .flatMap(wind -> wind.ballast().stream())
            .mapToDouble(ballast -> ballast.value())
            .findFirst()
            .orElse(0);
    double there = light.stand().map(stand -> stand.ballastKg()).orElse(0.0);
    return (int) Math.ceil(there + missing);
  }
}
