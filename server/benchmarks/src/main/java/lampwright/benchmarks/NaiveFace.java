package lampwright.benchmarks;

import lampwright.engine.beam.Even;
import lampwright.engine.beam.Lobe;
import lampwright.engine.light.EmittingFace;
import lampwright.engine.light.Point;
import lampwright.engine.light.UnitVector;
import lampwright.engine.map.MappedLight;

/**
 * The baseline: a flat face cut into little squares, each a point that shines by the cosine to some
 * power. No formula of the engine is used.
 *
 * @param place of the middle
 * @param across unit vector along the width
 * @param up unit vector along the height
 * @param axis unit vector into the lit half
 * @param widthM 0 for a point
 * @param heightM 0 for a point
 * @param round whether only what lies within the circle that touches the sides shines
 * @param exponent of the cosine
 * @param peakCdS far-away intensity on the axis, in candela seconds
 */
record NaiveFace(
    Point place,
    UnitVector across,
    UnitVector up,
    UnitVector axis,
    double widthM,
    double heightM,
    boolean round,
    double exponent,
    double peakCdS) {

  static NaiveFace of(MappedLight light) {
    EmittingFace face = light.source().face();
    double width =
        switch (face) {
          case EmittingFace.Rectangle box -> box.width().value();
          case EmittingFace.PointSource _ -> 0;
          default -> face.largestDimension().value();
        };
    double height = face instanceof EmittingFace.Rectangle box ? box.height().value() : width;
    double exponent =
        switch (light.source().spread()) {
          case Even _ -> 1;
          case Lobe lobe -> lobe.exponent();
          default -> throw new IllegalArgumentException("No naive " + light.source().spread());
        };
    UnitVector axis = light.source().pose().axis();
    UnitVector across = UnitVector.of(axis.y(), -axis.x(), 0);
    UnitVector up =
        UnitVector.of(
            across.y() * axis.z() - across.z() * axis.y(),
            across.z() * axis.x() - across.x() * axis.z(),
            across.x() * axis.y() - across.y() * axis.x());
    return new NaiveFace(
        light.source().pose().place(),
        across,
        up,
        axis,
        width,
        height,
        face instanceof EmittingFace.Disc,
        exponent,
        light.peak().value());
  }

  /**
   * Returns the exposure in lux seconds at a point, on a flat receiver.
   *
   * @param pieces along each side
   */
  double exposureLxS(Point at, UnitVector normal, int pieces) {
    if (widthM == 0) {
      return peakCdS * pieceAt(at, normal, 0, 0);
    }
    double sum = 0;
    int counted = 0;
    for (int i = 0; i < pieces; i++) {
      double u = (i + 0.5) / pieces - 0.5;
      for (int j = 0; j < pieces; j++) {
        double v = (j + 0.5) / pieces - 0.5;
        if (!round || u * u + v * v <= 0.25) {
          counted++;
          sum += pieceAt(at, normal, u * widthM, v * heightM);
        }
      }
    }
    return peakCdS * sum / counted;
  }

  private double pieceAt(Point at, UnitVector normal, double u, double v) {
    double dx = at.x() - place.x() - u * across.x() - v * up.x();
    double dy = at.y() - place.y() - u * across.y() - v * up.y();
    double dz = at.z() - place.z() - u * across.z() - v * up.z();
    double squared = dx * dx + dy * dy + dz * dz;
    double leaving = dx * axis.x() + dy * axis.y() + dz * axis.z();
    double arriving = -(dx * normal.x() + dy * normal.y() + dz * normal.z());
    if (leaving <= 0 || arriving <= 0) {
      return 0;
    }
    double shine = exponent == 1 ? leaving : lobe(leaving, Math.sqrt(squared));
    return shine * arriving / (squared * squared);
  }

  private double lobe(double leaving, double distance) {
    return distance * Math.pow(leaving / distance, exponent);
  }
}
