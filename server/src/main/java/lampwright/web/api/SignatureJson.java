package lampwright.web.api;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import lampwright.engine.light.Pattern;
import lampwright.engine.unit.Degrees;
import lampwright.engine.unit.Stops;
import lampwright.setup.signature.AmbientOffset;
import lampwright.setup.signature.FlashBalance;
import lampwright.setup.signature.FrameEnergy;
import lampwright.setup.signature.Freezing;
import lampwright.setup.signature.KeyLight;
import lampwright.setup.signature.KeyToFill;
import lampwright.setup.signature.LargestModifier;
import lampwright.setup.signature.LightCounts;
import lampwright.setup.signature.Missing;
import lampwright.setup.signature.MovingSubject;
import lampwright.setup.signature.PictureSignature;
import lampwright.setup.signature.Signature;
import lampwright.setup.signature.Softness;
import lampwright.setup.signature.SunInSetup;
import lampwright.tasks.Signing;

/**
 * How the light of a setup is, as the API tells it: each part that is there with its numbers, its
 * words and a sentence.
 */
record SignatureJson(
    int revision,
    int version,
    LightsJson lights,
    Optional<KeyJson> key,
    Optional<SoftnessJson> softness,
    Optional<RatioJson> ratio,
    Optional<BalanceJson> balance,
    Optional<AmbientJson> ambient,
    Optional<SunJson> sun,
    Optional<FreezingJson> freezing,
    Optional<EnergyJson> energy,
    Optional<ModifierJson> largestModifier,
    List<MissingJson> missing,
    Optional<PictureJson> picture) {

  static SignatureJson of(Signing.Signed signed) {
    Signature signature = signed.signature();
    return new SignatureJson(
        signed.revision(),
        Signature.VERSION,
        LightsJson.of(signature.lights()),
        signature.key().map(KeyJson::of),
        signature.softness().map(SoftnessJson::of),
        signature.ratio().map(RatioJson::of),
        signature.balance().map(BalanceJson::of),
        signature.ambient().map(AmbientJson::of),
        signature.sun().map(SunJson::of),
        signature.freezing().map(FreezingJson::of),
        signature.energy().map(EnergyJson::of),
        signature.largestModifier().map(ModifierJson::of),
        signature.missing().stream().map(MissingJson::of).toList(),
        signed.picture().map(PictureJson::of));
  }

  private static String word(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT);
  }

  /** How many for what. */
  record LightsJson(int total, List<RoleJson> byRole, String words, String sentence) {

    static LightsJson of(LightCounts lights) {
      return new LightsJson(
          lights.total(),
          lights.byRole().stream().map(of -> new RoleJson(word(of.role()), of.count())).toList(),
          InEnglish.say(lights.words()),
          InEnglish.say(lights.sentence()));
    }
  }

  /** Those of one role. */
  record RoleJson(String role, int count) {}

  /** Where the key comes from. */
  record KeyJson(
      String light,
      boolean byRole,
      double azimuthDeg,
      double elevationDeg,
      String side,
      String pattern,
      Optional<String> neighbour,
      String faceSide,
      String words,
      String sentence) {

    static KeyJson of(KeyLight key) {
      return new KeyJson(
          key.light().text(),
          key.byRole(),
          key.azimuth().value(),
          key.elevation().value(),
          key.side().word(),
          key.pattern().pattern().tradeName(),
          key.pattern().neighbour().map(Pattern::tradeName),
          key.faceSide().tradeName(),
          InEnglish.say(key.words()),
          InEnglish.say(key.sentence()));
    }
  }

  /** How soft the key is. */
  record SoftnessJson(double angularSizeDeg, String kind, String words, String sentence) {

    static SoftnessJson of(Softness softness) {
      return new SoftnessJson(
          softness.angularSize().value(),
          word(softness.kind()),
          InEnglish.say(softness.words()),
          InEnglish.say(softness.sentence()));
    }
  }

  /** Key against fill. */
  record RatioJson(
      double keyOverFillStops,
      double litToShadow,
      double keyToFill,
      String words,
      String sentence) {

    static RatioJson of(KeyToFill ratio) {
      return new RatioJson(
          ratio.keyOverFill().value(),
          ratio.ratio().litToShadow(),
          ratio.ratio().keyToFill(),
          InEnglish.say(ratio.words()),
          InEnglish.say(ratio.sentence()));
    }
  }

  /** Flash against ambient. */
  record BalanceJson(
      double flashOverAmbientStops, String where, String leads, String words, String sentence) {

    static BalanceJson of(FlashBalance balance) {
      return new BalanceJson(
          balance.flashOverAmbient().value(),
          balance.where(),
          word(balance.leads()),
          InEnglish.say(balance.words()),
          InEnglish.say(balance.sentence()));
    }
  }

  /** Ambient against the shooting exposure. */
  record AmbientJson(double fromShootingStops, String words, String sentence) {

    static AmbientJson of(AmbientOffset ambient) {
      return new AmbientJson(
          ambient.fromShooting().value(),
          InEnglish.say(ambient.words()),
          InEnglish.say(ambient.sentence()));
    }
  }

  /** The sun. */
  record SunJson(
      String height,
      Optional<Double> elevationDeg,
      Optional<Double> bearingDeg,
      Optional<Double> fromCameraDeg,
      Optional<String> from,
      Optional<Boolean> lights,
      List<String> needs,
      String words,
      String sentence) {

    static SunJson of(SunInSetup sun) {
      return new SunJson(
          word(sun.height()),
          sun.elevation().map(Degrees::value),
          sun.bearing().map(Degrees::value),
          sun.fromCamera().map(Degrees::value),
          sun.from().map(SignatureJson::word),
          sun.lights(),
          sun.needs(),
          InEnglish.say(sun.words()),
          InEnglish.say(sun.sentence()));
    }
  }

  /** How what moves comes out. */
  record FreezingJson(
      String kind,
      Optional<String> subject,
      Optional<Double> flashCircles,
      Optional<Double> ambientCircles,
      Optional<Double> flashLeadStops,
      String words,
      String sentence) {

    static FreezingJson of(Freezing freezing) {
      return new FreezingJson(
          word(freezing.kind()),
          freezing.moving().map(MovingSubject::name),
          freezing.moving().flatMap(MovingSubject::flashCircles),
          freezing.moving().flatMap(MovingSubject::ambientCircles),
          freezing.moving().flatMap(MovingSubject::flashLead).map(Stops::value),
          InEnglish.say(freezing.words()),
          InEnglish.say(freezing.sentence()));
    }
  }

  /** What one picture takes of flash. */
  record EnergyJson(double energyWs, String words, String sentence) {

    static EnergyJson of(FrameEnergy energy) {
      return new EnergyJson(
          energy.energy().value(), InEnglish.say(energy.words()), InEnglish.say(energy.sentence()));
    }
  }

  /** The modifier with the largest face. */
  record ModifierJson(String light, String name, double sizeM, String words, String sentence) {

    static ModifierJson of(LargestModifier modifier) {
      return new ModifierJson(
          modifier.light().text(),
          modifier.name(),
          modifier.size().value(),
          InEnglish.say(modifier.words()),
          InEnglish.say(modifier.sentence()));
    }
  }

  /** A part that is not there. */
  record MissingJson(String part, String because, List<String> needs) {

    static MissingJson of(Missing missing) {
      return new MissingJson(word(missing.part()), missing.because().text(), missing.needs());
    }
  }

  /** How the finished picture looks. */
  record PictureJson(
      String key,
      String contrast,
      double spreadStops,
      String warmth,
      double warmthB,
      List<ColourJson> colours,
      String sentence) {

    static PictureJson of(PictureSignature picture) {
      return new PictureJson(
          word(picture.key()),
          word(picture.contrast()),
          picture.spread().value(),
          word(picture.lean()),
          picture.warmth(),
          picture.colours().stream()
              .map(of -> new ColourJson(of.colour().word(), of.share()))
              .toList(),
          InEnglish.say(picture.sentence()));
    }
  }

  /** A colour by its everyday word. */
  record ColourJson(String colour, double share) {}
}
