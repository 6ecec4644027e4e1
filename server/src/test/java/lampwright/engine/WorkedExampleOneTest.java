package lampwright.engine;

import static lampwright.engine.WorkedExamples.assertResult;
import static lampwright.engine.WorkedExamples.number;
import static lampwright.engine.WorkedExamples.text;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.util.List;
import java.util.stream.Stream;
import lampwright.engine.exposure.Ambient;
import lampwright.engine.exposure.Ev100;
import lampwright.engine.exposure.ExposureSettings;
import lampwright.engine.exposure.FNumber;
import lampwright.engine.exposure.Iso;
import lampwright.engine.exposure.MeterConstant;
import lampwright.engine.lens.CropBasis;
import lampwright.engine.lens.DepthOfField;
import lampwright.engine.lens.FocusedLens;
import lampwright.engine.lens.Movement;
import lampwright.engine.lens.SensorFormat;
import lampwright.engine.light.FallOff;
import lampwright.engine.light.LightSum;
import lampwright.engine.light.LightingRatio;
import lampwright.engine.light.Pattern;
import lampwright.engine.light.Receptor;
import lampwright.engine.power.FlashBudget;
import lampwright.engine.power.FlashPulse;
import lampwright.engine.power.HeadCount;
import lampwright.engine.power.ShutterLoss;
import lampwright.engine.unit.LuxSeconds;
import lampwright.engine.unit.Metres;
import lampwright.engine.unit.MetresPerSecond;
import lampwright.engine.unit.Micrometres;
import lampwright.engine.unit.Millimetres;
import lampwright.engine.unit.Seconds;
import lampwright.engine.unit.Stops;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import tools.jackson.databind.JsonNode;

/** The dancer on the slipway (worked example 1, invented): six heads, two kits, four plans. */
final class WorkedExampleOneTest {

  private final SlipwayScene scene;
  private final JsonNode inputs;
  private final JsonNode results;

  WorkedExampleOneTest() throws IOException {
    JsonNode example = WorkedExamples.read("example_1");
    inputs = example.required("inputs");
    results = example.required("results");
    scene = new SlipwayScene(inputs);
  }

  @TestFactory
  Stream<DynamicTest> headsOfKitAComeOutAsPublished() {
    return heads("kit_a", results.required("kit_a"), Stops.ZERO);
  }

  @TestFactory
  Stream<DynamicTest> headsOfKitBComeOutAsPublishedInEachPlan() {
    JsonNode plans = results.required("kit_b");
    return Stream.of(
            "plan_1_keep_ambient_stop_down",
            "plan_2_keep_ambient_and_dof_with_nd",
            "plan_3_accept_brighter_ambient",
            "plan_4_long_burst_1_500")
        .flatMap(
            plan -> heads("kit_b", plans.required(plan), scene.burstLoss(plans.required(plan))));
  }

  private Stream<DynamicTest> heads(String kit, JsonNode plan, Stops burstLoss) {
    return inputs
        .required("lights")
        .valueStream()
        .map(
            light ->
                DynamicTest.dynamicTest(
                    kit + ", " + scene.settings(plan) + ": " + text(light, "name"),
                    () -> checkHead(kit, plan, burstLoss, light)));
  }

  private void checkHead(String kit, JsonNode plan, Stops burstLoss, JsonNode light) {
    String name = text(light, "name");
    JsonNode expected = plan.required("heads").required(name);
    SlipwayScene.Head head = scene.head(kit, plan, burstLoss, light);
    JsonNode gear = inputs.required(kit).required("head");
    Stops down = head.power().set();

    assertResult(expected, "distance_m", head.light().distance().value());
    assertResult(expected, "azimuth_deg", head.direction().azimuth().value());
    assertResult(expected, "elevation_deg", head.direction().elevation().value());
    assertResult(expected, "cos_receiver", head.light().cosine());
    assertResult(
        expected,
        "h_full_lx_s",
        head.light().withReceptor(new Receptor.TowardSource()).atFullPower().value());
    assertResult(expected, "stops_down_exact", head.power().exact().value());
    assertEquals(number(expected, "stops_down_set"), down.value());
    assertResult(expected, "shortfall_stops", head.power().shortfall().value());
    assertResult(expected, "h_lx_s", head.set().value());
    assertResult(
        expected,
        "fnumber_iso100",
        head.light().readingAt(down, Iso.HUNDRED, MeterConstant.FLAT).value());
    assertResult(expected, "inverse_square_error_stops", head.light().inverseSquareError().value());
    assertEquals(text(expected, "pattern"), Pattern.of(head.direction()).tradeName());

    FlashBudget budget = SlipwayScene.budget(gear);
    assertResult(expected, "energy_w_s", budget.energyAt(down).value());
    assertResult(expected, "recycle_s", budget.recycleAt(down).value());
    assertResult(expected, "flashes_per_battery", budget.flashesPerChargeAt(down).orElseThrow());
    FlashPulse pulse = SlipwayScene.pulse(gear);
    assertResult(expected, "t05_s", pulse.halfTime(down).value());
    assertResult(expected, "t01_s", pulse.tenthTime(down).value());
  }

