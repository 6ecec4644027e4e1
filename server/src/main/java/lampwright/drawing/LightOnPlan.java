package lampwright.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import lampwright.engine.light.EmittingFace;
import lampwright.engine.light.Point;
import lampwright.engine.unit.Metres;
import lampwright.setup.Light;
import lampwright.setup.LightId;
import lampwright.setup.SetupDocument;

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

  /** A disc is drawn with so many corners. */
  private static final int DISC_CORNERS = 32;

  /** Less than this aside, a light hangs over what it is aimed at. */
  private static final double STRAIGHT_M = 1e-6;

  /** All lights of a setup in build order, with their numbers. */
  static List<LightOnPlan> all(
      SetupDocument setup, Map<LightId, Integer> numbers, Function<Light, Metres> distance) {
    List<LightOnPlan> all = new ArrayList<>();
    for (Light light : setup.lightsInBuildOrder()) {
      int number = Objects.requireNonNull(numbers.get(light.id()), "every light has a number");
      all.add(of(number, light, distance.apply(light)));
    }
    return List.copyOf(all);
  }

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

  /** Its aim in the setup's frame, of length one. */
  Point axis() {
    double level = StrictMath.cos(tiltDeg * Math.PI / 180);
    double up = StrictMath.sin(tiltDeg * Math.PI / 180);
    return new Point(right * level, away * level, up);
  }

  /**
   * The corners of the face in the setup's frame, a disc's as a many-sided figure; a point's one.
   */
  List<Point> faceOutline() {
    return switch (light.modifierOrStandard().face()) {
      case EmittingFace.PointSource _ -> List.of(light.place());
      case EmittingFace.Disc disc -> regular(disc.radius().value(), DISC_CORNERS);
      case EmittingFace.Octagon octagon ->
          regular(octagon.acrossFlats().value() / 2 / StrictMath.cos(Math.PI / 8), 8);
      case EmittingFace.Rectangle rectangle -> {
        double half = rectangle.width().value() / 2;
        double high = rectangle.height().value() / 2;
        yield List.of(
            onFace(-half, -high), onFace(half, -high), onFace(half, high), onFace(-half, high));
      }
    };
  }

  private List<Point> regular(double radiusM, int corners) {
    List<Point> outline = new ArrayList<>();
    for (int i = 0; i < corners; i++) {
      double angle = (i + 0.5) * 2 * Math.PI / corners;
      outline.add(onFace(radiusM * StrictMath.cos(angle), radiusM * StrictMath.sin(angle)));
    }
    return List.copyOf(outline);
  }

  /** A point of the face, from its middle to its right and up along it. */
  private Point onFace(double rightM, double upM) {
    double level = StrictMath.cos(tiltDeg * Math.PI / 180);
    double tilt = StrictMath.sin(tiltDeg * Math.PI / 180);
    Point at = light.place();
    return new Point(
        at.x() + rightM * away - upM * tilt * right,
        at.y() - rightM * right - upM * tilt * away,
        at.z() + upM * level);
  }

  /** Where it is aimed, on the sheet, as a way of length one. */
  Spot heading() {
    return new Spot(right, -away);
  }
}
