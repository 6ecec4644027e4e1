package lampwright.engine;

import static java.util.Map.entry;

import java.util.List;
import java.util.Map;
import java.util.function.Function;
import lampwright.engine.beam.Lobe;
import lampwright.engine.exposure.FNumber;
import lampwright.engine.exposure.Iso;
import lampwright.engine.exposure.MeterConstant;
import lampwright.engine.light.ConfigurationFactors;
import lampwright.engine.light.Direction;
import lampwright.engine.light.EmittingFace;
import lampwright.engine.light.FaceSide;
import lampwright.engine.light.FallOff;
import lampwright.engine.light.Gel;
import lampwright.engine.light.GuideNumber;
import lampwright.engine.light.HeadOutput;
import lampwright.engine.light.LightSum;
import lampwright.engine.light.LightingRatio;
import lampwright.engine.light.MeteredReading;
import lampwright.engine.light.ModifierEffect;
import lampwright.engine.light.Pattern;
import lampwright.engine.light.PlacedSource;
import lampwright.engine.light.Point;
import lampwright.engine.light.Pose;
import lampwright.engine.light.Receptor;
import lampwright.engine.light.VirtualSource;
import lampwright.engine.unit.CandelaSeconds;
import lampwright.engine.unit.Degrees;
import lampwright.engine.unit.Kelvin;
import lampwright.engine.unit.Lux;
import lampwright.engine.unit.LuxSeconds;
import lampwright.engine.unit.Metres;
import lampwright.engine.unit.Mired;
import lampwright.engine.unit.Seconds;
import lampwright.engine.unit.Stops;
import lampwright.engine.unit.WattSeconds;

/** How each check value on sources, modifiers, sums, gels and patterns is computed. */
final class LightChecks {

  private LightChecks() {}

  static final Map<String, Function<CheckInputs, Object>> FORMULAS =
      Map.ofEntries(
          entry("gn.from_cds", in -> guideNumber(in).toMetresAt(in.iso())),
          entry(
              "gn.from_cds_feet",
              in -> new GuideNumber(guideNumber(in).toMetresAt(in.iso())).toFeet()),
          entry(
              "gn.cds",
              in ->
                  GuideNumber.ofMetresAt(in.number("guide_number_m"), in.iso())
                      .toCandelaSeconds(in.constant())
                      .value()),
          entry("gn.feet_constant", in -> in.constant().toFeetConstant()),
          entry(
              "gn.c_from_feet_constant",
              in -> MeterConstant.ofFeetConstant(in.number("feet_constant")).luxSeconds()),
          entry(
              "gn.fnumber",
              in -> gn(in).fNumberAt(in.metres("distance_m"), in.iso(), power(in)).value()),
          entry(
              "gn.distance",
              in -> gn(in).distanceFor(in.fNumber("f_number"), in.iso(), power(in)).value()),
          entry("gn.metres_to_feet", in -> gn(in).toFeet()),
          entry(
              "gn.feet_to_metres",
              in -> GuideNumber.ofFeet(in.number("guide_number_ft")).metresAtIso100()),
          entry("gn.iso_scale", LightChecks::isoScale),
          entry(
              "gn.ws_to_cds",
              in ->
                  CandelaSeconds.ofEnergy(
                          new WattSeconds(in.number("energy_w_s")),
                          in.number("efficacy_lm_s_per_w_s"),
                          in.number("reflector_gain"))
                      .value()),
          entry(
              "source.f_disc",
              in -> ConfigurationFactors.disc(in.number("radius_m"), in.number("distance_m"))),
          entry(
              "source.f_ellipse_axis",
              in ->
                  ConfigurationFactors.ellipse(
                      in.number("semi_a_m"), in.number("semi_b_m"), in.number("distance_m"))),
          entry(
              "source.f_rect_corner",
              in ->
                  ConfigurationFactors.rectangleFromCorner(
                      in.number("a_m"), in.number("b_m"), in.number("distance_m"))),
          entry(
              "source.f_rect_corner_perp",
              in ->
                  ConfigurationFactors.rectanglePerpendicular(
                      in.number("width_m"), in.number("height_m"), in.number("distance_m"))),
          entry(
              "source.f_rect_axis",
              in ->
                  ConfigurationFactors.rectangle(
                      in.number("width_m"), in.number("height_m"), in.number("distance_m"))),
          entry(
              "source.f_polygon",
              in ->
                  ConfigurationFactors.polygon(
                      in.points("vertices_m"), in.point("point_m"), in.way("receiver_normal"))),
          entry("lobe.disc_on_axis_lux", LightChecks::discOfALobe),
          entry(
              "source.isl_error_percent",
              in -> in.face().inverseSquareError(in.metres("distance_m")).toPercent()),
          entry(
              "source.isl_error_stops",
              in -> in.face().inverseSquareError(in.metres("distance_m")).value()),
          entry("modifier.rescale_fnumber", LightChecks::rescaled),
          entry("modifier.h_full", LightChecks::fullPower),
          entry("modifier.virtual_offset", LightChecks::virtualOffset),
          entry("modifier.virtual_fnumber", LightChecks::virtualReading),
          entry(
              "modifier.loss_from_readings",
              in ->
                  ModifierEffect.lossFromReadings(
                          in.fNumber("f_number_reference"), in.fNumber("f_number_modifier"))
                      .value()),
          entry(
              "modifier.gn_from_reading",
              in ->
                  GuideNumber.ofReading(
                          in.fNumber("f_number"), in.metres("distance_m"), in.iso(), power(in))
                      .metresAtIso100()),
          entry(
              "modifier.move_closer_distance",
              in ->
                  FallOff.inverseSquareDistance(in.metres("distance_m"), in.stops("stops_wanted"))
                      .value()),
          entry(
              "modifier.stops_available",
              in -> exposure(in, "h_full_lx_s").stopsOver(exposure(in, "h_wanted_lx_s")).value()),
          entry("combine.ratio_from_stops", in -> ratio(in).litToShadow()),
          entry("combine.contrast_stops", in -> ratio(in).contrast().value()),
          entry(
              "combine.fill_stops_for_ratio",
              in -> LightingRatio.ofLitToShadow(in.number("ratio")).keyOverFill().value()),
          entry("combine.total_lx_s", LightChecks::total),
          entry("combine.flash_to_ambient_stops", LightChecks::flashOverAmbient),
          entry("colour_temp.mired", in -> kelvin(in, "cct_k").toMired().value()),
          entry(
              "colour_temp.shift", in -> kelvin(in, "from_k").shiftTo(kelvin(in, "to_k")).value()),
          entry(
              "colour_temp.after_gel",
              in ->
                  new Gel(Stops.ZERO, new Mired(in.number("shift_mired")))
                      .toColour(kelvin(in, "cct_k"))
                      .value()),
          entry(
              "colour_temp.gel_loss_stops",
              in -> Gel.ofTransmission(in.number("transmission"), Mired.ZERO).loss().value()),
          entry(
              "colour_temp.apparent",
              in ->
                  kelvin(in, "source_k")
                      .apparentAt(kelvin(in, "white_balance_k"), kelvin(in, "neutral_k"))
                      .value()),
          entry(
              "motion.light_change_stops",
              in -> in.face().change(in.metres("from_m"), in.metres("to_m")).value()),
          entry(
              "motion.light_gradient_stops_per_m",
              in -> FallOff.gradientStopsPerMetre(in.metres("distance_m"))),
          entry("tolerance.distance_percent", in -> 100 * FallOff.nearerShare(in.stops("stops"))),
          entry(
              "pattern.name",
              in ->
                  Pattern.of(
                          Direction.of(
                              in.number("azimuth_from_nose_deg"), in.number("elevation_deg")))
                      .tradeName()),
          entry(
              "pattern.broad_short",
              in ->
                  FaceSide.of(
                          new Degrees(in.number("light_azimuth_from_camera_deg")),
                          new Degrees(in.number("face_yaw_deg")))
                      .tradeName()));

