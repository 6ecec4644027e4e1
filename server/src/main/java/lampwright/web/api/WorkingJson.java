package lampwright.web.api;

import java.util.List;
import lampwright.engine.Working;

/**
 * How a figure was computed.
 *
 * @param source the key of the formula's source
 * @param known metered, set, estimated, or computed from the parts
 */
public record WorkingJson(
    String quantity,
    double value,
    String unit,
    String formula,
    String source,
    String known,
    List<WorkingJson> parts) {

  static WorkingJson of(Working working) {
    return new WorkingJson(
        working.quantity(),
        working.value(),
        working.unit(),
        working.formula(),
        working.source().key(),
        FiguresJson.word(working.known()),
        working.parts().stream().map(WorkingJson::of).toList());
  }

  static List<WorkingJson> list(List<Working> workings) {
    return workings.stream().map(WorkingJson::of).toList();
  }
}
