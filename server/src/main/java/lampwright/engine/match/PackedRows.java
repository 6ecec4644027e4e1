package lampwright.engine.match;

import java.util.Arrays;
import java.util.List;

/**
 * Rows and choices as plain arrays, the choices of all rows together by rising wait, for loops that
 * allocate nothing. Choices that no supply can serve are left out.
 *
 * <p>A supply that even the greediest choices cannot exhaust is loose: no pattern uses it.
 */
final class PackedRows {

  final int rows;
  final double pricePerWait;

  /** What can be used of each supply; a whole number where only whole numbers are used of it. */
  final double[] supply;

  /** The supplies that can run out, in rising order. */
  final int[] tight;

  /** The row of each choice, and its index in the row as it was given. */
  final int[] row;

  final int[] index;
  final double[] cost;
  final double[] wait;

  /** What each choice uses. */
  final int[] pattern;

  final UsePatterns uses;

  private PackedRows(
      int rows,
      double pricePerWait,
      double[] supplies,
      int[] row,
      int[] index,
      double[] cost,
      double[] wait,
      int[] pattern,
      UsePatterns uses) {
    this.rows = rows;
    this.pricePerWait = pricePerWait;
    this.row = row;
    this.index = index;
    this.cost = cost;
    this.wait = wait;
    this.pattern = pattern;
    this.supply = usable(supplies, uses);
    boolean[] isTight = canRunOut(uses);
    this.tight = positions(isTight);
    this.uses = uses.of(isTight);
  }

  /**
   * Packs.
   *
   * @throws IllegalArgumentException where a choice uses a supply that there is not
   */
  static PackedRows of(List<List<Choice>> rows, double[] supplies, double pricePerWait) {
    int choices = 0;
    for (List<Choice> row : rows) {
      choices += row.size();
    }
    int[] rowOf = new int[choices];
    int[] index = new int[choices];
    int[] pattern = new int[choices];
    double[] cost = new double[choices];
    double[] wait = new double[choices];
    UsePatterns.Gathering uses = new UsePatterns.Gathering(supplies, choices);
    int kept = 0;
    for (int i = 0; i < rows.size(); i++) {
      List<Choice> row = rows.get(i);
      for (int c = 0; c < row.size(); c++) {
        Choice choice = row.get(c);
        if (uses.add(choice.uses())) {
          rowOf[kept] = i;
          index[kept] = c;
          pattern[kept] = uses.last();
          cost[kept] = choice.cost();
          wait[kept++] = pricePerWait > 0 ? choice.waiting() : 0;
        }
      }
    }
    int[] order = pricePerWait > 0 ? Order.rising(wait, kept) : Order.asTheyAre(kept);
    return new PackedRows(
        rows.size(),
        pricePerWait,
        supplies,
        pick(rowOf, order),
        pick(index, order),
        pick(cost, order),
        pick(wait, order),
        pick(pattern, order),
        uses.patterns());
  }

  /** Returns only the choices in the list, which are in rising order. */
  PackedRows keep(int[] list, int size, double[] supplies) {
    int[] order = Arrays.copyOf(list, size);
    int[] used = pick(pattern, order);
    int[] renamed = new int[uses.size()];
    Arrays.fill(renamed, -1);
    int[] kept = new int[size];
    int patterns = 0;
    for (int i = 0; i < size; i++) {
      int old = used[i];
      if (renamed[old] < 0) {
        renamed[old] = patterns;
        kept[patterns++] = old;
      }
      used[i] = renamed[old];
    }
    return new PackedRows(
        rows,
        pricePerWait,
        supplies,
        pick(row, order),
        pick(index, order),
        pick(cost, order),
        pick(wait, order),
        used,
        uses.pick(kept, patterns));
  }

  private static double[] usable(double[] supplies, UsePatterns uses) {
    boolean[] isShared = new boolean[supplies.length];
    for (int u = 0; u < uses.start[uses.size()]; u++) {
      isShared[uses.supply[u]] |= uses.amount[u] != Math.floor(uses.amount[u]);
    }
    double[] usable = new double[supplies.length];
    for (int k = 0; k < supplies.length; k++) {
      double slackened = UsePatterns.slackened(supplies[k]);
      usable[k] = isShared[k] ? slackened : Math.floor(slackened);
    }
    return usable;
  }

  private boolean[] canRunOut(UsePatterns uses) {
    double[] most = new double[supply.length * rows];
    for (int c = 0; c < row.length; c++) {
      for (int u = uses.start[pattern[c]]; u < uses.start[pattern[c] + 1]; u++) {
        int at = uses.supply[u] * rows + row[c];
        most[at] = Math.max(most[at], uses.amount[u]);
      }
    }
    boolean[] canRunOut = new boolean[supply.length];
    for (int k = 0; k < supply.length; k++) {
      double demand = 0;
      for (int i = 0; i < rows; i++) {
        demand += most[k * rows + i];
      }
      canRunOut[k] = demand > supply[k];
    }
    return canRunOut;
  }

  private static int[] positions(boolean[] isMeant) {
    int[] positions = new int[isMeant.length];
    int count = 0;
    for (int i = 0; i < isMeant.length; i++) {
      if (isMeant[i]) {
        positions[count++] = i;
      }
    }
    return Arrays.copyOf(positions, count);
  }

  private static int[] pick(int[] values, int[] order) {
    int[] picked = new int[order.length];
    for (int i = 0; i < order.length; i++) {
      picked[i] = values[order[i]];
    }
    return picked;
  }

  private static double[] pick(double[] values, int[] order) {
    double[] picked = new double[order.length];
    for (int i = 0; i < order.length; i++) {
      picked[i] = values[order[i]];
    }
    return picked;
  }

  /** Returns how many choices there are in all. */
  int size() {
    return row.length;
  }

  /** Asks whether what is left suffices for a choice. */
  boolean fits(int choice, double[] left) {
    int p = pattern[choice];
    for (int u = uses.start[p]; u < uses.start[p + 1]; u++) {
      if (uses.amount[u] > left[uses.supply[u]]) {
        return false;
      }
    }
    return true;
  }

  /** Adds a number of times what the choice uses. */
  void addUses(int choice, double times, double[] amounts) {
    int p = pattern[choice];
    for (int u = uses.start[p]; u < uses.start[p + 1]; u++) {
      amounts[uses.supply[u]] += times * uses.amount[u];
    }
  }
}
