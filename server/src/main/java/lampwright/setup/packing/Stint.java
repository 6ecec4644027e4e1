package lampwright.setup.packing;

import java.util.List;

/**
 * An errand with its time and its people.
 *
 * @param from minutes after the stage begins
 * @param who the hands that do it, from 1
 */
public record Stint(Errand errand, int from, List<Integer> who) {

  public Stint {
    who = List.copyOf(who);
  }

  /** Minutes after the stage begins when it is over. */
  public int to() {
    return from + errand.minutes();
  }
}
