package lampwright.setup.packing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import lampwright.engine.unit.Bounds;
import lampwright.gear.Kit;
import lampwright.gear.Modifier;
import lampwright.gear.NeutralDensity;
import lampwright.gear.Pack;
import lampwright.gear.Several;
import lampwright.setup.Camera;
import lampwright.setup.Light;
import lampwright.setup.SetupDocument;

/** Gathers the kinds of gear of several setups: of each the most that one of them needs. */
final class Gathered {

  private record Kind(PackedKind.Section section, String name) {}

  private final List<Kit> kits;
  private final Map<Kind, TreeMap<Integer, Integer>> needs = new LinkedHashMap<>();
  private final Map<Kind, Double> weights = new LinkedHashMap<>();

  Gathered(List<Kit> kits) {
    this.kits = List.copyOf(kits);
  }

  void add(int setup, SetupDocument document) {
    Map<String, Integer> onPacks = new TreeMap<>();
    for (Light light : document.lights()) {
      add(setup, light);
      light.head().pack().ifPresent(pack -> onPacks.merge(pack, light.heads(), Integer::sum));
    }
    onPacks.forEach((name, heads) -> addPacks(setup, name, heads));
    document
        .camera()
        .flatMap(Camera::body)
        .ifPresent(
            body -> need(setup, PackedKind.Section.CAMERAS, body.name(), 1, body.weightKg()));
    document
        .camera()
        .flatMap(Camera::lens)
        .ifPresent(lens -> need(setup, PackedKind.Section.LENSES, lens.name(), 1, lens.weightKg()));
    double density = document.exposure().neutralDensity().value();
    if (density > 0) {
      need(setup, PackedKind.Section.FILTERS, filter(density), 1, Optional.empty());
    }
  }

  private void add(int setup, Light light) {
    need(
        setup,
        PackedKind.Section.HEADS,
        light.head().name(),
        light.heads(),
        light.head().weightKg());
    light
        .modifier()
        .filter(modifier -> !modifier.equals(Modifier.standardReflector()))
        .ifPresent(
            modifier ->
                need(
                    setup,
                    PackedKind.Section.MODIFIERS,
                    modifier.name(),
                    modifier.piecesFor(light.heads()),
                    modifier.weightKg()));
    light
        .gels()
        .forEach(
            gel ->
                need(setup, PackedKind.Section.GELS, gel.name(), light.heads(), Optional.empty()));
    light
        .stand()
        .ifPresent(
            stand -> need(setup, PackedKind.Section.STANDS, stand.name(), 1, stand.weightKg()));
  }

  /** As many packs as the heads need outlets; one where nobody says how many outlets it has. */
  private void addPacks(int setup, String name, int heads) {
    Optional<Pack> pack = findPack(name);
    int outlets = pack.map(Pack::outlets).orElse(heads);
    need(
        setup,
        PackedKind.Section.PACKS,
        name,
        (heads + outlets - 1) / outlets,
        pack.flatMap(Pack::weightKg));
  }

  private Optional<Pack> findPack(String name) {
    return kits.stream()
        .flatMap(kit -> kit.packs().stream())
        .map(Several::item)
        .filter(pack -> pack.name().equals(name))
        .findFirst();
  }

  /** The filter of a kit that takes so much; where none does, what it must take says it. */
  private String filter(double stops) {
    return kits.stream()
        .flatMap(kit -> kit.neutralDensities().stream())
        .filter(grey -> Math.abs(grey.loss().value() - stops) < 0.05)
        .map(NeutralDensity::name)
        .findFirst()
        .orElseGet(() -> "ND " + Bounds.rounded(stops * 0.3, 1));
  }

  /** Charged batteries beyond the ones within. */
  void addSpares(String of, int count) {
    if (count > 0) {
      need(0, PackedKind.Section.BATTERIES, of, count, Optional.empty());
    }
  }

  private void need(
      int setup, PackedKind.Section section, String name, int count, Optional<Double> eachKg) {
    Kind kind = new Kind(section, name);
    needs.computeIfAbsent(kind, _ -> new TreeMap<>()).merge(setup, count, Integer::sum);
    eachKg.ifPresent(kg -> weights.putIfAbsent(kind, kg));
  }

  List<PackedKind> kinds() {
    List<PackedKind> kinds = new ArrayList<>();
    needs.forEach(
        (kind, bySetup) ->
            kinds.add(
                new PackedKind(
                    kind.section(),
                    kind.name(),
                    bySetup.values().stream().mapToInt(Integer::intValue).max().orElse(0),
                    Optional.ofNullable(weights.get(kind)),
                    bySetup.entrySet().stream()
                        .map(need -> new PackedKind.Need(need.getKey(), need.getValue()))
                        .toList(),
                    kits.isEmpty() || kind.section() == PackedKind.Section.BATTERIES
                        ? Optional.empty()
                        : Optional.of(kits.stream().mapToInt(kit -> held(kit, kind)).sum()))));
    return kinds;
  }

  private static int held(Kit kit, Kind kind) {
    return switch (kind.section()) {
      case HEADS -> count(kit.heads(), kind.name(), head -> head.name());
      case PACKS -> count(kit.packs(), kind.name(), pack -> pack.name());
      case MODIFIERS -> count(kit.modifiers(), kind.name(), modifier -> modifier.name());
      case GELS -> count(kit.gels(), kind.name(), gel -> gel.name());
      case STANDS -> count(kit.stands(), kind.name(), stand -> stand.name());
      case CAMERAS ->
          (int) kit.bodies().stream().filter(body -> body.name().equals(kind.name())).count();
      case LENSES ->
          (int) kit.lenses().stream().filter(lens -> lens.name().equals(kind.name())).count();
      case FILTERS ->
          (int)
              kit.neutralDensities().stream()
                  .filter(grey -> grey.name().equals(kind.name()))
                  .count();
      case BATTERIES -> 0;
    };
  }

  private static <G> int count(List<Several<G>> several, String name, Function<G, String> called) {
    return several.stream()
        .filter(pieces -> called.apply(pieces.item()).equals(name))
        .mapToInt(Several::count)
        .sum();
  }
}
