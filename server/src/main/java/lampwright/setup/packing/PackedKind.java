package lampwright.setup.packing;

import java.util.List;
import java.util.Optional;

/**
 * One kind of gear that is carried.
 *
 * @param name as the setups call it
 * @param count the most that one setup needs at once; setups that are shot one after the other
 *     share it
 * @param eachKg what one weighs; absent where no setup and no kit says
 * @param needs which setup needs how many, in the order of the day
 * @param inKits how many the kits have that come along; absent where no kit was named
 */
public record PackedKind(
    Section section,
    String name,
    int count,
    Optional<Double> eachKg,
    List<Need> needs,
    Optional<Integer> inKits) {

  /** What kind of gear it is; packing lists go by these, in this order. */
  public enum Section {
    HEADS,
    PACKS,
    MODIFIERS,
    GELS,
    STANDS,
    CAMERAS,
    LENSES,
    FILTERS,
    BATTERIES
  }

  /**
   * What one setup needs of it.
   *
   * @param setup its place in the order of the day, from 0
   */
  public record Need(int setup, int count) {}

  public PackedKind {
    needs = List.copyOf(needs);
  }

  /** How many the kits are short of; 0 where no kit was named. */
  public int lacking() {
    return inKits.map(there -> Math.max(0, count - there)).orElse(0);
  }

  /** What all of it weighs, where that is known. */
  public Optional<Double> kg() {
    return eachKg.map(each -> each * count);
  }

  /** A gel or a filter weighs next to nothing: it is never missed in a sum of weights. */
  public boolean isWeighed() {
    return section != Section.GELS && section != Section.FILTERS;
  }
}
