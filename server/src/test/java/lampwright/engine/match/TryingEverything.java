package lampwright.engine.match;

/** The least cost of an allotment by trying all of them. */
final class TryingEverything {

  private final AllotmentCase problem;
  private final double[] left;
  private double least = Double.POSITIVE_INFINITY;

  private TryingEverything(AllotmentCase problem) {
    this.problem = problem;
    this.left = problem.supplies().clone();
  }

  /** Returns the least cost, infinite where there is no allotment. */
  static double leastCost(AllotmentCase problem) {
    TryingEverything everything = new TryingEverything(problem);
    everything.tryRow(0, 0, 0);
    return everything.least;
  }

  private void tryRow(int row, double cost, double longest) {
    if (row == problem.rows().size()) {
      least = Math.min(least, cost + problem.pricePerWait() * longest);
      return;
    }
    for (Choice choice : problem.rows().get(row)) {
      if (take(choice.uses(), 1)) {
        tryRow(row + 1, cost + choice.cost(), Math.max(longest, choice.waiting()));
      }
      take(choice.uses(), -1);
    }
  }

  /** Answers whether all that is left is none or more, but for rounding. */
  private boolean take(Uses uses, int times) {
    boolean suffices = true;
    for (int u = 0; u < uses.count(); u++) {
      left[uses.supply(u)] -= times * uses.amount(u);
      suffices &= left[uses.supply(u)] >= -1e-9;
    }
    return suffices;
  }
}
