package lampwright.setup.building;

import java.util.Optional;
import lampwright.engine.light.Point;
import lampwright.engine.unit.Degrees;
import lampwright.engine.unit.Metres;
import lampwright.setup.Camera;
import lampwright.setup.SetupDocument;
import lampwright.setup.Subject;

/**
 * Where something stands, as somebody on the hit mark finds it with a tape and a compass: a
 * direction, and how far over the ground.
 *
 * @param overGround level, whatever the height
 * @param fromAxis clockwise as seen from above, from 0 up to 360: 0 goes on beyond the hit mark as
 *     the camera looks, 90 to camera right, 180 back toward the camera
 * @param bearing true, clockwise from north; absent where the camera's is not known
 */
public record FromHitMark(Metres overGround, Degrees fromAxis, Optional<Degrees> bearing) {

  /** Nearer than this there is no direction: it stands on the hit mark. */
  private static final double ON_THE_MARK_M = 0.05;

  private static final double FULL_TURN = 360;

  /** Where a place of a setup is. */
  public static FromHitMark of(Point place, SetupDocument setup) {
    double x = place.x();
    double y = place.y();
    double turned = clockwise(x, y) - axis(setup);
    Degrees fromAxis = new Degrees(withinATurn(turned));
    return new FromHitMark(
        new Metres(Math.sqrt(x * x + y * y)),
        fromAxis,
        setup
            .camera()
            .flatMap(Camera::bearing)
            .map(of -> new Degrees(withinATurn(of.value() + fromAxis.value()))));
  }

  /**
   * The direction in which a subject's face points, as directions of the setup are counted: true
   * where the camera's bearing is known, else from its axis.
   */
  public static Degrees faced(Subject subject, SetupDocument setup) {
    Point at = subject.place();
    Optional<Point> camera = setup.camera().flatMap(Camera::place);
    double toCamera =
        clockwise(
            camera.map(place -> place.x() - at.x()).orElse(0.0),
            camera.map(place -> place.y() - at.y()).orElse(-1.0));
    return new Degrees(withinATurn(toCamera - subject.facing().value() + turned(setup).value()));
  }

  /** By how much a direction that is read off is more than the same from the document's y axis. */
  public static Degrees turned(SetupDocument setup) {
    double north = setup.camera().flatMap(Camera::bearing).map(Degrees::value).orElse(0.0);
    return new Degrees(north - axis(setup));
  }

  /** Asks whether it stands on the hit mark, so that no direction leads there. */
  public boolean isOnTheMark() {
    return overGround.value() < ON_THE_MARK_M;
  }

  /** The direction that is used: the true bearing, or the one from the axis. */
  public Degrees direction() {
    return bearing.orElse(fromAxis);
  }

  /** Where the camera looks, clockwise from the document's y axis; along it where nothing tells. */
  private static double axis(SetupDocument setup) {
    Optional<Point> from = setup.camera().flatMap(Camera::place);
    if (from.isEmpty()) {
      return 0;
    }
    Point to = setup.camera().flatMap(Camera::aim).orElse(new Point(0, 0, 0));
    return clockwise(to.x() - from.get().x(), to.y() - from.get().y());
  }

  private static double clockwise(double right, double away) {
    return right == 0 && away == 0 ? 0 : StrictMath.atan2(right, away) * 180 / Math.PI;
  }

  private static double withinATurn(double degrees) {
    double rest = degrees % FULL_TURN;
    return rest < 0 ? rest + FULL_TURN : rest;
  }
}
