package lampwright.engine;

import static lampwright.engine.WorkedExamples.assertResult;
import static lampwright.engine.WorkedExamples.number;
import static lampwright.engine.WorkedExamples.point;
import static lampwright.engine.WorkedExamples.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lampwright.engine.exposure.ExposureSettings;
import lampwright.engine.exposure.FNumber;
import lampwright.engine.exposure.Iso;
import lampwright.engine.exposure.MarkedScale;
import lampwright.engine.exposure.MeterConstant;
import lampwright.engine.exposure.ShutterTime;
import lampwright.engine.light.Direction;
import lampwright.engine.light.GuideNumber;
import lampwright.engine.light.HeadOutput;
import lampwright.engine.light.LightAtTarget;
import lampwright.engine.light.ModifierEffect;
import lampwright.engine.light.Point;
import lampwright.engine.light.Receptor;
import lampwright.engine.light.UnitVector;
import lampwright.engine.power.FlashBudget;
import lampwright.engine.power.FlashPulse;
import lampwright.engine.power.PowerRange;
import lampwright.engine.power.PowerSetting;
import lampwright.engine.power.ShutterLoss;
import lampwright.engine.unit.LuxSeconds;
import lampwright.engine.unit.Metres;
import lampwright.engine.unit.Seconds;
import lampwright.engine.unit.Stops;
import lampwright.engine.unit.WattSeconds;
import tools.jackson.databind.JsonNode;

/** The scene of worked example 1, built from its inputs with the engine's types. */
final class SlipwayScene {

  private static final Stops STEP = new Stops(0.1);

  private final JsonNode inputs;

  SlipwayScene(JsonNode inputs) {
    this.inputs = inputs;
  }

  /** Everything about one head of a kit in one plan. */
  record Head(LightAtTarget light, Direction direction, PowerSetting power, LuxSeconds set) {}

  Head head(String kit, JsonNode plan, Stops burstLoss, JsonNode light) {
    JsonNode gear = inputs.required(kit);
    JsonNode modifier = gear.required("modifiers").required(text(light, "name"));
    Point place = point(light, "head_m");
    boolean atWall = light.has("aim");
    Point target = atWall ? point(light, "aim") : point(inputs, "subject_m");
    Receptor receptor =
        atWall ? new Receptor.Flat(UnitVector.TOWARD_CAMERA) : new Receptor.TowardSource();
    LightAtTarget at =
        LightAtTarget.of(
                HeadOutput.of(new GuideNumber(number(gear.required("head"), "guide_number_m"))),
                ModifierEffect.of(
                    WorkedExamples.face(modifier),
                    new Stops(number(modifier, "loss_stops")),
                    new Metres(number(gear.required("head"), "reference_m"))),
                place,
                target)
            .withReceptor(receptor);
    Stops offset = new Stops(number(light, "offset_stops"));
    LuxSeconds wanted =
        settings(plan).requiredExposure(MeterConstant.FLAT).plus(offset).plus(burstLoss);
    PowerSetting power =
        new PowerRange(new Stops(number(gear.required("head"), "range_stops")), STEP)
            .quantise(at.stopsDownFor(wanted).orElseThrow());
    return new Head(at, Direction.of(target, place), power, at.at(power.set()));
  }

  /** What each head but the background's gives a receiver that faces the camera. */
  List<LuxSeconds> facing(String kit, JsonNode plan, Stops burstLoss) {
    Point subject = point(inputs, "subject_m");
    UnitVector normal = UnitVector.between(subject, point(inputs, "camera_m"));
    List<LuxSeconds> facing = new ArrayList<>();
    for (JsonNode light : inputs.required("lights")) {
      if (!light.has("aim")) {
        UnitVector toLight = UnitVector.between(subject, point(light, "head_m"));
        facing.add(head(kit, plan, burstLoss, light).set().times(toLight.receivedBy(normal)));
      }
    }
    return facing;
  }

  ExposureSettings settings(JsonNode plan) {
    // The file's ISO and shutter are exact values behind marks, rounded to nine digits.
    double iso = plan.has("iso") ? number(plan, "iso") : 100;
    return new ExposureSettings(
        new FNumber(number(plan, "f_number")).nearestMark(MarkedScale.APERTURE_THIRD),
        new ShutterTime(number(plan, "shutter_s")).nearestMark(MarkedScale.SHUTTER_THIRD),
        new Iso(iso).nearestMark(MarkedScale.ISO_THIRD),
        new Stops(plan.has("nd_stops") ? number(plan, "nd_stops") : 0));
  }

  Stops burstLoss(JsonNode plan) {
    if (!plan.has("hss_loss_stops")) {
      return Stops.ZERO;
    }
    double traverse = number(inputs.required("kit_b").required("camera"), "traverse_s");
    Stops loss =
        ShutterLoss.longBurst(settings(plan).time().toSeconds(), new Seconds(traverse), 0.8);
    assertResult(plan, "hss_loss_stops", loss.value());
    return loss;
  }

  static FlashBudget budget(JsonNode gear) {
    return new FlashBudget(
        new WattSeconds(number(gear, "full_w_s")),
        new Seconds(number(gear, "recycle_full_s")),
        new Seconds(number(gear, "recycle_floor_s")),
        Optional.of(number(gear, "flashes_full")));
  }

  static FlashPulse pulse(JsonNode gear) {
    return new FlashPulse.Cut(new Seconds(number(gear, "t05_full_s")));
  }
}
