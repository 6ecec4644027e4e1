package lampwright.setup.packing;

import java.util.List;
import java.util.Optional;
import lampwright.engine.schedule.Job;
import lampwright.setup.LightId;

/**
 * One piece of work before anybody is sent.
 *
 * @param words of the build order's step
 * @param hands people that it takes; never more than there are
 * @param isShortHanded whether it wants two and there is one, who takes twice as long
 * @param after numbers of the errands that it waits for, all earlier in the list
 */
public record Errand(
    Work work,
    Optional<LightId> light,
    Optional<String> words,
    int minutes,
    int hands,
    boolean isShortHanded,
    List<Integer> after) {

  public Errand {
    after = List.copyOf(after);
  }

  Job job() {
    return new Job(minutes, hands, after);
  }
}
