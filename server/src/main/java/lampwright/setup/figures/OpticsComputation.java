package lampwright.setup.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import lampwright.engine.Known;
import lampwright.engine.exposure.FNumber;
import lampwright.engine.lens.CropBasis;
import lampwright.engine.lens.DepthOfField;
import lampwright.engine.lens.FocusedLens;
import lampwright.engine.lens.SensorFormat;
import lampwright.engine.unit.Metres;
import lampwright.engine.unit.Millimetres;
import lampwright.gear.Body;
import lampwright.setup.Camera;
import lampwright.setup.SetupDocument;

/** Computes the figures of camera and lens. */
final class OpticsComputation {

  /** Full frame's 0.0250 mm, another habit of the trade. */
  private static final double FINER_DIVISOR = 1730;

  private static final Millimetres CUSTOMARY_CIRCLE = new Millimetres(0.03);

  private OpticsComputation() {}

  static Optional<OpticsFigures> of(SetupDocument setup, Set<String> needs) {
    Optional<Body> body = setup.camera().flatMap(Camera::body);
    Optional<Millimetres> focal =
        setup.camera().flatMap(Camera::lens).map(lampwright.gear.Lens::focalLength);
    if (body.isEmpty()) {
      needs.add("/camera/body");
    }
    if (focal.isEmpty()) {
      needs.add("/camera/lens");
    }
    if (body.isEmpty() || focal.isEmpty()) {
      return Optional.empty();
    }
    if (body.get().pixelsWide().isEmpty()) {
      needs.add("/camera/body/pixels_wide");
    }
    SensorFormat format = new SensorFormat(body.get().width(), body.get().height());
    Optional<OpticsFigures.Focused> focused =
        focused(setup, format, focal.get(), setup.exposure().fNumber());
    if (focused.isEmpty()) {
      needs.add("/camera/focus_distance_m");
    }
    return Optional.of(
        figures(setup.exposure().fNumber(), format, focal.get(), body.get(), focused));
  }

  private static OpticsFigures figures(
      FNumber aperture,
      SensorFormat format,
      Millimetres focal,
      Body body,
      Optional<OpticsFigures.Focused> focused) {
    List<OpticsFigures.Equivalent> equivalents = new ArrayList<>(3);
    for (CropBasis basis : CropBasis.values()) {
      equivalents.add(
          new OpticsFigures.Equivalent(
              basis, format.crop(basis), format.equivalentFocal(focal, basis)));
    }
    return new OpticsFigures(
        format,
        focal,
        aperture,
        equivalents,
        format.equivalentFNumber(aperture),
        SensorFormat.angleOfView(format.width(), focal),
        SensorFormat.angleOfView(format.height(), focal),
        SensorFormat.angleOfView(format.diagonal(), focal),
        List.of(
            hyperfocal("d/1500", focal, aperture, usualCircle(format)),
            hyperfocal("d/1730", focal, aperture, format.circleOfConfusion(FINER_DIVISOR)),
            hyperfocal("0.030 mm", focal, aperture, CUSTOMARY_CIRCLE)),
        body.pixelsWide().map(format::pixelPitch),
        FocusedLens.airyDisc(aperture, FocusedLens.GREEN),
        focused);
  }

  static Millimetres usualCircle(SensorFormat format) {
    return format.circleOfConfusion(SensorFormat.USUAL_CIRCLE_DIVISOR);
  }

  private static OpticsFigures.Hyperfocal hyperfocal(
      String convention, Millimetres focal, FNumber aperture, Millimetres circle) {
    return new OpticsFigures.Hyperfocal(
        convention, circle, FocusedLens.hyperfocal(focal, aperture, circle));
  }

  private static Optional<OpticsFigures.Focused> focused(
      SetupDocument setup, SensorFormat format, Millimetres focal, FNumber aperture) {
    Optional<Metres> set = setup.camera().flatMap(Camera::focusDistance);
    Optional<Metres> distance = set.or(() -> toFirstTarget(setup));
    // At the focal length there is no image.
    return distance
        .filter(d -> d.value() * 1000 > focal.value() * 1.000001)
        .map(d -> new FocusedLens(focal, aperture, d))
        .map(
            lens ->
                new OpticsFigures.Focused(
                    lens,
                    set.isPresent() ? Known.SET : Known.COMPUTED,
                    lens.field(format.width()),
                    lens.field(format.height()),
                    lens.magnification(),
                    lens.effectiveFNumber(),
                    FocusedLens.airyDisc(lens.effectiveFNumber(), FocusedLens.GREEN),
                    depths(lens, format)));
  }

  private static List<DepthOfField> depths(FocusedLens lens, SensorFormat format) {
    return List.of(
        lens.depthOfField(usualCircle(format)),
        lens.depthOfField(format.circleOfConfusion(FINER_DIVISOR)),
        lens.depthOfField(CUSTOMARY_CIRCLE));
  }

  /** Where no focus is written down, the first target is what was focused on. */
  private static Optional<Metres> toFirstTarget(SetupDocument setup) {
    return setup
        .camera()
        .flatMap(Camera::place)
        .map(camera -> camera.distanceTo(setup.lights().getFirst().target().at()));
  }
}
