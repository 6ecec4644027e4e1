package lampwright.wording;

import java.util.Optional;
import lampwright.engine.Known;

/**
 * A figure as it is printed: large number, unit beside it, below it the small word that says what
 * it is.
 *
 * @param value the number, in the form that the trade reads ("f/5.6", "1/125", "−1.3")
 * @param unit the unit beside it ("stops", "px"); empty where the value says it
 * @param name what it is ("aperture")
 * @param uncertainty beside it, as "±0.3"; empty where none is known
 * @param known how it is known, where that is not plain
 * @param working how it was computed, where it was
 */
public record Figure(
    String value,
    String unit,
    String name,
    String uncertainty,
    Optional<Known> known,
    Optional<WorkingStep> working) {

  /** A figure that says itself how it is known. */
  public static Figure of(String value, String unit, String name) {
    return new Figure(value, unit, name, "", Optional.empty(), Optional.empty());
  }

  public Figure with(Known how) {
    return new Figure(value, unit, name, uncertainty, Optional.of(how), working);
  }

  public Figure with(WorkingStep step) {
    return new Figure(value, unit, name, uncertainty, known, Optional.of(step));
  }

  /** The same, give or take what is written so: "±0.3". */
  public Figure giveOrTake(String deviation) {
    return new Figure(value, unit, name, deviation, known, working);
  }
}
