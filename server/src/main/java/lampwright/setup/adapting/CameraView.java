package lampwright.setup.adapting;

import java.util.Optional;
import lampwright.engine.light.Point;
import lampwright.engine.light.UnitVector;
import lampwright.engine.unit.Metres;
import lampwright.setup.Camera;
import lampwright.setup.SetupDocument;

/**
 * What a camera takes in, as a pyramid from its lens. The long side of the sensor is taken both
 * ways because a document does not say whether the camera is held upright.
 *
 * @param slope half the width of the picture over the distance
 */
record CameraView(Point from, UnitVector axis, double slope) {

  /** What a camera takes in from where the setup's stands; empty where something is not known. */
  static Optional<CameraView> of(SetupDocument setup, CameraChoice choice) {
    Optional<Point> from = setup.camera().flatMap(Camera::place);
    Optional<Point> aim = setup.camera().flatMap(Camera::aim);
    if (from.isEmpty() || aim.isEmpty() || choice.body().isEmpty() || choice.lens().isEmpty()) {
      return Optional.empty();
    }
    if (from.get().distanceTo(aim.get()).value() < 0.01) {
      return Optional.empty();
    }
    double side =
        Math.max(choice.body().get().width().value(), choice.body().get().height().value());
    return Optional.of(
        new CameraView(
            from.get(),
            UnitVector.between(from.get(), aim.get()),
            side / 2 / choice.lens().get().focalLength().value()));
  }

  /** Asks whether any of a ball around a point may be in the picture. */
  boolean sees(Point middle, Metres radius) {
    double x = middle.x() - from.x();
    double y = middle.y() - from.y();
    double z = middle.z() - from.z();
    double before = x * axis.x() + y * axis.y() + z * axis.z();
    double aside = Math.sqrt(Math.max(0, x * x + y * y + z * z - before * before));
    // The corner of the square that stands around the picture.
    double corner = slope * Math.sqrt(2);
    double reach = radius.value() * Math.sqrt(1 + corner * corner);
    return before > -radius.value() && aside < before * corner + reach;
  }
}
