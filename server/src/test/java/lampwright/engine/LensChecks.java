package lampwright.engine;

import static java.util.Map.entry;

import java.util.Map;
import java.util.function.Function;
import lampwright.engine.exposure.FNumber;
import lampwright.engine.lens.CropBasis;
import lampwright.engine.lens.DepthOfField;
import lampwright.engine.lens.FocusedLens;
import lampwright.engine.lens.Movement;
import lampwright.engine.lens.SensorFormat;
import lampwright.engine.unit.Degrees;
import lampwright.engine.unit.LuxSeconds;
import lampwright.engine.unit.Metres;
import lampwright.engine.unit.MetresPerSecond;
import lampwright.engine.unit.Micrometres;
import lampwright.engine.unit.Millimetres;

/** How each check value on formats, depth of field and movement is computed. */
final class LensChecks {

  private LensChecks() {}

  static final Map<String, Function<CheckInputs, Object>> FORMULAS =
      Map.ofEntries(
          entry("optics.crop_factor", in -> format(in).crop(basis(in))),
          entry("optics.diagonal", in -> format(in).diagonal().value()),
          entry(
              "optics.equivalent_focal",
              in -> format(in).equivalentFocal(mm(in, "focal_mm"), basis(in)).value()),
          entry(
              "optics.equivalent_fnumber",
              in -> format(in).equivalentFNumber(in.fNumber("f_number")).value()),
          entry(
              "optics.angle_of_view",
              in -> SensorFormat.angleOfView(mm(in, "size_mm"), mm(in, "focal_mm")).value()),
          entry("optics.coc", in -> format(in).circleOfConfusion(in.number("divisor")).value()),
          entry("optics.hyperfocal_m", in -> depth(in).hyperfocal().value()),
          entry("optics.dof_near_m", in -> depth(in).near().value()),
          entry("optics.dof_far_m", in -> depth(in).far().orElseThrow().value()),
          entry(
              "optics.dof_total_close_mm",
              in ->
                  FocusedLens.closeUpDepth(
                          in.fNumber("f_number"),
                          mm(in, "coc_mm"),
                          in.number("magnification"),
                          in.number("pupil_magnification", 1))
                      .value()),
          entry("optics.magnification", in -> lens(in).magnification()),
          entry(
              "optics.effective_fnumber",
              in ->
                  FocusedLens.effectiveFNumber(
                          in.fNumber("f_number"),
                          in.number("magnification"),
                          in.number("pupil_magnification", 1))
                      .value()),
          entry("optics.blur_disc_mm", in -> lens(in).blurDisc(in.metres("point_m")).value()),
          entry(
              "optics.airy_um",
              in ->
                  FocusedLens.airyDisc(
                          in.fNumber("f_number"), new Micrometres(in.number("wavelength_um")))
                      .value()),
          entry("optics.field_m", in -> lens(in).field(mm(in, "size_mm")).value()),
          entry(
              "optics.framing_distance_m",
              in ->
                  FocusedLens.framingDistance(
                          mm(in, "focal_mm"), in.metres("subject_m"), mm(in, "image_mm"))
                      .value()),
          entry(
              "optics.pitch_um",
              in ->
                  new SensorFormat(mm(in, "width_mm"), new Millimetres(24))
                      .pixelPitch((int) in.number("pixels"))
                      .value()),
          entry("motion.image_speed_mm_s", in -> movement(in).imageSpeed().value()),
          entry(
              "motion.blur_um",
              in -> movement(in).blur(in.seconds("time_s")).toMicrometres().value()),
          entry(
              "motion.blur_px",
              in ->
                  movement(in)
                      .blurPixels(in.seconds("time_s"), new Micrometres(in.number("pitch_um")))),
          entry(
              "motion.approach_image_speed_mm_s",
              in ->
                  Movement.approachSpeed(
                          mm(in, "image_radius_mm"), speed(in), in.metres("distance_m"))
                      .value()),
          entry(
              "motion.time_for_blur_s",
              in ->
                  movement(in)
                      .longestTimeFor(new Micrometres(in.number("blur_um")).toMillimetres())
                      .value()),
          entry(
              "motion.ghost_fraction",
              in ->
                  Movement.ghostFraction(
                      new LuxSeconds(in.number("ambient_lx_s")),
                      new LuxSeconds(in.number("flash_lx_s")))),
          entry("motion.focus_travel_mm_s", in -> lens(in).focusTravel(speed(in)).value()),
          entry(
              "motion.time_in_dof_s", in -> depth(in).timeInside(speed(in)).orElseThrow().value()),
          entry("motion.jump_takeoff_m_s", in -> Movement.takeOff(in.metres("rise_m")).value()),
          entry("motion.jump_time_s", in -> Movement.airTime(in.metres("rise_m")).value()),
          entry("motion.apex_window_s", in -> Movement.timeNearTop(in.metres("drop_m")).value()));

  private static SensorFormat format(CheckInputs in) {
    return SensorFormat.of(in.number("width_mm"), in.number("height_mm"));
  }

  private static CropBasis basis(CheckInputs in) {
    return switch (in.text("mode")) {
      case "diagonal" -> CropBasis.DIAGONAL;
      case "long" -> CropBasis.LONG_SIDE;
      case "short" -> CropBasis.SHORT_SIDE;
      default -> throw new IllegalArgumentException("No such basis: " + in.text("mode"));
    };
  }

  /** Some cases leave out what their formula does not need: any aperture or distance will do. */
  private static FocusedLens lens(CheckInputs in) {
    return new FocusedLens(
        mm(in, "focal_mm"),
        new FNumber(in.number("f_number", 8)),
        new Metres(in.number("focus_m", 5)));
  }

  private static DepthOfField depth(CheckInputs in) {
    return lens(in).depthOfField(mm(in, "coc_mm"));
  }

  private static Movement movement(CheckInputs in) {
    return new Movement(lens(in), speed(in), new Degrees(in.number("angle_deg")));
  }

  private static MetresPerSecond speed(CheckInputs in) {
    return new MetresPerSecond(in.number("speed_m_s"));
  }

  private static Millimetres mm(CheckInputs in, String name) {
    return new Millimetres(in.number(name));
  }
}
