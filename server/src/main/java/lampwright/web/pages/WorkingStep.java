package lampwright.web.pages;

import java.util.List;

/**
 * One line of a figure's working: quantity = value unit, the formula, its source, and the lines it
 * was made from.
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

  /** The same line under another name. */
  WorkingStep named(String name) {
    return new WorkingStep(name, value, unit, formula, source, parts);
  }
}
