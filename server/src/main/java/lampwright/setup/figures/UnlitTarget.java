package lampwright.setup.figures;

import java.util.List;
import lampwright.setup.LightId;
import lampwright.setup.Target;

/**
 * A target to which its own lights give nothing that a meter toward the camera sees, without an
 * ambient: they stand behind it, or how strong they are is not known. It has no reading; what
 * reaches it of the other lights is told.
 *
 * @param target as its first light names it
 * @param lights that are for this target
 * @param spill everything that reaches it; also by a meter toward the key and by a dome
 */
public record UnlitTarget(Target target, List<LightId> lights, SpillFigures spill) {

  public UnlitTarget {
    lights = List.copyOf(lights);
  }
}
