package lampwright.setup.signature;

import java.util.stream.Stream;
import lampwright.engine.unit.Bounds;
import lampwright.engine.unit.Degrees;
import lampwright.engine.unit.Stops;
import lampwright.language.Filling;
import lampwright.language.Said;
import lampwright.setup.Role;

/** Says of one part how two setups are alike in it, or not. "Here" is the one that was found. */
final class LikenessWords {

  private LikenessWords() {}

  static Said of(LikenessPart part, PackedLight asked, PackedLight here, boolean alike) {
    return switch (part) {
      case LIGHTS -> told("lights", lights(asked), lights(here), alike);
      case DIRECTION -> {
        Said said = told("key", from(asked), from(here), alike);
        yield asked.isOtherSide(here)
            ? Said.of("signature.alike.otherSide", said.asFilling())
            : said;
      }
      case HEIGHT -> told("key", height(asked), height(here), alike);
      case SOFTNESS -> told("key", softness(asked), softness(here), alike);
      case RATIO -> told("ratio", ratio(asked), ratio(here), alike);
      case AMBIENT -> moreOrLess("ambient", here.ambientStops() - asked.ambientStops());
      case ENERGY -> moreOrLess("energy", here.energyStops() - asked.energyStops());
      case FREEZING -> told("movement", moves(asked), moves(here), alike);
      case SUN -> sun(asked, here, alike);
    };
  }

  private static Said told(String what, Said asked, Said here, boolean alike) {
    Filling whose = Said.of("signature.alike.of." + what).asFilling();
    if (asked.equals(here)) {
      return Said.of("signature.alike.both", whose, here.asFilling());
    }
    return Said.of(
        alike ? "signature.alike.near" : "signature.alike.other",
        whose,
        asked.asFilling(),
        here.asFilling());
  }

  private static Said lights(PackedLight light) {
    return Said.of(
        "signature.lights.roles",
        new Filling.Listed(
            Stream.of(Role.values())
                .filter(role -> light.lights(role) > 0)
                .map(role -> LightCounts.of(role, light.lights(role)).asFilling())
                .toList()));
  }

  private static Said from(PackedLight light) {
    return KeyLight.fromNose(new Degrees(light.keyAzimuthDeg()));
  }

  private static Said height(PackedLight light) {
    Degrees height = new Degrees(light.keyElevationDeg());
    if (Numbers.isLevel(height)) {
      return Said.of("signature.alike.level");
    }
    return Said.of(
        height.value() > 0 ? "signature.alike.above" : "signature.alike.below",
        Numbers.size(height));
  }

  private static Said softness(PackedLight light) {
    Softness softness = new Softness(new Degrees(light.softnessDeg()));
    return Said.of(
        "signature.alike.wide", softness.words().asFilling(), Numbers.size(softness.angularSize()));
  }

  private static Said ratio(PackedLight light) {
    return new KeyToFill(new Stops(light.ratioStops())).words();
  }

  private static Said moves(PackedLight light) {
    return Said.of("signature.freezing." + Numbers.key(light.freezing()));
  }

  private static Said moreOrLess(String what, double stops) {
    String key = "signature.alike." + what;
    if (Bounds.fixed(Math.abs(stops), 1).equals("0.0")) {
      return Said.of(key + ".same");
    }
    return Said.of(key + (stops > 0 ? ".more" : ".less"), Filling.stops(Math.abs(stops)));
  }

  private static Said sun(PackedLight asked, PackedLight here, boolean alike) {
    if (asked.isSunlit() != here.isSunlit()) {
      return Said.of(here.isSunlit() ? "signature.alike.sun.only" : "signature.alike.sun.not");
    }
    if (!here.isSunlit()) {
      return Said.of("signature.alike.sun.neither");
    }
    return Said.of(alike ? "signature.alike.sun.both" : "signature.alike.sun.elsewhere");
  }
}
