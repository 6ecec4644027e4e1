package lampwright.engine.match;

import java.util.Arrays;

/**
 * Looks for a good allotment below a node, with no promise: gives out choices by their reduced
 * costs, first to the row that would lose most by waiting, then lets each row change its mind.
 */
final class GreedyAllotment {

  private static final int MOST_ROUNDS = 4;

  private final PackedRows packed;
  private final Relaxation relaxation;
  private final Incumbent incumbent;
  private final int[] choiceOfRow;
  private final double[] left;
  private final double[] best;
  private final double[] second;
  private final int[] bestChoice;

  GreedyAllotment(PackedRows packed, Relaxation relaxation, Incumbent incumbent) {
    this.packed = packed;
    this.relaxation = relaxation;
    this.incumbent = incumbent;
    choiceOfRow = new int[packed.rows];
    left = new double[packed.supply.length];
    best = new double[packed.rows];
    second = new double[packed.rows];
    bestChoice = new int[packed.rows];
  }

  /** Offers what it finds, by the prices of the relaxation's last pass over this node. */
  void look(Node node) {
    double longest = relaxation.longestWait;
    if (give(node, longest) || give(node, Double.POSITIVE_INFINITY)) {
      improve(node);
      incumbent.offer(packed, choiceOfRow);
    }
  }

  private boolean give(Node node, double longestWait) {
    System.arraycopy(node.choiceOfRow, 0, choiceOfRow, 0, choiceOfRow.length);
    System.arraycopy(node.left, 0, left, 0, left.length);
    for (int given = 0; given < node.freeRows; given++) {
      int row = neediest(node, longestWait);
      if (best[row] == Double.POSITIVE_INFINITY) {
        return false;
      }
      choiceOfRow[row] = bestChoice[row];
      packed.addUses(bestChoice[row], -1, left);
    }
    return true;
  }

  /** Returns the row whose best choice is furthest ahead of its next other pattern. */
  private int neediest(Node node, double longestWait) {
    Arrays.fill(best, Double.POSITIVE_INFINITY);
    Arrays.fill(second, Double.POSITIVE_INFINITY);
    for (int i = 0; i < node.size; i++) {
      int c = node.list[i];
      int row = packed.row[c];
      if (packed.wait[c] > longestWait) {
        break;
      }
      double value = relaxation.reduced(c);
      if (choiceOfRow[row] == Node.FREE && value < second[row] && packed.fits(c, left)) {
        take(row, c, value);
      }
    }
    int neediest = -1;
    double most = -1;
    for (int row = 0; row < choiceOfRow.length; row++) {
      if (choiceOfRow[row] == Node.FREE) {
        double regret = best[row] == second[row] ? 0 : second[row] - best[row];
        if (best[row] == Double.POSITIVE_INFINITY) {
          return row;
        }
        if (regret > most) {
          most = regret;
          neediest = row;
        }
      }
    }
    return neediest;
  }

  private void take(int row, int choice, double value) {
    if (value < best[row]) {
      if (best[row] < Double.POSITIVE_INFINITY
          && packed.pattern[bestChoice[row]] != packed.pattern[choice]) {
        second[row] = best[row];
      }
      best[row] = value;
      bestChoice[row] = choice;
    } else if (packed.pattern[bestChoice[row]] != packed.pattern[choice]) {
      second[row] = value;
    }
  }

  /** Lets one row after another take what is best for the whole, until none gains. */
  private void improve(Node node) {
    boolean gained = true;
    for (int round = 0; gained && round < MOST_ROUNDS; round++) {
      gained = false;
      for (int row = 0; row < choiceOfRow.length; row++) {
        if (node.choiceOfRow[row] == Node.FREE) {
          gained |= improve(node, row);
        }
      }
    }
  }

  private boolean improve(Node node, int row) {
    double others = 0;
    for (int other = 0; other < choiceOfRow.length; other++) {
      if (other != row) {
        others = Math.max(others, packed.wait[choiceOfRow[other]]);
      }
    }
    int now = choiceOfRow[row];
    packed.addUses(now, 1, left);
    int choice = now;
    double least = whole(now, others);
    for (int i = 0; i < node.size; i++) {
      int c = node.list[i];
      if (packed.row[c] == row && whole(c, others) < least && packed.fits(c, left)) {
        choice = c;
        least = whole(c, others);
      }
    }
    choiceOfRow[row] = choice;
    packed.addUses(choice, -1, left);
    return choice != now;
  }

  private double whole(int choice, double otherWait) {
    return packed.cost[choice] + packed.pricePerWait * Math.max(otherWait, packed.wait[choice]);
  }
}
