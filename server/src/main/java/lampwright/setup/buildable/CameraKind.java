package lampwright.setup.buildable;

import java.util.Optional;
import lampwright.engine.exposure.FNumber;
import lampwright.engine.exposure.Iso;
import lampwright.engine.exposure.MarkedScale;
import lampwright.engine.exposure.ShutterTime;
import lampwright.engine.unit.Stops;
import lampwright.gear.Body;
import lampwright.gear.Lens;
import lampwright.setup.ShootingExposure;
import lampwright.setup.adapting.KitOffer;

/**
 * What of a setup's camera and settings decides which settings a kit's cameras have for it: setups
 * alike in it share them.
 *
 * @param aperture where it is on no scale, so that only the same lens makes it again
 * @param iso where it is on no scale, or the body is not known
 * @param neutralDensity the setup's own grey filter, which goes with a kit of lights only
 */
record CameraKind(
    Optional<Body> body,
    Optional<Lens> lens,
    Optional<FNumber> aperture,
    Optional<Iso> iso,
    ShutterTime time,
    Stops neutralDensity) {

  static CameraKind of(KitOffer.Shot shot) {
    ShootingExposure exposure = shot.exposure();
    Optional<Body> body = shot.body();
    boolean marked = MarkedScale.APERTURE_THIRD.findExact(exposure.fNumber().value()).isPresent();
    boolean fast = MarkedScale.ISO_THIRD.findExact(exposure.iso().value()).isPresent();
    return new CameraKind(
        body,
        shot.lens(),
        marked ? Optional.empty() : Optional.of(exposure.fNumber()),
        fast && body.isPresent() ? Optional.empty() : Optional.of(exposure.iso()),
        exposure.time(),
        exposure.neutralDensity());
  }

  /**
   * The same for a kit with bodies, lenses and filters of its own, where that leaves less to tell
   * apart.
   */
  CameraKind with(boolean ownBodies, boolean ownLenses, boolean ownFilters) {
    boolean timed = MarkedScale.SHUTTER_THIRD.findExact(time.seconds()).isPresent();
    return new CameraKind(
        ownBodies && timed && iso.isEmpty() ? Optional.empty() : body,
        ownLenses && aperture.isEmpty() ? Optional.empty() : lens,
        aperture,
        iso,
        time,
        ownBodies || ownFilters ? Stops.ZERO : neutralDensity);
  }
}