  @Test
  void allLightTowardTheCameraOfKitAComesOutAsPublished() {
    JsonNode plan = results.required("kit_a");
    ExposureSettings settings = scene.settings(plan);
    assertResult(plan, "ev100_set", settings.ev100().value());
    assertResult(plan, "h_set_lx_s", settings.requiredExposure(MeterConstant.FLAT).value());
    Ambient ambient = new Ambient(new Ev100(number(inputs, "ambient_ev100")));
    assertResult(plan, "ambient_offset_stops", ambient.offset(settings).value());
    assertResult(plan, "ambient_lx", ambient.toLux(MeterConstant.FLAT).value());

    List<LuxSeconds> facing = scene.facing("kit_a", plan, Stops.ZERO);
    LightSum sum = LightSum.of(facing, ambient.exposure(settings.time(), MeterConstant.FLAT));
    assertResult(plan, "ambient_lx_s", sum.ambient().value());
    assertResult(plan, "facing_flash_lx_s", sum.flash().value());
    assertResult(plan, "facing_total_lx_s", sum.total().value());
    assertResult(plan, "facing_fnumber", sum.reading(settings, MeterConstant.FLAT).value());
    assertResult(plan, "facing_offset_stops", sum.offset(settings, MeterConstant.FLAT).value());
    assertResult(plan, "flash_to_ambient_stops", sum.flashOverAmbient().value());
    assertResult(plan, "ghost_fraction_facing", sum.ambientShare());
    assertResult(
        plan,
        "key_plus_fill_to_fill",
        LightingRatio.of(facing.get(0), facing.get(1)).litToShadow());
  }

  @Test
  void allLightTowardTheCameraOfKitBComesOutAsPublished() {
    JsonNode plans = results.required("kit_b");
    Ambient ambient = new Ambient(new Ev100(number(inputs, "ambient_ev100")));
    plans
        .propertyStream()
        .filter(each -> each.getKey().startsWith("plan_"))
        .forEach(
            each -> {
              JsonNode plan = each.getValue();
              ExposureSettings settings = scene.settings(plan);
              // Long burst loses on its way to the sensor what its heads were asked to give more.
              Stops burst = scene.burstLoss(plan);
              LightSum sum =
                  LightSum.of(
                      scene.facing("kit_b", plan, burst).stream().map(h -> h.minus(burst)).toList(),
                      ambient.exposure(settings.time(), MeterConstant.FLAT));
              assertResult(plan, "ev100_set", settings.ev100().value());
              assertResult(
                  plan, "h_set_lx_s", settings.requiredExposure(MeterConstant.FLAT).value());
              assertResult(plan, "ambient_offset_stops", ambient.offset(settings).value());
              assertResult(plan, "facing_flash_lx_s", sum.flash().value());
              assertResult(plan, "facing_total_lx_s", sum.total().value());
              assertResult(
                  plan, "facing_offset_stops", sum.offset(settings, MeterConstant.FLAT).value());
              DepthOfField depth =
                  new FocusedLens(new Millimetres(50), settings.aperture(), new Metres(7))
                      .depthOfField(SensorFormat.FULL_FRAME.circleOfConfusion(1500));
              assertResult(plan, "near_m", depth.near().value());
              assertResult(plan, "far_m", depth.far().orElseThrow().value());
            });
  }

  @Test
  void remediesForPlanOneComeOutAsPublished() {
    JsonNode remedies = results.required("kit_b").required("remedies_plan_1");
    JsonNode plan = results.required("kit_b").required("plan_1_keep_ambient_stop_down");
    inputs
        .required("lights")
        .forEach(
            light -> {
              JsonNode expected = remedies.required(text(light, "name"));
              SlipwayScene.Head head = scene.head("kit_b", plan, Stops.ZERO, light);
              Stops shortfall = head.power().shortfall();
              assertResult(expected, "shortfall_stops", shortfall.value());
              assertResult(
                  expected,
                  "move_to_distance_m_inverse_square",
                  FallOff.inverseSquareDistance(head.light().distance(), shortfall).value());
              assertEquals((int) number(expected, "heads_needed"), HeadCount.neededFor(shortfall));
            });
  }

