package lampwright.engine;

import static lampwright.engine.WorkedExamples.assertResult;
import static lampwright.engine.WorkedExamples.number;
import static lampwright.engine.WorkedExamples.point;
import static lampwright.engine.WorkedExamples.text;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;
import lampwright.engine.exposure.Ambient;
import lampwright.engine.exposure.ExposureSettings;
import lampwright.engine.exposure.FNumber;
import lampwright.engine.exposure.Iso;
import lampwright.engine.exposure.MarkedScale;
import lampwright.engine.exposure.MeterConstant;
import lampwright.engine.exposure.ShutterTime;
import lampwright.engine.lens.CropBasis;
import lampwright.engine.lens.SensorFormat;
import lampwright.engine.light.Direction;
import lampwright.engine.light.EmittingFace;
import lampwright.engine.light.FallOff;
import lampwright.engine.light.Gel;
import lampwright.engine.light.GuideNumber;
import lampwright.engine.light.HeadOutput;
import lampwright.engine.light.LightAtTarget;
import lampwright.engine.light.LightSum;
import lampwright.engine.light.LightingRatio;
import lampwright.engine.light.MeteredReading;
import lampwright.engine.light.ModifierEffect;
import lampwright.engine.light.Pattern;
import lampwright.engine.light.Point;
import lampwright.engine.light.Receptor;
import lampwright.engine.light.UnitVector;
import lampwright.engine.power.FlashPulse;
import lampwright.engine.power.HeadCount;
import lampwright.engine.power.PowerRange;
import lampwright.engine.power.PowerSetting;
import lampwright.engine.unit.Kelvin;
import lampwright.engine.unit.Lux;
import lampwright.engine.unit.LuxSeconds;
import lampwright.engine.unit.Metres;
import lampwright.engine.unit.Millimetres;
import lampwright.engine.unit.Mired;
import lampwright.engine.unit.Stops;
import lampwright.engine.unit.WattSeconds;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;

/** The seated cellist (worked example 2, invented): metered readings, a gel, room light. */
final class WorkedExampleTwoTest {

  /** Every head here goes down seven stops in tenths; the example never reaches the end. */
  private static final PowerRange RANGE = PowerRange.of(7, 0.1);

  private final JsonNode inputs;
  private final JsonNode results;

  WorkedExampleTwoTest() throws IOException {
    JsonNode example = WorkedExamples.read("example_2");
    inputs = example.required("inputs");
    results = example.required("results");
  }

  @ParameterizedTest
  @CsvSource({"kit_a, key", "kit_a, fill", "kit_b, key", "kit_b, fill"})
  void meteredHeadsComeOutAsPublished(String kit, String name) {
    JsonNode expected = results.required(kit).required(name);
    LightAtTarget light = metered(kit, name);
    LuxSeconds wanted = wanted(kit, name);
    PowerSetting power = RANGE.quantise(light.stopsDownFor(wanted).orElseThrow());
    Stops down = power.set();
    Direction direction = Direction.of(subject(), place(name), camera());

    assertResult(expected, "distance_m", light.distance().value());
    assertResult(expected, "azimuth_deg", direction.azimuth().value());
    assertResult(expected, "elevation_deg", direction.elevation().value());
    assertEquals(text(expected, "pattern"), Pattern.of(direction).tradeName());
    assertResult(expected, "h_full_lx_s", light.atFullPower().value());
    assertResult(
        expected,
        "h_full_inverse_square_lx_s",
        light.atFullPower().plus(light.inverseSquareError()).value());
    assertResult(expected, "inverse_square_error_stops", light.inverseSquareError().value());
    assertResult(expected, "h_wanted_lx_s", wanted.value());
    assertResult(expected, "stops_down_exact", power.exact().value());
    assertEquals(number(expected, "stops_down_set"), down.value());
    assertResult(expected, "shortfall_stops", power.shortfall().value());
    assertResult(expected, "h_lx_s", light.at(down).value());
    assertResult(
        expected, "fnumber_iso100", light.readingAt(down, Iso.HUNDRED, MeterConstant.FLAT).value());
    assertResult(
        expected,
        "energy_w_s",
        new WattSeconds(number(inputs.required(kit).required(name), "full_w_s"))
            .down(down)
            .value());
    assertResult(expected, "volt_ratio", FlashPulse.Voltage.voltageShare(down));
  }

