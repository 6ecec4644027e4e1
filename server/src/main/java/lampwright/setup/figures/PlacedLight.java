package lampwright.setup.figures;

import lampwright.engine.light.LightAtTarget;
import lampwright.engine.light.LightField;
import lampwright.engine.light.Point;
import lampwright.engine.light.Receptor;
import lampwright.engine.light.SourceFrame;
import lampwright.engine.light.UnitVector;
import lampwright.engine.unit.Stops;
import lampwright.setup.Light;

/**
 * A light as it stands, prepared once for many points: its field, its axes, its intensity. Plain
 * numbers, because all points of a setup are asked of all its lights.
 */
final class PlacedLight {

  /** Of a light that only grazes a receiver, what doubles leave over is no light. */
  private static final double GRAZING = 1e-9;

  private final LightAtTarget atTarget;
  private final LightField field;
  private final SourceFrame frame;
  private final double geometry;
  private final double peakCdS;

  PlacedLight(Light light, LightAtTarget atTarget) {
    this.atTarget = atTarget;
    this.field = LightField.of(atTarget.modifier().face(), atTarget.modifier().spread());
    this.frame = SourceFrame.of(atTarget.pose());
    this.geometry = geometry(atTarget.receptor());
    this.peakCdS =
        atTarget.output().peak(atTarget.modifier()).value()
            * atTarget.gel().loss().negated().toFactor()
            * light.heads()
            * light.pops();
  }

  LightAtTarget atTarget() {
    return atTarget;
  }

  /** The geometry factor at the light's own target, as the meter is held there, in 1/m2. */
  double geometry() {
    return geometry;
  }

  /** The same with another receptor. */
  double geometry(Receptor receptor) {
    Point at = atTarget.at();
    double found =
        switch (receptor) {
          case Receptor.TowardSource _ -> toward(at);
          case Receptor.Flat flat -> flat(at, flat.normal());
          case Receptor.Dome dome -> dome(at, dome.axis());
        };
    double d = atTarget.distance().value();
    return found * d * d < GRAZING ? 0 : found;
  }

  /** The intensity of all its heads and pops behind its gels, so far below full, in cd s. */
  double intensityCdS(Stops down) {
    return peakCdS * down.negated().toFactor();
  }

  double flat(Point at, UnitVector normal) {
    return field.flat(
        frame.rightOf(at.x(), at.y(), at.z()),
        frame.upOf(at.x(), at.y(), at.z()),
        frame.beforeOf(at.x(), at.y(), at.z()),
        frame.alongRight(normal.x(), normal.y(), normal.z()),
        frame.alongUp(normal.x(), normal.y(), normal.z()),
        frame.alongAxis(normal.x(), normal.y(), normal.z()));
  }

  double dome(Point at, UnitVector axis) {
    return field.dome(
        frame.rightOf(at.x(), at.y(), at.z()),
        frame.upOf(at.x(), at.y(), at.z()),
        frame.beforeOf(at.x(), at.y(), at.z()),
        frame.alongRight(axis.x(), axis.y(), axis.z()),
        frame.alongUp(axis.x(), axis.y(), axis.z()),
        frame.alongAxis(axis.x(), axis.y(), axis.z()));
  }

  private double toward(Point at) {
    return field.towardSource(
        frame.rightOf(at.x(), at.y(), at.z()),
        frame.upOf(at.x(), at.y(), at.z()),
        frame.beforeOf(at.x(), at.y(), at.z()));
  }
}
