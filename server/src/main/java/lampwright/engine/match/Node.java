package lampwright.engine.match;

import java.util.Arrays;

/** A part of the search: some rows have their choice, the others are free. Used again and again. */
final class Node {

  /** The choice of a row that is free. */
  static final int FREE = -1;

  final int[] choiceOfRow;
  int freeRows;

  /** What the rows with a choice cost, without waits, and the longest of their waits. */
  double cost;

  double wait;

  /** What they leave of each supply. */
  final double[] left;

  /** The choices that the free rows still have, by rising wait. */
  final int[] list;

  int size;

  /** What an allotment with each listed choice costs at least. */
  final double[] atLeast;

  /** Prices of the supplies that bound this part well. */
  final double[] prices;

  /** What every allotment of this part costs at least. */
  double bound = Double.NEGATIVE_INFINITY;

  private Node(int rows, int supplies, int choices) {
    choiceOfRow = new int[rows];
    left = new double[supplies];
    prices = new double[supplies];
    list = new int[choices];
    atLeast = new double[choices];
  }

  /** Makes the node where every row is free. */
  static Node root(PackedRows packed, double[] prices) {
    Node node = new Node(packed.rows, packed.supply.length, packed.size());
    Arrays.fill(node.choiceOfRow, FREE);
    node.freeRows = packed.rows;
    System.arraycopy(packed.supply, 0, node.left, 0, node.left.length);
    for (int k : packed.tight) {
      node.prices[k] = prices[k];
    }
    node.size = packed.size();
    for (int c = 0; c < node.size; c++) {
      node.list[c] = c;
    }
    return node;
  }

  /** Makes room for a child. */
  Node room() {
    return new Node(choiceOfRow.length, left.length, list.length);
  }

  /** Becomes the parent with one more row decided; {@link #keep} lists what it leaves. */
  void decide(Node parent, PackedRows packed, int choice) {
    System.arraycopy(parent.choiceOfRow, 0, choiceOfRow, 0, choiceOfRow.length);
    System.arraycopy(parent.left, 0, left, 0, left.length);
    System.arraycopy(parent.prices, 0, prices, 0, prices.length);
    choiceOfRow[packed.row[choice]] = choice;
    freeRows = parent.freeRows - 1;
    cost = parent.cost + packed.cost[choice];
    wait = Math.max(parent.wait, packed.wait[choice]);
    packed.addUses(choice, -1, left);
    bound = Math.max(parent.bound, parent.atLeast[choice]);
  }

  /** Lists those of the parent's choices that are of free rows, fit and may cost less than that. */
  void keep(Node parent, PackedRows packed, double cutoff) {
    size = 0;
    for (int i = 0; i < parent.size; i++) {
      int c = parent.list[i];
      if (parent.atLeast[c] < cutoff
          && choiceOfRow[packed.row[c]] == FREE
          && packed.fits(c, left)) {
        list[size++] = c;
      }
    }
  }

  /** Takes off the list what cannot cost less than that. */
  void drop(double cutoff) {
    int kept = 0;
    for (int i = 0; i < size; i++) {
      if (atLeast[list[i]] < cutoff) {
        list[kept++] = list[i];
      }
    }
    size = kept;
  }
}
