package lampwright.gear;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import lampwright.document.Pointer;
import lampwright.document.Problems;

/** What the fields of a kit must fulfil together. */
final class KitChecks {

  /** More than any van holds; few enough that trying each on each light takes moments. */
  private static final int MOST_HEADS = 200;

  /** More names than this make a message that nobody reads. */
  private static final int MOST_NAMES = 8;

  private KitChecks() {}

  static void check(Kit kit, Pointer at, Problems problems) {
    checkNumberOfHeads(kit, at, problems);
    checkPacks(kit, at, problems);
    checkPairings(kit, at, problems);
  }

  private static void checkNumberOfHeads(Kit kit, Pointer at, Problems problems) {
    int heads = kit.heads().stream().mapToInt(Several::count).sum();
    if (heads > MOST_HEADS) {
      problems.add(
          at.field("heads"),
          "Heads ("
              + heads
              + " in all) must be at most "
              + MOST_HEADS
              + " in all. Maybe leave out those that stay behind tonight?");
    }
  }

  private static void checkPacks(Kit kit, Pointer at, Problems problems) {
    Set<String> names = new HashSet<>();
    for (int i = 0; i < kit.packs().size(); i++) {
      String name = kit.packs().get(i).item().name();
      if (!names.add(name)) {
        problems.add(
            at.field("packs").item(i).field("pack").field("name"),
            "Name (\"" + name + "\") is another pack's already. Maybe raise that one's count?");
      }
    }
    for (int i = 0; i < kit.heads().size(); i++) {
      Optional<String> pack = kit.heads().get(i).item().pack();
      if (pack.isPresent() && !names.contains(pack.get())) {
        problems.add(
            at.field("heads").item(i).field("head").field("pack"),
            "Pack (\""
                + pack.get()
                + "\") must be the name of one of this kit's packs"
                + (names.isEmpty() ? ", and it has none. Maybe add the pack?" : namesOfPacks(kit)));
      }
    }
  }

  /** The end of a sentence, with the packs' names. */
  private static String namesOfPacks(Kit kit) {
    int more = kit.packs().size() - MOST_NAMES;
    return kit.packs().stream()
        .limit(MOST_NAMES)
        .map(pack -> '"' + pack.item().name() + '"')
        .collect(Collectors.joining(", ", ": ", more > 0 ? " and " + more + " more." : "."));
  }

  private static void checkPairings(Kit kit, Pointer at, Problems problems) {
    Set<List<String>> paired = new HashSet<>();
    for (int i = 0; i < kit.pairings().size(); i++) {
      Pairing pairing = kit.pairings().get(i);
      Pointer here = at.field("pairings").item(i);
      if (kit.heads().stream().noneMatch(h -> h.item().name().equals(pairing.head()))) {
        problems.add(
            here.field("head"),
            "Head (\"" + pairing.head() + "\") must be the name of one of this kit's heads.");
      }
      if (kit.modifiers().stream().noneMatch(m -> m.item().name().equals(pairing.modifier()))) {
        problems.add(
            here.field("modifier"),
            "Modifier (\""
                + pairing.modifier()
                + "\") must be the name of one of this kit's modifiers.");
      }
      if (!paired.add(List.of(pairing.head(), pairing.modifier()))) {
        problems.add(here, "This head and this modifier are paired already. Keep one reading.");
      }
    }
  }
}
