package lampwright.engine.match;

import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;

/**
 * Gives every row exactly one of its choices so that the shared supplies suffice, at the least
 * cost. With rows i, choices c, supplies k:
 *
 * <pre>
 *   minimise    Σᵢ cost(cᵢ) + price · maxᵢ waiting(cᵢ)
 *   subject to  Σᵢ uses(cᵢ, k) ≤ supply(k)   for every k
 * </pre>
 *
 * <p>Exact: prices on the supplies bound the cost from below ({@link Relaxation}), choices that the
 * bound rules out are dropped, what remains is searched depth-first ({@link BranchAndBound}). Costs
 * that differ by less than 1e-9 of their size (and of 1) count as equal, and a supply that is not
 * counted in whole numbers may be exceeded by so much, for rounding.
 *
 * <p>The prices found for one problem are kept for the next, so an instance changes while it works:
 * it is for one thread. The same calls in the same order give the same answers. What was asked
 * before never changes a cost, only which of several equally cheap allotments is returned.
 */
public final class AllotmentSearch {

  private final double[] supplies;
  private final double pricePerWait;
  private final QuickBound quick;
  private final double[] prices;
  private boolean hasPrices;
  private double reach;

  /**
   * Prepares for problems that share their supplies: the same gear at many camera settings.
   *
   * @param supplies how much there is of each, 0 or more
   * @param pricePerWait the cost of a unit of the longest wait, 0 or more
   * @throws IllegalArgumentException where one is not so
   */
  public AllotmentSearch(double[] supplies, double pricePerWait) {
    for (int k = 0; k < supplies.length; k++) {
      check(supplies[k], "Supply " + k);
    }
    check(pricePerWait, "Price of a wait");
    this.supplies = supplies.clone();
    this.pricePerWait = pricePerWait;
    this.quick = new QuickBound(this.supplies, pricePerWait);
    this.prices = new double[supplies.length];
  }

  private static void check(double value, String what) {
    if (!(value >= 0 && value < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException(what + " (" + value + ") must be 0 or more.");
    }
  }

  /**
   * Returns a cost that no allotment of these rows can be below; quick, and never wrong. Infinite
   * where a row has no choice. The better the prices, the higher; the first call finds some.
   */
  public double lowerBound(List<List<Choice>> rows) {
    if (rows.isEmpty()) {
      return 0;
    }
    if (!hasPrices) {
      PackedRows packed = PackedRows.of(rows, supplies, pricePerWait);
      new RootSearch(packed, supplies, new Incumbent(rows.size(), Double.POSITIVE_INFINITY))
          .findPrices(prices, false);
      hasPrices = true;
      reach = 2 * longestWait(rows);
    }
    return quick.bound(rows, prices, reach);
  }

  /**
   * Returns the allotment of least cost, or none where none costs less than {@code below}.
   *
   * @param below only what costs less is of interest; infinite for everything
   * @param stop asked now and then; once it says yes the best found so far is returned, with what
   *     is proved about it; none where nothing was found yet
   * @throws IllegalArgumentException where a choice uses a supply that there is not
   */
  public Optional<Allotment> least(List<List<Choice>> rows, double below, BooleanSupplier stop) {
    if (rows.isEmpty()) {
      return below > 0 ? Optional.of(new Allotment(List.of(), 0, 0)) : Optional.empty();
    }
    PackedRows packed = PackedRows.of(rows, supplies, pricePerWait);
    Incumbent incumbent = new Incumbent(rows.size(), below);
    RootSearch search = new RootSearch(packed, supplies, incumbent);
    search.findPrices(prices, hasPrices);
    hasPrices = true;
    double atLeast = search.finish(stop);
    if (!incumbent.isFound()) {
      return Optional.empty();
    }
    if (incumbent.longestWait() > 0) {
      reach = 2 * incumbent.longestWait();
    } else if (reach == 0) {
      reach = longestWait(rows);
    }
    return Optional.of(incumbent.allotment(atLeast));
  }

  private static double longestWait(List<List<Choice>> rows) {
    double longest = 0;
    for (List<Choice> row : rows) {
      for (Choice choice : row) {
        longest = Math.max(longest, choice.waiting());
      }
    }
    return longest;
  }
}
