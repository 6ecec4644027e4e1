package lampwright.web.api;

import java.util.List;
import lampwright.engine.Working;

/**
 * How a figure was computed.
 *
 * @param source the key of the formula's source
 */
public record WorkingJson(
    String quantity,
    double value,
    String unit,
    String formula,
    String source,
    List<WorkingJson> parts) {

  static WorkingJson of(Working working) {
    return new WorkingJson(
        working.quantity(),
        working.value(),
        working.unit(),
        working.formula(),
        working.source().key(),
        working.parts().stream().map(WorkingJson::of).toList());
  }
}
