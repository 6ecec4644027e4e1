package lampwright.benchmarks;

/**
 * The baseline: a flat face cut into little squares, each a point that shines by the cosine. No
 * formula of the engine is used.
 *
 * @param place of the middle, in metres
 * @param across unit vector along the width
 * @param up unit vector along the height
 * @param axis unit vector into the lit half
 * @param width in metres
 * @param height in metres
 * @param round whether only what lies within the circle that touches the sides shines
 * @param peakCdS far-away intensity on the axis, in candela seconds
 */
record NaiveFace(
    double[] place,
    double[] across,
    double[] up,
    double[] axis,
    double width,
    double height,
    boolean round,
    double peakCdS) {

  /**
   * Returns the exposure in lux seconds at a point, on a flat receiver.
   *
   * @param pieces along each side
   */
  double exposureLxS(double x, double y, double z, double[] normal, int pieces) {
    double sum = 0;
    int counted = 0;
    for (int i = 0; i < pieces; i++) {
      double u = (i + 0.5) / pieces - 0.5;
      for (int j = 0; j < pieces; j++) {
        double v = (j + 0.5) / pieces - 0.5;
        if (round && u * u + v * v > 0.25) {
          continue;
        }
        counted++;
        double dx = x - place[0] - u * width * across[0] - v * height * up[0];
        double dy = y - place[1] - u * width * across[1] - v * height * up[1];
        double dz = z - place[2] - u * width * across[2] - v * height * up[2];
        double squared = dx * dx + dy * dy + dz * dz;
        double leaving = dx * axis[0] + dy * axis[1] + dz * axis[2];
        double arriving = -(dx * normal[0] + dy * normal[1] + dz * normal[2]);
        if (leaving > 0 && arriving > 0) {
          sum += leaving * arriving / (squared * squared);
        }
      }
    }
    return peakCdS * sum / counted;
  }
}
