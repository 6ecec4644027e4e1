package lampwright.engine.match;

import java.util.Arrays;
import java.util.function.BooleanSupplier;
import org.jspecify.annotations.Nullable;

/**
 * Decides one row after another, depth-first, the most promising choice first, and leaves out
 * whatever a bound shows to be no better than what is known. At each node the prices are improved
 * by a few steps from the parent's, and choices are fixed by what they cost at least.
 */
final class BranchAndBound {

  private static final int NODES_BETWEEN_QUESTIONS = 256;
  private static final int NODES_BEFORE_REMEMBERING = 200;
  private static final int NODES_BETWEEN_LOOKS = 16;
  private static final int STEPS = 12;
  private static final double LENGTH = 0.5;

  private final PackedRows packed;
  private final Relaxation relaxation;
  private final PriceAscent ascent;
  private final GreedyAllotment greedy;
  private final Incumbent incumbent;
  private final BooleanSupplier stop;
  private final Node[] nodes;
  private final double[] weight;
  private final int[] count;
  private final double[] noPrices;
  private @Nullable VisitedStates visited;
  private long mostNodes;
  private long explored;
  private boolean isStopped;
  private double open = Double.POSITIVE_INFINITY;

  BranchAndBound(
      PackedRows packed,
      Relaxation relaxation,
      PriceAscent ascent,
      GreedyAllotment greedy,
      Incumbent incumbent,
      BooleanSupplier stop) {
    this.packed = packed;
    this.relaxation = relaxation;
    this.ascent = ascent;
    this.greedy = greedy;
    this.incumbent = incumbent;
    this.stop = stop;
    this.nodes = new Node[packed.rows + 1];
    this.weight = new double[packed.rows];
    this.count = new int[packed.rows];
    this.noPrices = new double[packed.supply.length];
  }

  /**
   * Searches below a node whose bounds are worked out.
   *
   * @param mostNodes after which it gives up
   * @return what an allotment that was not looked at costs at least; infinite where all were
   */
  double search(Node root, long mostNodes) {
    this.mostNodes = mostNodes;
    nodes[0] = root;
    for (int depth = 1; depth < nodes.length; depth++) {
      nodes[depth] = root.room();
    }
    branch(0);
    return open;
  }

  private void explore(int depth) {
    Node node = nodes[depth];
    boolean isAsked = explored % NODES_BETWEEN_QUESTIONS == 0;
    isStopped |= explored == mostNodes || (isAsked && stop.getAsBoolean());
    explored++;
    if (isStopped) {
      open = Math.min(open, node.bound);
      return;
    }
    if (node.freeRows == 0) {
      incumbent.offer(packed, node.choiceOfRow);
      return;
    }
    if (node.freeRows == 1) {
      System.arraycopy(noPrices, 0, node.prices, 0, noPrices.length);
    }
    ascent.climb(node, node.freeRows == 1 ? 1 : STEPS, LENGTH);
    if (node.freeRows == 1 || node.bound >= incumbent.cutoff()) {
      return;
    }
    if (explored % NODES_BETWEEN_LOOKS == 1) {
      relaxation.bound(node, node.prices);
      greedy.look(node);
    }
    relaxation.boundEach(node, node.prices);
    node.drop(incumbent.cutoff());
    branch(depth);
  }

  private void branch(int depth) {
    Node node = nodes[depth];
    int row = rowToDecide(node);
    if (row < 0) {
      return;
    }
    int[] children = new int[count[row]];
    int found = 0;
    for (int i = 0; i < node.size; i++) {
      if (packed.row[node.list[i]] == row) {
        children[found++] = node.list[i];
      }
    }
    Order.rise(children, found, node.atLeast);
    for (int choice : children) {
      if (node.atLeast[choice] >= incumbent.cutoff()) {
        return;
      }
      if (isStopped) {
        open = Math.min(open, node.atLeast[choice]);
        return;
      }
      Node child = nodes[depth + 1];
      child.decide(node, packed, choice);
      if (!isVisited(child)) {
        child.keep(node, packed, incumbent.cutoff());
        explore(depth + 1);
      }
    }
  }

  private boolean isVisited(Node child) {
    if (explored < NODES_BEFORE_REMEMBERING) {
      return false;
    }
    if (visited == null) {
      visited = new VisitedStates(packed);
    }
    return visited.isNoBetter(child);
  }

  /**
   * Returns the free row that promises the smallest search, or -1 where some row has no choice left
   * or none is free. A choice whose bound leaves a part of the gap open is taken to cost the cube
   * of that part.
   */
  private int rowToDecide(Node node) {
    double cutoff = incumbent.cutoff();
    double gap = cutoff - node.bound;
    Arrays.fill(weight, 0);
    Arrays.fill(count, 0);
    for (int i = 0; i < node.size; i++) {
      int c = node.list[i];
      int row = packed.row[c];
      double part = cutoff == Double.POSITIVE_INFINITY ? 1 : (cutoff - node.atLeast[c]) / gap;
      count[row]++;
      double square = part * part;
      weight[row] += square * part;
    }
    int best = -1;
    for (int row = 0; row < weight.length; row++) {
      if (node.choiceOfRow[row] == Node.FREE) {
        if (count[row] == 0) {
          return -1;
        }
        if (best < 0 || weight[row] < weight[best]) {
          best = row;
        }
      }
    }
    return best;
  }
}
