package lampwright.engine.match;

/**
 * What a choice takes of the supplies that all rows share: one head of a model, one softbox, 300
 * W·s of a pack.
 *
 * <p>Immutable. Many choices share one, at many camera settings.
 */
public final class Uses {

  /** Takes nothing. */
  public static final Uses NOTHING = new Uses(new int[0], new double[0]);

  private final int[] supplies;
  private final double[] amounts;

  private Uses(int[] supplies, double[] amounts) {
    this.supplies = supplies;
    this.amounts = amounts;
  }

  /**
   * Takes amounts of supplies.
   *
   * @param supplies their indices, each once, in rising order
   * @param amounts of each, above 0, in the supply's own unit
   * @throws IllegalArgumentException where the lengths differ, an index comes twice or out of
   *     order, or an amount is not above 0
   */
  public static Uses of(int[] supplies, double[] amounts) {
    if (supplies.length != amounts.length) {
      throw new IllegalArgumentException("Each supply needs one amount.");
    }
    for (int i = 0; i < supplies.length; i++) {
      if (supplies[i] < 0 || (i > 0 && supplies[i] <= supplies[i - 1])) {
        throw new IllegalArgumentException("Supplies must be given once each, in rising order.");
      }
      if (!(amounts[i] > 0 && amounts[i] < Double.POSITIVE_INFINITY)) {
        throw new IllegalArgumentException("Amounts must be above 0.");
      }
    }
    return supplies.length == 0 ? NOTHING : new Uses(supplies.clone(), amounts.clone());
  }

  /** Returns how many supplies it takes of. */
  public int count() {
    return supplies.length;
  }

  /** Returns which supply the i-th is. */
  public int supply(int i) {
    return supplies[i];
  }

  /** Returns how much it takes of the i-th. */
  public double amount(int i) {
    return amounts[i];
  }

  /** Returns what it comes to at prices of the supplies, a price for each. */
  double at(double[] prices) {
    double sum = 0;
    for (int i = 0; i < supplies.length; i++) {
      sum += prices[supplies[i]] * amounts[i];
    }
    return sum;
  }
}
