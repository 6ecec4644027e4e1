package lampwright.setup.packing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import lampwright.gear.Kit;
import lampwright.gear.Several;

/**
 * Several kits as one, for setups that are made with all of them. A piece that is in two of them is
 * counted twice.
 */
public final class KitsTogether {

  private KitsTogether() {}

  /** At least one kit. */
  public static Kit of(List<Kit> kits) {
    return kits.size() == 1
        ? kits.getFirst()
        : new Kit(
            kits.stream().map(Kit::name).collect(Collectors.joining(" + ")),
            Optional.empty(),
            all(kits, Kit::bodies),
            all(kits, Kit::lenses),
            summed(kits, Kit::heads),
            summed(kits, Kit::packs),
            summed(kits, Kit::modifiers),
            all(kits, Kit::pairings),
            summed(kits, Kit::gels),
            all(kits, Kit::neutralDensities),
            summed(kits, Kit::stands));
  }

  private static <T> List<T> all(List<Kit> kits, Function<Kit, List<T>> of) {
    return kits.stream().flatMap(kit -> of.apply(kit).stream()).distinct().toList();
  }

  private static <G> List<Several<G>> summed(List<Kit> kits, Function<Kit, List<Several<G>>> of) {
    Map<G, Integer> counts = new LinkedHashMap<>();
    kits.stream()
        .flatMap(kit -> of.apply(kit).stream())
        .forEach(several -> counts.merge(several.item(), several.count(), Integer::sum));
    List<Several<G>> together = new ArrayList<>();
    counts.forEach((item, count) -> together.add(new Several<>(count, item)));
    return together;
  }
}
