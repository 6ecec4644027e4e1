package lampwright.engine.light;

/**
 * A placed source made ready to be asked for many points.
 *
 * @param field what it gives in its own axes
 * @param frame its own axes
 */
public record PreparedSource(LightField field, SourceFrame frame) {

  /** Returns the geometry factor at a point: {@link PlacedSource#geometryAt}. */
  public double geometryAt(Point at, Receptor receptor) {
    double x = frame.rightOf(at.x(), at.y(), at.z());
    double y = frame.upOf(at.x(), at.y(), at.z());
    double z = frame.beforeOf(at.x(), at.y(), at.z());
    return switch (receptor) {
      case Receptor.TowardSource _ -> field.towardSource(x, y, z);
      case Receptor.Flat flat -> {
        UnitVector n = flat.normal();
        yield field.flat(
            x,
            y,
            z,
            frame.alongRight(n.x(), n.y(), n.z()),
            frame.alongUp(n.x(), n.y(), n.z()),
            frame.alongAxis(n.x(), n.y(), n.z()));
      }
      case Receptor.Dome dome -> {
        UnitVector n = dome.axis();
        yield field.dome(
            x,
            y,
            z,
            frame.alongRight(n.x(), n.y(), n.z()),
            frame.alongUp(n.x(), n.y(), n.z()),
            frame.alongAxis(n.x(), n.y(), n.z()));
      }
    };
  }
}
