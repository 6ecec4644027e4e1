package lampwright.engine.match;

import java.util.Arrays;

/**
 * The Lagrangian relaxation of the supplies (source lagrangian-relaxation): each supply may be
 * exceeded, at a price λ ≥ 0, and what is left over pays the same. With any such prices
 *
 * <pre>
 *   L(λ) = min over choices of  Σᵢ (cost(cᵢ) + λ·uses(cᵢ)) + price · maxᵢ wait(cᵢ)  −  λ·supply
 * </pre>
 *
 * is no more than the cost of any allotment. The longest wait stays in the relaxed problem, which
 * is solved exactly in one pass over the choices by rising wait: at each wait, each row's cheapest
 * choice so far. This bounds better than prices on the waits would, which is all that a linear
 * programme has.
 */
final class Relaxation {

  private static final double NONE = Double.POSITIVE_INFINITY;

  private final PackedRows packed;
  private final double[] reduced;
  private final double[] patternPrice;
  private final int[] patternStamp;
  private int stamp;

  private final double[] least;
  private final int[] cheapest;
  private int missing;
  private double total;

  private final int[] eventAt;
  private final double[] eventBefore;
  private final double[] later;

  /** The relaxed problem's choice of each free row, after {@link #bound}. */
  final int[] chosen;

  /** The longest wait of the relaxed problem's choices. */
  double longestWait;

  Relaxation(PackedRows packed) {
    this.packed = packed;
    reduced = new double[packed.size()];
    patternPrice = new double[packed.uses.size()];
    patternStamp = new int[packed.uses.size()];
    least = new double[packed.rows];
    cheapest = new int[packed.rows];
    eventAt = new int[packed.size()];
    eventBefore = new double[packed.size()];
    later = new double[packed.rows];
    chosen = new int[packed.rows];
  }

  /**
   * Returns L for the free rows of a node, plus what it has decided; infinite where a row is empty.
   */
  double bound(Node node, double[] prices) {
    start(node);
    double best = NONE;
    for (int i = 0; i < node.size; i++) {
      int c = node.list[i];
      if (lowers(c, prices) && missing == 0) {
        double wait = Math.max(node.wait, packed.wait[c]);
        double value = total + packed.pricePerWait * wait;
        if (value < best) {
          best = value;
          longestWait = wait;
          System.arraycopy(cheapest, 0, chosen, 0, chosen.length);
        }
      }
    }
    if (best == NONE) {
      return NONE;
    }
    double sum = constant(node, prices) + packed.pricePerWait * longestWait;
    for (int row = 0; row < chosen.length; row++) {
      if (node.choiceOfRow[row] == Node.FREE) {
        sum += reduced[chosen[row]];
      }
    }
    return sum;
  }

  /** Returns the listed choice's cost with its uses at the prices of the last pass. */
  double reduced(int choice) {
    return reduced[choice];
  }

  private void start(Node node) {
    stamp++;
    Arrays.fill(least, NONE);
    missing = node.freeRows;
    total = 0;
  }

  /** Takes in a choice; answers whether it is its row's cheapest so far. */
  private boolean lowers(int choice, double[] prices) {
    double value = packed.cost[choice] + priceOf(packed.pattern[choice], prices);
    reduced[choice] = value;
    int row = packed.row[choice];
    double before = least[row];
    if (value >= before) {
      return false;
    }
    if (before == NONE) {
      missing--;
    } else {
      total -= before;
    }
    total += value;
    least[row] = value;
    cheapest[row] = choice;
    return true;
  }

  private double priceOf(int pattern, double[] prices) {
    if (patternStamp[pattern] != stamp) {
      patternStamp[pattern] = stamp;
      double sum = 0;
      for (int u = packed.uses.start[pattern]; u < packed.uses.start[pattern + 1]; u++) {
        sum += prices[packed.uses.supply[u]] * packed.uses.amount[u];
      }
      patternPrice[pattern] = sum;
    }
    return patternPrice[pattern];
  }

  private double constant(Node node, double[] prices) {
    double sum = node.cost;
    for (int k : packed.tight) {
      sum -= prices[k] * node.left[k];
    }
    return sum;
  }

  /**
   * Fills in {@link Node#atLeast}: L with the row of each listed choice held to that choice, again
   * exact for the given prices. What reaches the cost of an allotment that is known cannot be in a
   * better one (fixing by reduced costs).
   *
   * <p>A pass forward notes where a row's cheapest choice changes; the pass back keeps for each row
   * the least that the other rows and the wait come to at any later wait.
   */
  void boundEach(Node node, double[] prices) {
    start(node);
    int events = 0;
    for (int i = 0; i < node.size; i++) {
      int c = node.list[i];
      double before = least[packed.row[c]];
      if (lowers(c, prices)) {
        eventAt[events] = i;
        eventBefore[events++] = before;
      }
    }
    double constant = constant(node, prices);
    Arrays.fill(later, NONE);
    int event = events - 1;
    for (int i = node.size - 1; i >= 0; i--) {
      int c = node.list[i];
      int row = packed.row[c];
      double wait = packed.pricePerWait * Math.max(node.wait, packed.wait[c]);
      double now = missing == 0 ? wait + total - least[row] : NONE;
      node.atLeast[c] = constant + reduced[c] + Math.min(now, later[row]);
      if (event >= 0 && eventAt[event] == i) {
        if (missing == 0) {
          for (int j = 0; j < later.length; j++) {
            later[j] = Math.min(later[j], wait + total - least[j]);
          }
        }
        undo(row, eventBefore[event--]);
      }
    }
  }

  private void undo(int row, double before) {
    total -= least[row];
    if (before == NONE) {
      missing++;
    } else {
      total += before;
    }
    least[row] = before;
  }
}
