package lampwright.tasks;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import lampwright.engine.light.Pattern;
import lampwright.search.filter.Trait;
import lampwright.search.filter.Traits;
import lampwright.setup.signature.FlashBalance;
import lampwright.setup.signature.KeyLight;
import lampwright.setup.signature.KeySide;
import lampwright.setup.signature.PictureSignature;
import lampwright.setup.signature.Signature;
import lampwright.setup.signature.SunInSetup;

/** What a setup's signature says that setups are filtered by. */
final class SignatureTraits {

  private SignatureTraits() {}

  static void add(Traits.Builder traits, Signature signature) {
    signature.key().ifPresent(key -> addKey(traits, key));
    signature
        .softness()
        .ifPresent(softness -> traits.words(Trait.SOFTNESS, softness.kind().words()));
    signature.ratio().ifPresent(ratio -> traits.number(Trait.RATIO, ratio.keyOverFill().value()));
    signature.balance().ifPresent(balance -> traits.words(Trait.LEAD, lead(balance.leads())));
    signature
        .ambient()
        .ifPresent(ambient -> traits.number(Trait.AMBIENT, ambient.fromShooting().value()));
    signature.sun().ifPresent(sun -> traits.words(Trait.SUN, sun(sun)));
    signature
        .freezing()
        .ifPresent(freezing -> traits.words(Trait.FREEZING, freezing.kind().words()));
    signature
        .energy()
        .filter(energy -> energy.energy().value() > 0)
        .ifPresent(energy -> traits.number(Trait.ENERGY, energy.energy().value()));
  }

  /** What its finished picture says. */
  static void add(Traits.Builder traits, PictureSignature picture) {
    traits.words(Trait.PICTURE_KEY, picture.key().tradeName());
    traits.words(Trait.CONTRAST, picture.contrast().words());
    traits.words(Trait.WARMTH, picture.lean().words());
    traits.words(
        Trait.COLOUR, picture.colours().stream().map(named -> named.colour().word()).toList());
  }

  private static void addKey(Traits.Builder traits, KeyLight key) {
    Pattern.Named named = key.pattern();
    List<String> patterns = new ArrayList<>(List.of(named.pattern().tradeName()));
    // Near a boundary it goes by both names.
    named.neighbour().map(Pattern::tradeName).ifPresent(patterns::add);
    traits.words(Trait.PATTERN, patterns);
    traits.words(Trait.KEY_SIDE, key.side() == KeySide.NEITHER ? "the middle" : key.side().word());
    traits.number(Trait.KEY_HEIGHT, key.elevation().value());
  }

  private static String lead(FlashBalance.Leads leads) {
    return switch (leads) {
      case FLASH -> "flash";
      case NEITHER -> "level";
      case AMBIENT -> "ambient";
    };
  }

  private static String light(SunInSetup.From from) {
    return from.name().toLowerCase(Locale.ROOT) + " light";
  }

  private static List<String> sun(SunInSetup sun) {
    List<String> words = new ArrayList<>();
    words.add(sun.height() == SunInSetup.Height.INDOORS ? "no sun indoors" : sun.height().words());
    sun.lights()
        .filter(lights -> lights)
        .flatMap(_ -> sun.from())
        .map(SignatureTraits::light)
        .ifPresent(words::add);
    return words;
  }
}
