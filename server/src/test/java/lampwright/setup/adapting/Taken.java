package lampwright.setup.adapting;

/** How much a way to make a light takes of each of a kit's supplies. */
final class Taken {

  private final double[] amounts;

  Taken(int supplies) {
    this.amounts = new double[supplies];
  }

  private Taken(double[] amounts) {
    this.amounts = amounts;
  }

  double of(int supply) {
    return amounts[supply];
  }

  Taken plus(int supply, double more) {
    double[] all = amounts.clone();
    all[supply] += more;
    return new Taken(all);
  }
}
