package lampwright.drawing;

import java.util.List;
import lampwright.engine.light.EmittingFace;
import lampwright.engine.light.Point;
import lampwright.engine.unit.Metres;
import lampwright.setup.Light;

/**
 * A light as a plan sees it: straight from above, in metres.
 *
 * @param number its place in the build order, from 1
 * @param right share of its horizontal aim to camera right; with {@code away} of length one
 * @param away share of its horizontal aim away from the camera
 * @param tiltDeg how far its aim points up, minus is down
 */
record LightOnPlan(
    int number, Light light, Metres distance, double right, double away, double tiltDeg) {

  /** Steeper than this the face is seen more from the front than from its edge. */
  private static final double STEEP_DEG = 50;

  /** Less than this aside, a light hangs over what it is aimed at. */
  private static final double STRAIGHT_M = 1e-6;

  static LightOnPlan of(int number, Light light, Metres distance) {
    Point from = light.place();
    Point to = light.aim().orElse(light.target().at());
    double right = to.x() - from.x();
    double away = to.y() - from.y();
    double up = to.z() - from.z();
    double ground = Math.sqrt(right * right + away * away);
    if (ground < STRAIGHT_M) {
      double tilt = up == 0 ? 0 : Math.copySign(90, up);
      return new LightOnPlan(number, light, distance, 0, 1, tilt);
    }
    double tilt = StrictMath.atan2(up, ground) * 180 / Math.PI;
    return new LightOnPlan(number, light, distance, right / ground, away / ground, tilt);
  }

  /** The face's true width, across its aim; 0 for a source that counts as a point. */
  double faceWidthM() {
    return switch (light.modifierOrStandard().face()) {
      case EmittingFace.PointSource _ -> 0;
      case EmittingFace.Disc disc -> 2 * disc.radius().value();
      case EmittingFace.Octagon octagon -> octagon.acrossFlats().value();
      case EmittingFace.Rectangle rectangle -> rectangle.width().value();
    };
  }

  /** How deep the face looks from above: its height, foreshortened by its tilt. */
  double faceDepthM() {
    double height =
        light.modifierOrStandard().face() instanceof EmittingFace.Rectangle rectangle
            ? rectangle.height().value()
            : faceWidthM();
    return height * Math.abs(StrictMath.sin(tiltDeg * Math.PI / 180));
  }

  boolean isSteep() {
    return Math.abs(tiltDeg) > STEEP_DEG;
  }

  /** Both ends of the face, across the aim. */
  List<Point> faceEnds() {
    double half = faceWidthM() / 2;
    Point at = light.place();
    return List.of(
        new Point(at.x() - away * half, at.y() + right * half, at.z()),
        new Point(at.x() + away * half, at.y() - right * half, at.z()));
  }

  /** Where it is aimed, on the sheet, as a way of length one. */
  Spot heading() {
    return new Spot(right, -away);
  }
}
