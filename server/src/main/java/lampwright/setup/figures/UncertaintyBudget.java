package lampwright.setup.figures;

import java.util.List;
import lampwright.engine.Known;
import lampwright.engine.Source;
import lampwright.engine.Working;
import lampwright.engine.unit.Stops;

/**
 * What a level's uncertainty is made of. The parts are independent of each other and add in
 * quadrature.
 */
public record UncertaintyBudget(List<Part> parts) {

  /**
   * One cause.
   *
   * @param name in the trade's words: "dial", "distance, by tape"
   * @param deviation one standard deviation
   * @param known how what stands behind it is known
   */
  public record Part(String name, Stops deviation, Known known) {}

  public UncertaintyBudget {
    parts = List.copyOf(parts);
  }

  /** All parts together, as one standard deviation. */
  public Stops total() {
    double sum = 0;
    for (Part part : parts) {
      sum += part.deviation().value() * part.deviation().value();
    }
    return new Stops(Math.sqrt(sum));
  }

  /** The steps to the total. */
  public Working working() {
    return new Working(
        "uncertainty",
        total().value(),
        "stops",
        "√(Σ σ²)",
        Source.TRADE_PRACTICE,
        parts.stream()
            .map(p -> Working.given(p.name(), p.deviation().value(), "stops", p.known()))
            .toList());
  }
}