  private static GuideNumber gn(CheckInputs in) {
    return new GuideNumber(in.number("guide_number_m"));
  }

  private static GuideNumber guideNumber(CheckInputs in) {
    return GuideNumber.ofCandelaSeconds(new CandelaSeconds(in.number("peak_cd_s")), in.constant());
  }

  private static Stops power(CheckInputs in) {
    return Stops.ofRatio(in.number("power_fraction", 1)).negated();
  }

  private static Object isoScale(CheckInputs in) {
    return GuideNumber.ofMetresAt(in.number("guide_number"), new Iso(in.number("iso_from")))
        .toMetresAt(new Iso(in.number("iso_to")));
  }

  private static Object rescaled(CheckInputs in) {
    MeteredReading reading =
        new MeteredReading(
            in.fNumber("f_number"),
            new Iso(in.number("iso_from", 100)),
            in.metres("from_m"),
            Stops.ZERO,
            MeterConstant.FLAT);
    return reading
        .rescaled(
            in.metres("to_m"),
            in.face(),
            new Stops(-in.number("power_change_stops", 0)),
            new Iso(in.number("iso_to", 100)))
        .value();
  }

  private static Object fullPower(CheckInputs in) {
    return new HeadOutput.Rated(gn(in), in.constant())
        .exposureAt(
            in.metres("distance_m"),
            ModifierEffect.of(in.face(), in.stops("loss_stops"), in.metres("reference_m")))
        .value();
  }

  private static Object virtualOffset(CheckInputs in) {
    return VirtualSource.ofReadings(
            in.fNumber("f_number_1"),
            in.metres("distance_1_m"),
            in.fNumber("f_number_2"),
            in.metres("distance_2_m"))
        .offset()
        .value();
  }

  private static Object virtualReading(CheckInputs in) {
    FNumber known = in.fNumber("f_number_1");
    Metres knownDistance = in.metres("distance_1_m");
    return new VirtualSource(in.metres("offset_m"))
        .reading(known, knownDistance, in.metres("distance_m"))
        .value();
  }

  private static LightSum lightSum(CheckInputs in, List<Double> flashes) {
    LuxSeconds ambient = new Lux(in.number("ambient_lx")).over(new Seconds(in.number("shutter_s")));
    return LightSum.of(flashes.stream().map(LuxSeconds::new).toList(), ambient);
  }

  private static Object total(CheckInputs in) {
    return lightSum(in, in.numbers("flash_lx_s")).total().value();
  }

  private static Object flashOverAmbient(CheckInputs in) {
    return lightSum(in, List.of(in.number("flash_lx_s"))).flashOverAmbient().value();
  }

  private static LightingRatio ratio(CheckInputs in) {
    return new LightingRatio(in.stops("key_minus_fill_stops"));
  }

  private static LuxSeconds exposure(CheckInputs in, String name) {
    return new LuxSeconds(in.number(name));
  }

  private static Kelvin kelvin(CheckInputs in, String name) {
    return new Kelvin(in.number(name));
  }

  private static double discOfALobe(CheckInputs in) {
    PlacedSource source =
        new PlacedSource(
            new EmittingFace.Disc(in.metres("radius_m")),
            new Lobe(in.number("m")),
            Pose.toward(Point.of(0, 0, 0), Point.of(0, 1, 0)));
    Point at = Point.of(0, in.number("distance_m"), 0);
    return in.number("peak_cd") * source.geometryAt(at, new Receptor.TowardSource());
  }
}
