package lampwright.engine.light;

import java.util.Optional;
import lampwright.engine.Source;
import lampwright.engine.Working;
import lampwright.engine.exposure.FNumber;
import lampwright.engine.exposure.Iso;
import lampwright.engine.exposure.MeterConstant;
import lampwright.engine.unit.Bounds;
import lampwright.engine.unit.LuxSeconds;
import lampwright.engine.unit.Metres;
import lampwright.engine.unit.Stops;

/**
 * One light as one target gets it: output, modifier, gel, distance and how the target is turned to
 * it. Four things change it independently: power, distance, modifier and the receiver's angle.
 *
 * <p>On the modifier's axis. Predicted from one reading it is sure to 0.3 stop, inside one diagonal
 * of the source to 0.5 (trade-practice); the meter decides.
 *
 * @param output what the head gives
 * @param modifier what is in front of it
 * @param gel colour filters
 * @param distance from the modifier's face, above 0
 * @param cosine of the angle between the receiver's normal and the light, 0 to 1; 1 for a meter
 *     pointed at the head, 0 for a light from behind
 */
public record LightAtTarget(
    HeadOutput output, ModifierEffect modifier, Gel gel, Metres distance, double cosine) {

  /** Checks the bounds. */
  public LightAtTarget {
    Bounds.requirePositive("Distance", distance.value(), "m");
    Bounds.requireBetween("Cosine of the receiver", cosine, "", 0, 1);
  }

  /** Returns a light without a gel, metered by pointing at it. */
  public static LightAtTarget of(HeadOutput output, ModifierEffect modifier, Metres distance) {
    return new LightAtTarget(output, modifier, Gel.NONE, distance, 1);
  }

  /** Returns a copy with gels. */
  public LightAtTarget withGel(Gel other) {
    return new LightAtTarget(output, modifier, other, distance, cosine);
  }

  /** Returns a copy at another distance. */
  public LightAtTarget withDistance(Metres other) {
    return new LightAtTarget(output, modifier, gel, other, cosine);
  }

  /** Returns a copy with the receiver turned otherwise. */
  public LightAtTarget withCosine(double other) {
    return new LightAtTarget(output, modifier, gel, distance, other);
  }

  /** Returns the exposure at full power. */
  public LuxSeconds atFullPower() {
    return output.exposureAt(distance, modifier).minus(gel.loss()).times(cosine);
  }

  /** Returns the exposure so many stops below full power. */
  public LuxSeconds at(Stops stopsDown) {
    return atFullPower().minus(stopsDown);
  }

  /**
   * Returns what a meter at the target reads so many stops below full power.
   *
   * @throws IllegalArgumentException where no light reaches the target (cosine 0): nothing to read
   */
  public FNumber readingAt(Stops stopsDown, Iso iso, MeterConstant constant) {
    return FNumber.ofExposure(at(stopsDown), iso, constant);
  }

  /**
   * Returns the power, in stops below full, that gives the wanted exposure: negative where the head
   * is too weak by that much. Empty where no light reaches the target.
   *
   * @param wanted above 0
   */
  public Optional<Stops> stopsDownFor(LuxSeconds wanted) {
    LuxSeconds full = atFullPower();
    return full.value() == 0 ? Optional.empty() : Optional.of(full.stopsOver(wanted));
  }

  /** Returns by how many stops the inverse square law alone would have misjudged this light. */
  public Stops inverseSquareError() {
    Metres known =
        switch (output) {
          case HeadOutput.Rated rated -> modifier.lossReferenceDistance();
          case HeadOutput.Metered metered -> metered.reading().distance();
        };
    EmittingFace face = modifier.face();
    return face.inverseSquareError(distance).minus(face.inverseSquareError(known));
  }

  /** Returns the steps to the exposure so many stops below full power. */
  public Working exposureWorking(String name, Stops stopsDown) {
    return Working.of(
        "exposure by the " + name,
        at(stopsDown).value(),
        "lx·s",
        "H_full · 2^−(stops down + gel loss) · cos θ",
        Source.DERIVED,
        output.exposureWorking(distance, modifier),
        Working.given("power below full", stopsDown.value(), "stops"),
        Working.given("loss of the gels", gel.loss().value(), "stops"),
        Working.given("cosine of the receiver", cosine, ""));
  }

  /**
   * Returns the steps to the power that gives the wanted exposure, in stops below full; empty where
   * no light reaches the target.
   *
   * @param wanted how much light is wanted, in lux seconds above 0, with its own steps
   */
  public Optional<Working> powerWorking(String name, Working wanted) {
    return stopsDownFor(new LuxSeconds(wanted.value()))
        .map(
            down ->
                Working.of(
                    "power of the " + name + " below full",
                    down.value(),
                    "stops",
                    "log2(H_full / H_wanted)",
                    Source.DERIVED,
                    exposureWorking(name, Stops.ZERO),
                    wanted));
  }

  /** Returns the steps to what a meter reads so many stops below full power. */
  public Working readingWorking(String name, Stops stopsDown, Iso iso, MeterConstant constant) {
    return Working.of(
        "reading of the " + name,
        readingAt(stopsDown, iso, constant).value(),
        "f-number",
        "√(H · S / C)",
        Source.ISO_2720,
        exposureWorking(name, stopsDown),
        Working.given("ISO", iso.value(), ""),
        Working.given("meter constant", constant.luxSeconds(), "lx·s"));
  }
}
