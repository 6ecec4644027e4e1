package lampwright.gear;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import lampwright.document.Pointer;
import lampwright.document.Problems;

/** What the fields of a kit must fulfil together. */
final class KitChecks {

  /** More than any van holds; few enough that trying each on each light takes moments. */
  private static final int MOST_HEADS = 200;

  private KitChecks() {}

  static void check(Kit kit, Pointer at, Problems problems) {
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
