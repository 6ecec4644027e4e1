package lampwright.engine.light;

import lampwright.engine.beam.Even;
import lampwright.engine.beam.Spread;

/**
 * What a source of one shape and spread gives anywhere around it, in its own frame (see {@link
 * SourceFrame}). Prepared once, then asked for many points.
 *
 * <p>Every answer is a geometry factor in 1/m2: the exposure is the far-away intensity on the axis
 * times it. A receiver's direction is a vector of length one.
 */
public sealed interface LightField permits PointField, PolygonField, DiscField, SampledField {

  /** Nearer to a point or an element than this, it counts as this far off. */
  double NEAREST_M = 1e-3;

  /** Returns the field of a face with a spread. */
  static LightField of(EmittingFace face, Spread spread) {
    boolean even = spread instanceof Even;
    return switch (face) {
      case EmittingFace.PointSource _ -> new PointField(spread);
      case EmittingFace.Disc disc ->
          even
              ? new DiscField(disc.radius().value())
              : SampledField.ofDisc(disc.radius().value(), spread);
      case EmittingFace.Rectangle rectangle -> polygon(Corners.of(rectangle), spread, even);
      case EmittingFace.Octagon octagon -> polygon(Corners.of(octagon), spread, even);
    };
  }

  private static LightField polygon(Corners corners, Spread spread, boolean even) {
    return even ? new PolygonField(corners) : SampledField.ofPolygon(corners, spread);
  }

  /**
   * Returns the geometry factor for a flat receiver: light from its back does not count.
   *
   * @param x to the source's right, in metres, likewise up y and before z
   * @param nx the receiver's normal in the same frame
   */
  double flat(double x, double y, double z, double nx, double ny, double nz);

  /** Returns the same, made ready to be asked for very many points, each a little less exactly. */
  default LightField tabled() {
    return this;
  }

  /** Returns the geometry factor for a dome that points along the direction. */
  double dome(double x, double y, double z, double nx, double ny, double nz);

  /** Returns the geometry factor for a flat receiver pointed at the middle of the face. */
  default double towardSource(double x, double y, double z) {
    double distance = Math.sqrt(x * x + y * y + z * z);
    return distance < NEAREST_M
        ? flat(x, y, z, 0, 0, -1)
        : flat(x, y, z, -x / distance, -y / distance, -z / distance);
  }
}
