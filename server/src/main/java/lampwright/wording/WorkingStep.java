package lampwright.wording;

import java.util.List;
import lampwright.engine.Source;
import lampwright.engine.Working;

/**
 * One line of a figure's working: quantity = value unit, the formula, its source, and the lines it
 * was made from. Quantity, formula and source are the engine's, in English.
 *
 * @param formula how the value follows from the parts; empty where it was given
 * @param source the authority for the formula, or who gave the value; empty where there is none
 */
public record WorkingStep(
    String quantity,
    String value,
    String unit,
    String formula,
    String source,
    List<WorkingStep> parts) {

  public WorkingStep {
    parts = List.copyOf(parts);
  }

  /** The steps to a figure, rounded for reading. */
  public static WorkingStep of(Working working, Wording words) {
    return new WorkingStep(
        working.quantity(),
        words.number(working.value()),
        working.unit(),
        working.formula(),
        working.source() == Source.GIVEN ? words.known(working.known()) : working.source().title(),
        working.parts().stream().map(part -> of(part, words)).toList());
  }

  /** The same line under another name. */
  public WorkingStep named(String name) {
    return new WorkingStep(name, value, unit, formula, source, parts);
  }
}
