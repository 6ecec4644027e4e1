package lampwright.gear.exchange;

import java.util.List;
import java.util.Optional;
import lampwright.gear.stock.GearId;
import lampwright.gear.stock.GearItem;

/** One piece of gear in a file that was read. */
public sealed interface FileLine {

  /** Where it begins: a table's line, from 1, or its place in a list, from 1. */
  int number();

  /**
   * It is right by itself.
   *
   * @param id which gear it is; absent where the file does not say
   */
  record Sound(int number, Optional<GearId> id, GearItem item) implements FileLine {}

  /**
   * It cannot be read.
   *
   * @param faults at least one
   */
  record Faulty(int number, List<LineFault> faults) implements FileLine {

    /** Copies the list. */
    public Faulty {
      faults = List.copyOf(faults);
    }
  }
}
