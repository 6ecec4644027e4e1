package lampwright.engine.match;

import java.util.Arrays;

/**
 * Takes choices off a node's list for which another of the same row is as good in everything: costs
 * no more, waits no longer and uses no more of any supply. Of two that are alike the one given
 * first stays.
 */
final class Dominance {

  private final PackedRows packed;
  private final double[] uses;

  Dominance(PackedRows packed) {
    this.packed = packed;
    uses = new double[packed.supply.length];
  }

  /** Shortens the list; quadratic in the choices of a row. */
  void apply(Node node) {
    boolean[] isDominated = new boolean[packed.size()];
    int[][] lists = listsOfRows(node);
    for (int[] list : lists) {
      for (int better : list) {
        if (!isDominated[better]) {
          Arrays.fill(uses, 0);
          packed.addUses(better, 1, uses);
          for (int worse : list) {
            isDominated[worse] |=
                worse != better && !isDominated[worse] && isNoWorse(better, worse);
          }
        }
      }
    }
    int kept = 0;
    for (int i = 0; i < node.size; i++) {
      if (!isDominated[node.list[i]]) {
        node.list[kept++] = node.list[i];
      }
    }
    node.size = kept;
  }

  private int[][] listsOfRows(Node node) {
    int[] sizes = new int[packed.rows];
    for (int i = 0; i < node.size; i++) {
      sizes[packed.row[node.list[i]]]++;
    }
    int[][] lists = new int[packed.rows][];
    for (int row = 0; row < lists.length; row++) {
      lists[row] = new int[sizes[row]];
    }
    Arrays.fill(sizes, 0);
    for (int i = 0; i < node.size; i++) {
      int row = packed.row[node.list[i]];
      lists[row][sizes[row]++] = node.list[i];
    }
    return lists;
  }

  /** Whether one, whose uses are spread out, is no worse than another. */
  private boolean isNoWorse(int better, int worse) {
    if (packed.cost[better] > packed.cost[worse] || packed.wait[better] > packed.wait[worse]) {
      return false;
    }
    int covered = 0;
    int p = packed.pattern[worse];
    for (int u = packed.uses.start[p]; u < packed.uses.start[p + 1]; u++) {
      double used = uses[packed.uses.supply[u]];
      if (used > packed.uses.amount[u]) {
        return false;
      }
      if (used > 0) {
        covered++;
      }
    }
    int q = packed.pattern[better];
    return covered == packed.uses.start[q + 1] - packed.uses.start[q];
  }
}
