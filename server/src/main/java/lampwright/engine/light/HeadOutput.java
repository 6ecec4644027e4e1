package lampwright.engine.light;

import lampwright.engine.Known;
import lampwright.engine.Source;
import lampwright.engine.Working;
import lampwright.engine.exposure.MeterConstant;
import lampwright.engine.unit.Bounds;
import lampwright.engine.unit.LuxSeconds;
import lampwright.engine.unit.Metres;

/**
 * How much light a head gives at full power: either known with its standard reflector, so that a
 * modifier's loss is taken off, or metered with the modifier on, which is surer.
 */
public sealed interface HeadOutput {

  /**
   * Returns the exposure at full power on the axis, facing the head, without a gel.
   *
   * @param distance from the modifier's face, above 0
   */
  LuxSeconds exposureAt(Metres distance, ModifierEffect modifier);

  /** Returns the steps to {@link #exposureAt}. */
  Working exposureWorking(Metres distance, ModifierEffect modifier);

  /** Returns the output of a head with a guide number for its standard reflector. */
  static HeadOutput of(GuideNumber guideNumber) {
    return new Rated(guideNumber, MeterConstant.FLAT);
  }

  /** Returns the output of a head that was metered with its standard reflector. */
  static HeadOutput ofStandardReflector(MeteredReading reading) {
    return new Rated(
        GuideNumber.ofReading(
            reading.fNumber(), reading.distance(), reading.iso(), reading.stopsDown()),
        reading.constant());
  }

  /** Returns the output of a head that was metered with the modifier on. */
  static HeadOutput ofModifier(MeteredReading reading) {
    return new Metered(reading);
  }

  /**
   * Known with the standard reflector: {@code H = GN^2 C/100 / dref^2 2^-loss G(d)/G(dref)}.
   *
   * @param guideNumber with the standard reflector
   * @param constant the meter constant that the guide number was found with
   */
  record Rated(GuideNumber guideNumber, MeterConstant constant) implements HeadOutput {

    @Override
    public LuxSeconds exposureAt(Metres distance, ModifierEffect modifier) {
      Bounds.requirePositive("Distance", distance.value(), "m");
      Metres reference = modifier.lossReferenceDistance();
      double ratio = modifier.face().geometry(distance) / modifier.face().geometry(reference);
      return guideNumber.exposureAt(reference, constant).minus(modifier.loss()).times(ratio);
    }

    @Override
    public Working exposureWorking(Metres distance, ModifierEffect modifier) {
      Metres reference = modifier.lossReferenceDistance();
      return Working.of(
          "exposure at full power",
          exposureAt(distance, modifier).value(),
          "lx·s",
          "GN² · C / 100 / d_ref² · 2^−loss · G(d) / G(d_ref)",
          Source.GUIDE_NUMBER,
          Working.given("guide number", guideNumber.metresAtIso100(), "m at ISO 100"),
          Working.given("meter constant", constant.luxSeconds(), "lx·s"),
          Working.given("loss of the modifier", modifier.loss().value(), "stops"),
          geometryWorking("at the reference distance", reference, modifier.face()),
          geometryWorking("at the distance", distance, modifier.face()));
    }
  }

  /**
   * Metered with the modifier on: the reading at full power times {@code G(d)/G(d0)}. The
   * modifier's loss is in the reading and is not taken off again.
   *
   * @param reading what the meter read
   */
  record Metered(MeteredReading reading) implements HeadOutput {

    @Override
    public LuxSeconds exposureAt(Metres distance, ModifierEffect modifier) {
      return reading.fullPowerAt(distance, modifier.face());
    }

    @Override
    public Working exposureWorking(Metres distance, ModifierEffect modifier) {
      return Working.of(
          "exposure at full power",
          exposureAt(distance, modifier).value(),
          "lx·s",
          "H₀ · G(d) / G(d₀)",
          Source.DERIVED,
          Working.of(
              "exposure of the reading, at full power",
              reading.toFullPower().value(),
              "lx·s",
              "C · N² / S · 2^s",
              Source.ISO_2720,
              Working.given("reading", reading.fNumber().value(), "f-number", Known.METERED),
              Working.given("ISO", reading.iso().value(), ""),
              Working.given("meter constant", reading.constant().luxSeconds(), "lx·s"),
              Working.given("power below full", reading.stopsDown().value(), "stops")),
          geometryWorking("at the metered distance", reading.distance(), modifier.face()),
          geometryWorking("at the distance", distance, modifier.face()));
    }
  }

  private static Working geometryWorking(String where, Metres distance, EmittingFace face) {
    boolean point = face instanceof EmittingFace.PointSource;
    return Working.of(
        "geometry " + where,
        face.geometry(distance),
        "1/m²",
        point ? "1 / d²" : "π F / area, " + face,
        point ? Source.IES_DEFINITIONS : Source.HOWELL,
        Working.given("distance", distance.value(), "m"));
  }
}
