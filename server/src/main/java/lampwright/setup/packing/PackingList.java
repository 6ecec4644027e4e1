package lampwright.setup.packing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import lampwright.gear.Kit;
import lampwright.setup.SetupDocument;

/**
 * What must be carried for setups that are shot one after the other.
 *
 * @param titles of the setups, in the order of the day
 * @param kinds of gear, by section, the heaviest need first
 * @param ballast of each setup; sand or water is carried for the one that needs most
 */
public record PackingList(List<String> titles, List<PackedKind> kinds, List<Ballast> ballast) {

  public PackingList {
    titles = List.copyOf(titles);
    kinds = List.copyOf(kinds);
    ballast = List.copyOf(ballast);
  }

  /** For the setups as they stand, with no kit to compare with. */
  public static PackingList of(List<SetupDocument> setups) {
    return of(setups, List.of(), Map.of());
  }

  /**
   * For the setups as they stand.
   *
   * @param kits that come along, all together; empty where none is named. A piece that is in two of
   *     them is counted twice.
   * @param spares charged batteries beyond the ones within, by the name of what they feed
   */
  public static PackingList of(
      List<SetupDocument> setups, List<Kit> kits, Map<String, Integer> spares) {
    Gathered gathered = new Gathered(kits);
    for (int i = 0; i < setups.size(); i++) {
      gathered.add(i, setups.get(i));
    }
    spares.forEach(gathered::addSpares);
    List<PackedKind> kinds = new ArrayList<>(gathered.kinds());
    kinds.sort(
        Comparator.comparing(PackedKind::section)
            .thenComparing(Comparator.comparingInt(PackedKind::count).reversed())
            .thenComparing(PackedKind::name));
    return new PackingList(
        setups.stream().map(SetupDocument::title).toList(),
        kinds,
        setups.stream().map(Ballast::of).toList());
  }

  /** The kinds of one section. */
  public List<PackedKind> in(PackedKind.Section section) {
    return kinds.stream().filter(kind -> kind.section() == section).toList();
  }

  /** What all weighs, ballast aside. */
  public Weight weight() {
    return Weight.of(kinds);
  }

  /** Sand or water for the setup that needs most of it, in kilograms. */
  public int mostBallastKg() {
    return ballast.stream().mapToInt(Ballast::kg).max().orElse(0);
  }

  /** The places in the day of the setups whose wind figures lack something. */
  public List<Integer> windUnknown() {
    return IntStream.range(0, ballast.size())
        .filter(i -> !ballast.get(i).windUnknown().isEmpty())
        .boxed()
        .toList();
  }

  /** What the kits are short of. */
  public List<PackedKind> lacking() {
    return kinds.stream().filter(kind -> kind.lacking() > 0).toList();
  }
}