  @ParameterizedTest
  @CsvSource({"kit_a", "kit_b"})
  void gelledWallLightComesOutAsPublished(String kit) {
    JsonNode expected = results.required(kit).required("wall");
    JsonNode scene = inputs.required("kit_a").required("wall");
    Point aim = point(scene, "aim");
    Point place = point(scene, "head_m");
    Gel gel =
        Gel.ofTransmission(
            number(scene, "gel_transmission"), new Mired(number(scene, "gel_shift_mired")));
    LightAtTarget plain =
        LightAtTarget.of(
            HeadOutput.of(
                new GuideNumber(number(inputs.required(kit).required("wall"), "guide_number_m"))),
            ModifierEffect.standardReflector(),
            place,
            aim);
    LightAtTarget light =
        plain.withGel(gel).withReceptor(new Receptor.Flat(UnitVector.TOWARD_CAMERA));
    LuxSeconds wanted = wanted(kit, "wall");
    PowerSetting power = RANGE.quantise(light.stopsDownFor(wanted).orElseThrow());

    assertResult(expected, "distance_m", light.distance().value());
    assertResult(expected, "cos_incidence", light.cosine());
    assertResult(expected, "gel_loss_stops", gel.loss().value());
    assertResult(expected, "h_full_no_gel_normal_lx_s", plain.atFullPower().value());
    assertResult(expected, "h_full_lx_s", light.atFullPower().value());
    assertResult(expected, "h_wanted_lx_s", wanted.value());
    assertResult(expected, "stops_down_exact", power.exact().value());
    assertEquals(number(expected, "stops_down_set"), power.set().value());
    assertResult(expected, "h_lx_s", light.at(power.set()).value());
    assertResult(
        expected, "gelled_cct_k", gel.toColour(new Kelvin(number(scene, "flash_cct_k"))).value());
  }

  @Test
  void allLightTowardTheCameraComesOutAsPublished() {
    JsonNode expected = results.required("kit_a");
    ExposureSettings settings = settings("kit_a");
    UnitVector normal = UnitVector.between(subject(), camera());
    LuxSeconds key = facing("key", normal);
    LuxSeconds fill = facing("fill", normal);
    Ambient room = Ambient.ofLux(new Lux(110), MeterConstant.FLAT);
    LightSum sum =
        LightSum.of(List.of(key, fill), room.exposure(settings.time(), MeterConstant.FLAT));
    assertResult(expected, "facing_key_lx_s", key.value());
    assertResult(expected, "facing_fill_lx_s", fill.value());
    assertResult(expected, "ambient_lx_s", sum.ambient().value());
    assertResult(expected, "facing_total_lx_s", sum.total().value());
    assertResult(expected, "facing_fnumber", sum.reading(settings, MeterConstant.FLAT).value());
    assertResult(expected, "facing_offset_stops", sum.offset(settings, MeterConstant.FLAT).value());
    assertResult(
        expected, "ratio_key_plus_fill_to_fill", LightingRatio.of(key, fill).litToShadow());
    assertResult(expected, "ambient_ev100", room.level().value());
    assertResult(expected, "ambient_offset_stops", room.offset(settings).value());

    // Dragging the shutter until the room is two stops under.
    Stops more = new Stops(-2).minus(room.offset(settings));
    ShutterTime exact = settings.time().plus(more);
    assertResult(expected, "drag_shutter_exact_s", exact.seconds());
    assertEquals("0.4 s", exact.markText(MarkedScale.SHUTTER_THIRD));
    ExposureSettings dragged = settings.withTime(exact.nearestMark(MarkedScale.SHUTTER_THIRD));
    assertResult(expected, "drag_offset_stops", room.offset(dragged).value());
    assertResult(
        expected,
        "drag_ghost_fraction",
        LightSum.of(List.of(key, fill), room.exposure(dragged.time(), MeterConstant.FLAT))
            .ambientShare());
    assertResult(
        expected, "ambient_minus_flash_mired", new Kelvin(5500).shiftTo(new Kelvin(2950)).value());
  }

