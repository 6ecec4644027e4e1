package lampwright.tasks;

import java.util.List;
import lampwright.gear.calibration.Calibration;

/**
 * What the readings that are kept with gear say of it.
 *
 * @param gear as it is now, with what was adopted
 * @param assumed a sentence for each thing that was taken for granted
 * @param adopted whether the gear took it over
 */
public record CalibratedGear(
    KeptGear gear, Calibration calibration, List<String> assumed, boolean adopted) {

  public CalibratedGear {
    assumed = List.copyOf(assumed);
  }
}
