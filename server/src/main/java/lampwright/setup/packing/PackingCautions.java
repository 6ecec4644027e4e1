package lampwright.setup.packing;

import java.util.ArrayList;
import java.util.List;
import lampwright.language.Said;
import lampwright.setup.figures.MainsFigures;
import lampwright.setup.figures.WindFigures;

/**
 * What can hurt while a day is packed and built. Common practice of the trade, no source, and never
 * permission: local codes, the makers' instructions and licensed practice come first.
 */
public final class PackingCautions {

  private PackingCautions() {}

  /** Those of a day; of the mains only where something draws from them. */
  public static List<Said> of(BatteryPlan batteries) {
    List<Said> cautions = new ArrayList<>();
    cautions.add(Said.of("caution.packing.lift"));
    cautions.addAll(WindFigures.CAUTIONS);
    if (!batteries.onMains().isEmpty()) {
      cautions.addAll(MainsFigures.CAUTIONS);
    }
    if (!batteries.feeds().isEmpty() || !batteries.unknown().isEmpty()) {
      cautions.add(Said.of("caution.packing.batteries"));
    }
    cautions.add(Said.of("caution.packing.time"));
    return List.copyOf(cautions);
  }
}
