package lampwright.setup.adapting;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lampwright.gear.Gel;
import lampwright.gear.Head;
import lampwright.gear.Kit;
import lampwright.gear.Modifier;
import lampwright.gear.Pack;
import lampwright.gear.Several;
import lampwright.gear.Stand;
import lampwright.language.Filling;
import lampwright.language.Said;

/**
 * What of a kit can be used today, like pieces together.
 *
 * @param heads without the dead ones
 * @param modifiers each once with its count; the heads' own standard reflector is not among them
 * @param packs each by itself, without the dead ones
 */
record KitTonight(
    Kit kit,
    List<HeadModel> heads,
    List<Several<Modifier>> modifiers,
    List<Several<Gel>> gels,
    List<Several<Stand>> stands,
    List<PackTonight> packs) {

  /**
   * Heads of one model.
   *
   * @param count of those that work
   * @param charges how many full charges each has with it, the started one by its share; infinite
   *     on the mains
   */
  record HeadModel(Head head, int count, double charges) {}

  /** A pack that works. */
  record PackTonight(Pack pack, double charges) {}

  static KitTonight of(Kit kit, List<HeadTonight> tonight) {
    Map<String, HeadTonight> states = new LinkedHashMap<>();
    tonight.forEach(state -> states.put(state.head(), state));
    List<HeadModel> heads = new ArrayList<>();
    for (Several<Head> several : together(kit.heads())) {
      Head head = several.item();
      Optional<HeadTonight> state = Optional.ofNullable(states.get(head.name()));
      int count = several.count() - state.map(HeadTonight::dead).orElse(0);
      if (count > 0) {
        heads.add(new HeadModel(head, count, charges(head.feed(), head.batteries(), state)));
      }
    }
    return new KitTonight(
        kit,
        heads,
        together(kit.modifiers()),
        together(kit.gels()),
        together(kit.stands()),
        packs(kit, states));
  }

  private static List<PackTonight> packs(Kit kit, Map<String, HeadTonight> states) {
    List<PackTonight> packs = new ArrayList<>();
    for (Several<Pack> several : kit.packs()) {
      Optional<HeadTonight> state = Optional.ofNullable(states.get(several.item().name()));
      int count = several.count() - state.map(HeadTonight::dead).orElse(0);
      for (int i = 0; i < count; i++) {
        Pack pack = several.item();
        packs.add(new PackTonight(pack, charges(pack.feed(), pack.batteries(), state)));
      }
    }
    return packs;
  }

  private static double charges(Head.Feed feed, int batteries, Optional<HeadTonight> state) {
    return feed == Head.Feed.MAINS
        ? Double.POSITIVE_INFINITY
        : batteries - 1 + state.map(HeadTonight::chargeShare).orElse(1.0);
  }

  /** Equal pieces that stand in a kit more than once, counted together, in the kit's order. */
  private static <G> List<Several<G>> together(List<Several<G>> counted) {
    Map<G, Integer> counts = new LinkedHashMap<>();
    counted.forEach(several -> counts.merge(several.item(), several.count(), Integer::sum));
    List<Several<G>> all = new ArrayList<>();
    counts.forEach((item, count) -> all.add(new Several<>(count, item)));
    return all;
  }

  /** What is said of tonight that a kit does not have, in words. */
  static List<Said> unknown(Kit kit, List<HeadTonight> tonight) {
    List<Said> unknown = new ArrayList<>();
    for (HeadTonight state : tonight) {
      boolean head = kit.heads().stream().anyMatch(h -> h.item().name().equals(state.head()));
      boolean pack = kit.packs().stream().anyMatch(p -> p.item().name().equals(state.head()));
      if (!head && !pack) {
        unknown.add(Said.of("adapting.cannot.notInKit", Filling.text(state.head())));
      }
    }
    return unknown;
  }

  int headCount() {
    return heads.stream().mapToInt(HeadModel::count).sum();
  }
}
