package lampwright.setup.adapting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import lampwright.gear.Gel;
import lampwright.gear.Several;

/** The gels of a kit that may stand for a light's own. */
final class GelChoice {

  /** Of the single gels of a kit, so many of the nearest are worth trying. */
  private static final int NEAREST = 3;

  private static final double HUNDRED_MIRED = 100;

  private GelChoice() {}

  /**
   * Gels for a light.
   *
   * @param indices of the kit's gels; empty for none, and for the light's own that the kit has not
   * @param lossStops of all of them
   * @param cost of the colour that differs
   */
  record Option(List<Gel> gels, List<Integer> indices, double lossStops, double cost) {}

  /**
   * What may be tried, the light's own first where the kit has it. A kit without any gels leaves a
   * light its own, to be brought.
   */
  static List<Option> of(List<Gel> ofLight, KitTonight kit, Weights weights) {
    double wanted = shift(ofLight);
    if (ofLight.isEmpty()) {
      return List.of(option(List.of(), List.of(), wanted, weights));
    }
    if (kit.gels().isEmpty()) {
      return List.of(option(ofLight, List.of(), wanted, weights));
    }
    List<Option> options = new ArrayList<>();
    own(ofLight, kit).ifPresent(own -> options.add(option(ofLight, own, wanted, weights)));
    IntStream.range(0, kit.gels().size())
        .boxed()
        .sorted(
            Comparator.comparingDouble(
                i -> Math.abs(kit.gels().get(i).item().shift().value() - wanted)))
        .limit(NEAREST)
        .forEach(
            i ->
                options.add(
                    option(List.of(kit.gels().get(i).item()), List.of(i), wanted, weights)));
    options.add(option(List.of(), List.of(), wanted, weights));
    return options;
  }

  /** The kit's indices of all the light's own gels, where it has more than one and all of them. */
  private static Optional<List<Integer>> own(List<Gel> ofLight, KitTonight kit) {
    List<Gel> gels = kit.gels().stream().map(Several::item).toList();
    List<Integer> indices = ofLight.stream().map(gels::indexOf).toList();
    boolean all = indices.stream().noneMatch(i -> i < 0);
    boolean each = indices.stream().distinct().count() == indices.size();
    return all && each && indices.size() > 1 ? Optional.of(indices) : Optional.empty();
  }

  private static Option option(
      List<Gel> gels, List<Integer> indices, double wanted, Weights weights) {
    double loss = gels.stream().mapToDouble(gel -> gel.loss().value()).sum();
    double cost = weights.colour() * Math.abs(shift(gels) - wanted) / HUNDRED_MIRED;
    return new Option(gels, indices, loss, cost);
  }

  private static double shift(List<Gel> gels) {
    return gels.stream().mapToDouble(gel -> gel.shift().value()).sum();
  }
}
