package lampwright.engine.power;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lampwright.engine.unit.Amperes;
import lampwright.engine.unit.Seconds;
import lampwright.engine.unit.Watts;

/**
 * Heads of one circuit that charge in turns, so that never too many draw at once. Found by {@link
 * MainsLoad#turnsFor}.
 *
 * @param mains the supply of the circuit
 * @param heads all heads on it
 * @param turns numbers of the heads, from 0, that charge together, turn after turn
 */
public record ChargingTurns(Mains mains, List<MainsHead> heads, List<List<Integer>> turns) {

  /** Copies the lists. */
  public ChargingTurns {
    heads = List.copyOf(heads);
    turns = turns.stream().map(List::copyOf).toList();
  }

  /** Returns the greatest current of any turn, the modelling lamps of all heads included. */
  public Amperes current() {
    double lamps = heads.stream().mapToDouble(head -> head.modelling().value()).sum();
    double most = 0;
    for (List<Integer> turn : turns) {
      most = Math.max(most, turn.stream().mapToDouble(i -> heads.get(i).charging().value()).sum());
    }
    return mains.current(new Watts(lamps + most));
  }

  /** Returns the time until all are ready: each turn lasts as long as its slowest head. */
  public Seconds untilReady() {
    double sum = 0;
    for (List<Integer> turn : turns) {
      sum += turn.stream().mapToDouble(i -> heads.get(i).recycle().value()).max().orElse(0);
    }
    return new Seconds(sum);
  }

  /**
   * Returns the fewest sets that each keep within the limit, exactly, by going through all subsets:
   * for each the fewest turns and, among these, the least load of the last turn.
   */
  static Optional<List<List<Integer>>> fewest(double[] watts, double limitWatts) {
    int all = (1 << watts.length) - 1;
    int[] turns = new int[all + 1];
    double[] lastLoad = new double[all + 1];
    int[] lastHead = new int[all + 1];
    lastLoad[0] = Double.POSITIVE_INFINITY;
    for (int set = 1; set <= all; set++) {
      turns[set] = Integer.MAX_VALUE;
      for (int head = 0; head < watts.length; head++) {
        int before = set & ~(1 << head);
        if (before == set || watts[head] > limitWatts) {
          continue;
        }
        if (turns[before] == Integer.MAX_VALUE) {
          continue;
        }
        boolean joins = lastLoad[before] + watts[head] <= limitWatts;
        int count = joins ? turns[before] : turns[before] + 1;
        double load = joins ? lastLoad[before] + watts[head] : watts[head];
        if (count < turns[set] || (count == turns[set] && load < lastLoad[set])) {
          turns[set] = count;
          lastLoad[set] = load;
          lastHead[set] = head;
        }
      }
    }
    return turns[all] == Integer.MAX_VALUE
        ? Optional.empty()
        : Optional.of(unwound(all, turns, lastHead));
  }

  private static List<List<Integer>> unwound(int all, int[] turns, int[] lastHead) {
    List<List<Integer>> found = new ArrayList<>();
    List<Integer> turn = new ArrayList<>();
    for (int set = all; set != 0; ) {
      int before = set & ~(1 << lastHead[set]);
      turn.addFirst(lastHead[set]);
      if (turns[before] < turns[set]) {
        turn.sort(null);
        found.addFirst(turn);
        turn = new ArrayList<>();
      }
      set = before;
    }
    return found;
  }
}
