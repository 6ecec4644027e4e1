package lampwright.setup.signature;

import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lampwright.engine.unit.Degrees;
import lampwright.engine.unit.Stops;
import lampwright.setup.Role;

/** Says of one part how two setups are alike in it, or not. "Here" is the one that was found. */
final class LikenessWords {

  private LikenessWords() {}

  static String of(LikenessPart part, PackedLight asked, PackedLight here, boolean alike) {
    return switch (part) {
      case LIGHTS -> told("lights:", lights(asked), lights(here), alike);
      case DIRECTION ->
          (asked.isOtherSide(here) ? "key from the other side: " : "")
              + told("key", from(asked), from(here), alike);
      case HEIGHT -> told("key", height(asked), height(here), alike);
      case SOFTNESS -> told("key", softness(asked), softness(here), alike);
      case RATIO -> told("ratio", ratio(asked), ratio(here), alike);
      case AMBIENT ->
          moreOrLess("ambient", here.ambientStops() - asked.ambientStops(), "as much ambient");
      case ENERGY ->
          moreOrLess(
              "flash energy", here.energyStops() - asked.energyStops(), "as much flash energy");
      case FREEZING -> told("movement:", moves(asked), moves(here), alike);
      case SUN -> sun(asked, here, alike);
    };
  }

  private static String told(String what, String asked, String here, boolean alike) {
    if (asked.equals(here)) {
      return what + " " + here + " in both";
    }
    return alike
        ? what + " " + asked + ", here " + here
        : what + " here " + here + ", not " + asked;
  }

  private static String lights(PackedLight light) {
    return Stream.of(Role.values())
        .filter(role -> light.lights(role) > 0)
        .map(role -> light.lights(role) + " " + role.name().toLowerCase(Locale.ROOT))
        .collect(Collectors.joining(" and "));
  }

  private static String from(PackedLight light) {
    Degrees azimuth = new Degrees(light.keyAzimuthDeg());
    KeySide side = KeySide.of(azimuth);
    if (side == KeySide.NEITHER) {
      return Math.abs(azimuth.value()) < 90 ? "straight before the nose" : "behind the head";
    }
    return Numbers.size(azimuth) + " " + side.word() + " of the nose";
  }

  private static String height(PackedLight light) {
    double deg = light.keyElevationDeg();
    String size = Numbers.size(new Degrees(deg));
    if (size.equals("0°")) {
      return "level with the subject";
    }
    return size + (deg > 0 ? " above the subject" : " below the subject");
  }

  private static String softness(PackedLight light) {
    Degrees size = new Degrees(light.softnessDeg());
    return new Softness(size).words() + " (" + Numbers.size(size) + " wide)";
  }

  private static String ratio(PackedLight light) {
    return new KeyToFill(new Stops(light.ratioStops())).words();
  }

  private static String moves(PackedLight light) {
    return light.freezing().words();
  }

  private static String moreOrLess(String what, double stops, String same) {
    String size = Numbers.size(new Stops(stops));
    return size.startsWith("0.0")
        ? same
        : "here " + size + (stops > 0 ? " more " : " less ") + what;
  }

  private static String sun(PackedLight asked, PackedLight here, boolean alike) {
    if (asked.isSunlit() != here.isSunlit()) {
      return here.isSunlit() ? "the sun lights only this one" : "no sun lights this one";
    }
    if (!here.isSunlit()) {
      return "no sun lights either";
    }
    return alike ? "the sun lights both" : "the sun lights both, from elsewhere";
  }
}
