package lampwright.setup.adapting;

/**
 * What a camera setting differs by and costs, whatever the lights do. Amounts are in stops, of
 * framing in doublings; costs are weighted.
 *
 * @param ambientStops by how much the ambient's offset differs
 * @param depthStops by how much deeper it is, in stops of aperture
 * @param timeStops by how much longer the shutter is open
 * @param isoStops above the body's lowest
 * @param framing by how much more is in the picture, in doublings
 * @param moving whether a subject moves
 * @param touched how many of the camera's dials differ from the setup's
 */
record CameraCost(
    double ambientStops,
    double depthStops,
    double timeStops,
    double isoStops,
    double framing,
    boolean moving,
    int touched,
    Weights weights,
    double sum) {

  static CameraCost of(
      double ambientStops,
      double depthStops,
      double timeStops,
      double isoStops,
      double framing,
      boolean moving,
      int touched,
      Weights weights) {
    double sum =
        ambient(ambientStops, weights)
            + depth(depthStops, weights)
            + movement(timeStops, moving, weights)
            + noise(isoStops, weights)
            + framing(framing, weights)
            + weights.touch() * touched;
    return new CameraCost(
        ambientStops, depthStops, timeStops, isoStops, framing, moving, touched, weights, sum);
  }

  static double depth(double depthStops, Weights weights) {
    return weights.depth() * Math.abs(depthStops);
  }

  static double movement(double timeStops, boolean moving, Weights weights) {
    return weights.ofTime(moving) * Math.abs(timeStops);
  }

  static double framing(double doublings, Weights weights) {
    return weights.framing() * Math.abs(doublings);
  }

  private static double ambient(double ambientStops, Weights weights) {
    return weights.ambient() * Weights.ambientCount(ambientStops);
  }

  private static double noise(double isoStops, Weights weights) {
    return weights.iso() * Math.max(0, isoStops);
  }

  double cost(Matter matter) {
    return switch (matter) {
      case AMBIENT -> ambient(ambientStops, weights);
      case DEPTH -> depth(depthStops, weights);
      case MOVEMENT -> movement(timeStops, moving, weights);
      case NOISE -> noise(isoStops, weights);
      case FRAMING -> framing(framing, weights);
      case HANDLING -> weights.touch() * touched;
      case LEVELS, SHAPE, COLOUR, EVENNESS, CARRYING, PACE -> 0;
    };
  }
}