  @Test
  void slowFlashesAreCutAtTheFirstRowsAsPublished() {
    JsonNode kit = results.required("kit_b");
    JsonNode gear = inputs.required("kit_b");
    FlashPulse pulse = SlipwayScene.pulse(gear.required("head"));
    Seconds traverse = new Seconds(number(gear.required("camera"), "traverse_s"));
    for (String number : List.of("1", "3")) {
      JsonNode losses = kit.required("sync_edge_loss_stops_plan_" + number);
      JsonNode plan =
          kit.required(
              number.equals("1")
                  ? "plan_1_keep_ambient_stop_down"
                  : "plan_3_accept_brighter_ambient");
      for (JsonNode light : inputs.required("lights")) {
        SlipwayScene.Head head = scene.head("kit_b", plan, Stops.ZERO, light);
        Seconds open = scene.settings(plan).time().toSeconds();
        assertResult(
            losses,
            text(light, "name"),
            ShutterLoss.syncEdge(pulse, head.power().set(), open, traverse).orElseThrow().value());
      }
    }
    FlashPulse slow = SlipwayScene.pulse(inputs.required("kit_a").required("head"));
    assertResult(
        results.required("kit_a"),
        "leaf_clip_loss_full_power_stops",
        ShutterLoss.leaf(slow, Stops.ZERO, new Seconds(1.0 / 512)).value());
  }

  @Test
  void opticsAndMovementOfKitAComeOutAsPublished() {
    JsonNode optics = results.required("kit_a").required("optics");
    SensorFormat format = SensorFormat.of(53.4, 40);
    FocusedLens lens = new FocusedLens(new Millimetres(80), FNumber.parse("f/2.8"), new Metres(7));
    Millimetres circle = format.circleOfConfusion(1500);
    DepthOfField depth = lens.depthOfField(circle);
    Micrometres pitch = format.pixelPitch(14204);
    assertResult(optics, "diagonal_mm", format.diagonal().value());
    assertResult(optics, "crop_factor", format.crop(CropBasis.DIAGONAL));
    assertResult(
        optics,
        "equivalent_focal_long_mm",
        format.equivalentFocal(lens.focal(), CropBasis.LONG_SIDE).value());
    assertResult(
        optics,
        "equivalent_focal_short_mm",
        format.equivalentFocal(lens.focal(), CropBasis.SHORT_SIDE).value());
    assertResult(optics, "coc_mm", circle.value());
    assertResult(optics, "hyperfocal_m", depth.hyperfocal().value());
    assertResult(optics, "near_m", depth.near().value());
    assertResult(optics, "far_m", depth.far().orElseThrow().value());
    assertResult(optics, "field_width_m", lens.field(format.width()).value());
    assertResult(optics, "field_height_m", lens.field(format.height()).value());
    assertResult(optics, "pitch_um", pitch.value());
    assertResult(
        optics, "equivalent_fnumber_36x24", format.equivalentFNumber(lens.aperture()).value());
    assertResult(
        optics, "airy_um_550nm", FocusedLens.airyDisc(lens.aperture(), FocusedLens.GREEN).value());

    JsonNode motion = results.required("kit_a").required("motion");
    Movement body = Movement.across(lens, new MetresPerSecond(3.2));
    Movement limbs = Movement.across(lens, new MetresPerSecond(6));
    Seconds flash =
        SlipwayScene.pulse(inputs.required("kit_a").required("head")).tenthTime(new Stops(1.8));
    Seconds open = new Seconds(1.0 / 512);
    assertResult(motion, "body_image_speed_mm_s", body.imageSpeed().value());
    assertResult(motion, "body_blur_flash_px", body.blurPixels(flash, pitch));
    assertResult(motion, "limb_blur_flash_px", limbs.blurPixels(flash, pitch));
    assertResult(motion, "body_blur_ambient_px", body.blurPixels(open, pitch));
    assertResult(motion, "limb_blur_ambient_px", limbs.blurPixels(open, pitch));
    assertResult(motion, "takeoff_m_s", Movement.takeOff(new Metres(0.45)).value());
    assertResult(motion, "air_time_s", Movement.airTime(new Metres(0.45)).value());
  }
}