  /**
   * The example's exact figure of -0.389 for the hand, which is off the box's axis, needs the
   * polygon integral and comes with the engine issue; on the axis only these two hold.
   */
  @Test
  void bowingHandIsAsFarAsPublishedAndFallsOffLessThanInverseSquareOnTheAxis() {
    JsonNode expected = results.required("kit_a");
    Metres face = subject().distanceTo(place("key"));
    Metres hand = point(inputs, "hand_m").distanceTo(place("key"));
    EmittingFace box = WorkedExamples.face(inputs.required("kit_a").required("key"));
    assertResult(expected, "hand_distance_m", hand.value());
    Stops point = new EmittingFace.PointSource().change(face, hand);
    assertResult(expected, "hand_vs_face_stops_inverse_square", point.value());
    Stops onAxis = box.change(face, hand);
    assertTrue(onAxis.value() > point.value() && onAxis.value() < 0, onAxis::toString);
  }

  @Test
  void waysOutForKitBComeOutAsPublished() {
    JsonNode expected = results.required("kit_b");
    SensorFormat small = SensorFormat.FULL_FRAME;
    SensorFormat large = SensorFormat.of(43.8, 32.9);
    assertResult(expected, "crop_factor", large.crop(CropBasis.DIAGONAL));
    assertResult(
        expected,
        "focal_wanted_mm",
        small.focalOn(large, new Millimetres(85), CropBasis.DIAGONAL).value());
    FNumber deep = small.fNumberOn(large, FNumber.parse("8"));
    assertResult(expected, "equivalent_fnumber_wanted", deep.value());
    assertEquals("f/10", deep.markText(MarkedScale.APERTURE_THIRD));

    LightAtTarget key = metered("kit_b", "key");
    Stops keyShort = shortfall("kit_b", "key");
    Stops fillShort = shortfall("kit_b", "fill");
    assertResult(
        expected,
        "key_distance_for_target_m",
        FallOff.distanceForGain(key.modifier().face(), key.distance(), keyShort)
            .orElseThrow()
            .value());
    assertResult(
        expected,
        "key_distance_inverse_square_m",
        FallOff.inverseSquareDistance(key.distance(), keyShort).value());
    assertEquals((int) number(expected, "key_pops"), HeadCount.neededFor(keyShort));
    assertEquals((int) number(expected, "fill_pops"), HeadCount.neededFor(fillShort));
    assertResult(expected, "iso_to_cure_key", Iso.HUNDRED.plus(keyShort).value());
    assertResult(expected, "iso_for_all", Iso.HUNDRED.plus(fillShort).value());
    assertEquals("ISO 200", Iso.HUNDRED.plus(keyShort).markText(MarkedScale.ISO_THIRD));
    assertEquals("ISO 320", Iso.HUNDRED.plus(fillShort).markText(MarkedScale.ISO_THIRD));
  }

  private Stops shortfall(String kit, String name) {
    return RANGE
        .quantise(metered(kit, name).stopsDownFor(wanted(kit, name)).orElseThrow())
        .shortfall();
  }

  private LuxSeconds facing(String name, UnitVector normal) {
    LightAtTarget light = metered("kit_a", name);
    Stops down = RANGE.quantise(light.stopsDownFor(wanted("kit_a", name)).orElseThrow()).set();
    return light.at(down).times(UnitVector.between(subject(), place(name)).receivedBy(normal));
  }

  private LightAtTarget metered(String kit, String name) {
    JsonNode gear = inputs.required(kit).required(name);
    MeteredReading reading =
        new MeteredReading(
            new FNumber(number(gear, "f_number_reading")).nearestMark(MarkedScale.APERTURE_FULL),
            new Iso(number(gear, "reading_iso")),
            new Metres(number(gear, "reading_distance_m")),
            new Stops(number(gear, "reading_stops_down")),
            MeterConstant.FLAT);
    return LightAtTarget.of(
        HeadOutput.ofModifier(reading),
        ModifierEffect.ofFace(WorkedExamples.face(gear)),
        subject().distanceTo(place(name)));
  }

  private LuxSeconds wanted(String kit, String name) {
    return settings(kit)
        .requiredExposure(MeterConstant.FLAT)
        .plus(new Stops(number(inputs.required("targets"), name)));
  }

  private static ExposureSettings settings(String kit) {
    return ExposureSettings.of(
        FNumber.parse(kit.equals("kit_a") ? "f/8" : "f/10"),
        ShutterTime.parse("1/160"),
        Iso.parse("100"));
  }

  private Point subject() {
    return point(inputs, "subject_m");
  }

  private Point camera() {
    return point(inputs, "camera_m");
  }

  private Point place(String name) {
    return point(inputs.required("kit_a").required(name), "head_m");
  }
}
