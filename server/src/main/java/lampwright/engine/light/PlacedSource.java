package lampwright.engine.light;

import lampwright.engine.beam.Even;
import lampwright.engine.beam.Spread;
import lampwright.engine.unit.Metres;

/**
 * A source of a shape and a spread that stands somewhere: what it gives to any point and receiver.
 *
 * <p>The exposure is {@code E = I0 G}, with I0 the far-away intensity on the axis and G the
 * geometry factor here, which tends to relative intensity times receiver's cosine over distance
 * squared. Exact for points, even polygons and even discs (sources lambert-contour, howell,
 * derived); by quadrature below 0.001 stop for lobes of any face ({@link SampledField} says where
 * not).
 *
 * @param face the shape
 * @param spread how each part of it spreads its light
 * @param pose where its middle is and where it looks
 */
public record PlacedSource(EmittingFace face, Spread spread, Pose pose) {

  /**
   * Returns the geometry factor at a point, in 1/m2, 0 or more. At and behind the plane of an even
   * face there is none; nearer than a millimetre to a point source counts as a millimetre.
   */
  public double geometryAt(Point at, Receptor receptor) {
    return new PreparedSource(field(), frame()).geometryAt(at, receptor);
  }

  /** Returns the source's own axes, for many points. */
  public SourceFrame frame() {
    return SourceFrame.of(pose);
  }

  /** Returns what it gives in its own axes, for many points. */
  public LightField field() {
    return LightField.of(face, spread);
  }

  /**
   * Returns the geometry factor straight before a face, for a receiver that looks at it, in 1/m2:
   * of points and even faces {@link EmittingFace#geometry}. Above 0 at every distance.
   *
   * @param distance from the face, above 0
   */
  static double geometryOnAxis(EmittingFace face, Spread spread, Metres distance) {
    if (face instanceof EmittingFace.PointSource || spread instanceof Even) {
      return face.geometry(distance);
    }
    double sampled = LightField.of(face, spread).flat(0, 0, distance.value(), 0, 0, -1);
    // So close to a face of a narrow beam that no sample aims here: the beam seen whole, its limit.
    return sampled > 0 ? sampled : spread.solidAngleSr() / face.area().value();
  }
}
