package lampwright.learning.drill;

import java.util.List;
import java.util.Optional;
import lampwright.engine.unit.Stops;
import lampwright.language.Filling;
import lampwright.language.Said;
import lampwright.setup.Role;

/** Where a light must stand so that it is so many stops under the key, its power untouched. */
final class DistanceForRatio implements Maker {

  private static final List<Double> WISHES = List.of(0.0, 0.5, 1.0, 1.5, 2.0, 3.0);

  /** A smaller step is turned on the dial. */
  private static final double LEAST = 0.5;

  /** Halvings of the interval in which the distance is sought: to less than a millimetre. */
  private static final int HALVINGS = 30;

  @Override
  public Optional<Drill> make(Material material, Dice dice) {
    List<Standing> lights =
        Standing.in(material).stream()
            .filter(l -> l.light().role() != Role.KEY)
            .filter(l -> l.figures().fromKey().filter(k -> k.value() < 0.05).isPresent())
            .toList();
    if (lights.isEmpty()) {
      return Optional.empty();
    }
    Standing light = dice.pick(lights);
    double under = Fair.shown(-light.figures().fromKey().orElseThrow().value(), 1) + 0.0;
    double wished = dice.pick(WISHES);
    double less = wished - under;
    double byRule = light.distanceM() * new Stops(less / 2).toFactor();
    if (Math.abs(less) < LEAST || !Standing.isPossible(byRule)) {
      return Optional.empty();
    }
    return light.loses(byRule).map(_ -> drill(light, under, wished, distance(light, less)));
  }

  /** Where it has lost so much, by its true shape. */
  private static double distance(Standing light, double less) {
    double byRule = light.distanceM() * new Stops(less / 2).toFactor();
    double near = byRule * 0.9;
    double far = byRule * 1.1;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (near + far) / 2;
      boolean isTooNear = light.loses(middle).map(l -> l.value() < less).orElse(middle < byRule);
      near = isTooNear ? middle : near;
      far = isTooNear ? far : middle;
    }
    return near;
  }

  private static Drill drill(Standing light, double under, double wished, double distanceM) {
    double from = light.distanceM();
    double factor = new Stops(wished - under).toFactor();
    Filling name = Filling.text(Fair.quoted(light.light()));
    return new Drill(
        DrillKind.DISTANCE_FOR_RATIO,
        List.of(
            Said.of(
                "drilling.distanceForRatio.given",
                name,
                Filling.length(from, 1),
                new Filling.Where(light.light().target().where()),
                Filling.number(under, 1))),
        Said.of("drilling.distanceForRatio.question", Filling.number(wished, 1)),
        Fair.number(
            Measure.LIGHT_DISTANCE_M,
            distanceM,
            new Answer.Slip(from * factor, Said.of("drilling.slip.once")),
            new Answer.Slip(
                from * from / distanceM, Said.of("drilling.distanceForRatio.slip.sign"))),
        List.of(
            Said.of(
                "drilling.distanceForRatio.why",
                new Filling.SignedBriefly(Fair.shown(under - wished, 1)),
                new Filling.Rounded(distanceM / from, 2),
                Filling.length(distanceM, 1))),
        List.of());
  }
}
