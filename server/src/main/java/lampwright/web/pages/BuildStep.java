package lampwright.web.pages;

import java.util.List;
import lampwright.wording.CautionLine;

/**
 * One step of the build order.
 *
 * @param number the light's number, as on the plan
 * @param act what to do, as one line
 * @param reason why now
 * @param expected what the meter should give; empty where nothing is metered
 * @param cautions what can hurt in this step
 */
public record BuildStep(
    int number, String act, String reason, String expected, List<CautionLine> cautions) {

  public BuildStep {
    cautions = List.copyOf(cautions);
  }
}
