package lampwright.setup.figures;

import java.util.ArrayList;
import java.util.List;
import lampwright.engine.Known;
import lampwright.engine.light.EmittingFace;
import lampwright.engine.light.LightAtTarget;
import lampwright.engine.unit.BaseTwo;
import lampwright.engine.unit.LuxSeconds;
import lampwright.engine.unit.Metres;
import lampwright.engine.unit.Stops;
import lampwright.setup.Light;
import lampwright.setup.figures.UncertaintyBudget.Part;

/**
 * How sure a level is, as one standard deviation in stops. The single contributions are common
 * practice of the trade (source trade-practice).
 */
final class Uncertainty {

  private static final double METER = 0.1;
  private static final double ESTIMATE = 0.5;
  private static final double DIAL = 0.2;
  private static final double MAKERS_GUIDE_NUMBER = 0.5;
  private static final double MODELLED_LOSS = 1;
  private static final double LONG_BURST = 0.5;
  private static final double MODEL = 0.3;
  private static final double MODEL_INSIDE_ONE_DIAGONAL = 0.5;
  private static final double BY_TAPE = 0.02;
  private static final double BY_EYE = 0.15;

  /** How far a meter or a surface is turned from where it is thought to face: 3 degrees. */
  private static final double ANGLE_RADIANS = 3 * StrictMath.PI / 180;

  /** No part is larger: beyond this nothing is known, and more says no more. */
  private static final double MOST = 10;

  private Uncertainty() {}

  /** Of a value that somebody read, set or judged. */
  static UncertaintyBudget of(Known known) {
    return new UncertaintyBudget(List.of(part(known, 1)));
  }

  /**
   * Of a flash's exposure that was metered together with the ambient: what little is left of a
   * reading is the less sure, the more of it was ambient.
   */
  static UncertaintyBudget withoutAmbient(
      Known reading, Known ambient, LuxSeconds whole, LuxSeconds flash) {
    double ofAmbient = (whole.value() - flash.value()) / flash.value();
    Part taken = part(ambient, ofAmbient);
    return new UncertaintyBudget(
        List.of(
            part(reading, whole.value() / flash.value()),
            new Part("ambient taken off", taken.deviation(), ambient)));
  }

  private static Part part(Known known, double weight) {
    double size =
        switch (known) {
          case METERED -> METER;
          case SET -> DIAL;
          case ESTIMATED, COMPUTED -> ESTIMATE;
        };
    String name =
        switch (known) {
          case METERED -> "meter";
          case SET -> "dial";
          case ESTIMATED, COMPUTED -> "estimate";
        };
    return new Part(name, new Stops(Math.min(MOST, size * weight)), known);
  }

  /**
   * Of a level computed from a head's output, its modifier and the distance.
   *
   * @param metered whether a meter found the output, which is surer than a maker's word
   * @param longBurst whether the head fires its long burst, whose efficiency is a rough word
   */
  static UncertaintyBudget ofModel(
      Light light, boolean metered, boolean longBurst, LightAtTarget atTarget) {
    List<Part> parts = new ArrayList<>(7);
    parts.add(
        metered
            ? new Part("meter", new Stops(METER), Known.METERED)
            : new Part("maker's guide number", new Stops(MAKERS_GUIDE_NUMBER), Known.SET));
    parts.add(new Part("dial", new Stops(DIAL), Known.SET));
    EmittingFace face = atTarget.modifier().face();
    parts.add(distance(light, face, atTarget.distance()));
    boolean close = atTarget.distance().value() < face.largestDimension().value();
    parts.add(
        new Part(
            close ? "model, inside one diagonal" : "model",
            new Stops(close ? MODEL_INSIDE_ONE_DIAGONAL : MODEL),
            Known.COMPUTED));
    if (light.output().isEmpty() && light.modifierOrStandard().isLossModelled()) {
      parts.add(new Part("modelled loss", new Stops(MODELLED_LOSS), Known.COMPUTED));
    }
    if (longBurst) {
      parts.add(new Part("long burst", new Stops(LONG_BURST), Known.ESTIMATED));
    }
    double cosine = atTarget.cosine();
    if (cosine > 0 && cosine < 1) {
      parts.add(new Part("angle of the receiver", angle(cosine), Known.ESTIMATED));
    }
    return new UncertaintyBudget(parts);
  }

  /** By how much the level changes over the distance's own error, as this face really falls off. */
  private static Part distance(Light light, EmittingFace face, Metres distance) {
    boolean tape = light.placeKnown() == Known.SET;
    double share = tape ? BY_TAPE : BY_EYE;
    double nearer = face.geometry(new Metres(distance.value() * (1 - share)));
    double further = face.geometry(new Metres(distance.value() * (1 + share)));
    return new Part(
        tape ? "distance, by tape" : "distance, by eye",
        new Stops(Math.min(MOST, BaseTwo.log(nearer / further) / 2)),
        light.placeKnown());
  }

  private static Stops angle(double cosine) {
    double tangent = Math.sqrt(1 - cosine * cosine) / cosine;
    return new Stops(Math.min(MOST, BaseTwo.log(1 + tangent * ANGLE_RADIANS)));
  }
}
