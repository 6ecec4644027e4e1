package lampwright.engine.light;

import lampwright.engine.Known;
import lampwright.engine.Source;
import lampwright.engine.Working;
import lampwright.engine.beam.Even;
import lampwright.engine.exposure.MeterConstant;
import lampwright.engine.unit.CandelaSeconds;
import lampwright.engine.unit.LuxSeconds;
import lampwright.engine.unit.Metres;

/**
 * How much light a head gives at full power: either known with its standard reflector, so that a
 * modifier's loss is taken off, or metered with the modifier on, which is surer.
 */
public sealed interface HeadOutput {

  /**
   * Returns the far-away intensity on the modifier's axis at full power, I0, without a gel: what is
   * known of the head, over the geometry factor on the axis where it is known.
   */
  CandelaSeconds peak(ModifierEffect modifier);

  /** Returns the steps to {@link #peak}. */
  Working peakWorking(ModifierEffect modifier);

  /** Returns how far before the face the output is known: where it was metered, or is rated. */
  Metres knownAt(ModifierEffect modifier);

  /**
   * Returns the exposure at full power on the axis, facing the head, without a gel.
   *
   * @param distance from the modifier's face, above 0
   */
  default LuxSeconds exposureAt(Metres distance, ModifierEffect modifier) {
    return new LuxSeconds(peak(modifier).value() * modifier.geometryOnAxis(distance));
  }

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
   * Known with the standard reflector: {@code I0 = GN^2 C/100 / dref^2 2^-loss / G(dref)}.
   *
   * @param guideNumber with the standard reflector
   * @param constant the meter constant that the guide number was found with
   */
  record Rated(GuideNumber guideNumber, MeterConstant constant) implements HeadOutput {

    @Override
    public CandelaSeconds peak(ModifierEffect modifier) {
      Metres reference = modifier.lossReferenceDistance();
      LuxSeconds there = guideNumber.exposureAt(reference, constant).minus(modifier.loss());
      return new CandelaSeconds(there.value() / modifier.geometryOnAxis(reference));
    }

    @Override
    public Metres knownAt(ModifierEffect modifier) {
      return modifier.lossReferenceDistance();
    }

    @Override
    public Working peakWorking(ModifierEffect modifier) {
      return Working.of(
          "intensity on the axis at full power",
          peak(modifier).value(),
          "cd·s",
          "GN² · C / 100 / d_ref² · 2^−loss / G(d_ref)",
          Source.GUIDE_NUMBER,
          Working.given("guide number", guideNumber.metresAtIso100(), "m at ISO 100"),
          Working.given("meter constant", constant.luxSeconds(), "lx·s"),
          Working.given("loss of the modifier", modifier.loss().value(), "stops"),
          geometryWorking("at the reference distance", knownAt(modifier), modifier));
    }
  }

  /**
   * Metered with the modifier on: {@code I0 = H0 / G(d0)}, H0 being the reading at full power. The
   * modifier's loss is in the reading and is not taken off again.
   *
   * @param reading what the meter read
   */
  record Metered(MeteredReading reading) implements HeadOutput {

    @Override
    public CandelaSeconds peak(ModifierEffect modifier) {
      return new CandelaSeconds(
          reading.toFullPower().value() / modifier.geometryOnAxis(reading.distance()));
    }

    @Override
    public Metres knownAt(ModifierEffect modifier) {
      return reading.distance();
    }

    @Override
    public Working peakWorking(ModifierEffect modifier) {
      return Working.of(
          "intensity on the axis at full power",
          peak(modifier).value(),
          "cd·s",
          "H₀ / G(d₀)",
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
          geometryWorking("at the metered distance", reading.distance(), modifier));
    }
  }

  private static Working geometryWorking(String where, Metres distance, ModifierEffect modifier) {
    boolean point = modifier.face() instanceof EmittingFace.PointSource;
    boolean even = modifier.spread() instanceof Even;
    return Working.of(
        "geometry on the axis " + where,
        modifier.geometryOnAxis(distance),
        "1/m²",
        point ? "1 / d²" : even ? "π F / area, " + modifier.face() : "∫ I / I₀ · cos θ / r² dA / A",
        point ? Source.IES_DEFINITIONS : even ? Source.HOWELL : Source.DERIVED,
        Working.given("distance", distance.value(), "m"));
  }
}
