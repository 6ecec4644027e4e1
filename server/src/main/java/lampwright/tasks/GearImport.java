package lampwright.tasks;

import java.util.List;
import java.util.Optional;
import lampwright.gear.exchange.LineFault;
import lampwright.gear.stock.GearId;

/**
 * What an import did, or would do.
 *
 * @param trial whether nothing was kept
 * @param clash why it cannot be kept as a whole, although each line is right
 */
public record GearImport(boolean trial, List<Line> lines, Optional<String> clash) {

  /** Copies the lines. */
  public GearImport {
    lines = List.copyOf(lines);
  }

  /** What becomes of a line. */
  public enum Outcome {
    NEW,
    CHANGED,
    SAME,
    FAULTY
  }

  /**
   * One line.
   *
   * @param number where it begins in the file
   * @param id the gear that it is; absent for a faulty line, and for a new one on trial
   * @param name absent where the line could not be read
   */
  public record Line(
      int number,
      Outcome outcome,
      Optional<GearId> id,
      Optional<String> name,
      List<LineFault> faults) {

    public Line {
      faults = List.copyOf(faults);
    }
  }

  /** How many lines come to this. */
  public int count(Outcome outcome) {
    return (int) lines.stream().filter(line -> line.outcome() == outcome).count();
  }
}
