package lampwright.web.pages;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import lampwright.setup.LightId;
import lampwright.setup.SetupDocument;
import lampwright.setup.adapting.WeightChanges;
import lampwright.setup.adapting.Weights;
import lampwright.web.pages.WishPairs.Pair;
import lampwright.wording.Wording;

/** What is wished, in few words, with the address that wishes the same without it. */
final class WishWords {

  private final SetupDocument setup;
  private final Wording words;

  WishWords(SetupDocument setup, Wording words) {
    this.setup = setup;
    this.words = words;
  }

  /** Every wish of an address, each with the way to let it go. */
  List<AdaptedPage.Chip> chips(WishPairs asked, String path) {
    List<AdaptedPage.Chip> chips = new ArrayList<>();
    for (Pair pair : asked.pairs()) {
      inShort(pair)
          .ifPresent(
              words ->
                  chips.add(
                      new AdaptedPage.Chip(
                          words, asked.without(pair::equals).fromTheFirstWay().address(path))));
    }
    return chips;
  }

  /** Empty for what is no wish: the kit, the way that is shown. */
  private Optional<String> inShort(Pair pair) {
    if (pair.name().equals(WishName.PRESET.text())) {
      return Optional.of(Wording.uncapital(preset(pair.value())));
    }
    return WishName.find(pair.name())
        .map(name -> name.inShort(pair.value()))
        .or(() -> ofLight(pair))
        .or(() -> ofGear(pair));
  }

  private Optional<String> ofLight(Pair pair) {
    if (pair.name().equals(WishPairs.WITHOUT)) {
      return Optional.of(light(pair.value()) + ": left out");
    }
    if (pair.name().equals(WishPairs.GIVE_UP)) {
      return Optional.of(light(pair.value()) + ": may be given up");
    }
    return after(pair, WishPairs.HEAD)
        .map(id -> light(id) + ": " + pair.value())
        .or(() -> after(pair, WishPairs.MODIFIER).map(id -> light(id) + ": " + pair.value()))
        .or(
            () ->
                after(pair, WishPairs.COUNT)
                    .map(
                        id ->
                            light(id)
                                + ": "
                                + pair.value()
                                + (pair.value().equals("1") ? " head" : " heads")));
  }

  private Optional<String> ofGear(Pair pair) {
    return after(pair, WishPairs.DEAD)
        .map(head -> pair.value() + " × " + head + " dead")
        .or(() -> after(pair, WishPairs.CHARGE).map(head -> head + " at " + pair.value() + " %"))
        .or(
            () ->
                after(pair, WishPairs.WEIGHT)
                    .map(matter -> Wording.uncapital(weight(matter)) + " counts " + pair.value()));
  }

  private static Optional<String> after(Pair pair, String prefix) {
    return pair.name().startsWith(prefix)
        ? Optional.of(pair.name().substring(prefix.length()))
        : Optional.empty();
  }

  /** "1 Key"; the id itself where the setup has no such light. */
  private String light(String id) {
    Map<LightId, Integer> numbers = setup.numbersInBuildOrder();
    return setup.lights().stream()
        .filter(light -> light.id().text().equals(id))
        .map(light -> words.light(numbers.getOrDefault(light.id(), 0), light))
        .findFirst()
        .orElse(id);
  }

  static Optional<Weights.Preset> findPreset(String text) {
    return Arrays.stream(Weights.Preset.values())
        .filter(preset -> preset.name().toLowerCase(Locale.ROOT).equals(text))
        .findFirst();
  }

  /** A preset as the form calls it; the text itself where there is none of that name. */
  static String preset(String text) {
    return findPreset(text)
        .map(
            preset ->
                switch (preset) {
                  case CLOSEST_LOOK -> "The closest look";
                  case LEAST_TO_CARRY -> "The least to carry";
                  case FASTEST_PACE -> "The fastest pace";
                  case LOWEST_ISO -> "The lowest ISO";
                  case FEWEST_DIALS -> "The fewest dials to touch";
                })
        .orElse(text);
  }

  /** What a weight is for. */
  static String weight(String field) {
    return switch (field) {
      case "ambient" -> "A stop of ambient";
      case "depth" -> "A stop of depth of field";
      case "time" -> "A stop of shutter time";
      case "iso" -> "A stop of ISO";
      case "framing" -> "A doubling of the framing";
      case "softness" -> "A doubling of a light’s size";
      case "colour" -> "A hundred mired of colour";
      case "evenness" -> "A stop lost at an edge";
      case "carry_per_kg" -> "A kilogram to carry";
      case "pace_per_s" -> "A second to wait";
      case "handling" -> "A head, flash or move more";
      case "touch" -> "A dial to touch";
      case "given_up" -> "A light given up, as stops missed";
      default -> field;
    };
  }

  /** Weights as if each were set by hand. */
  static WeightChanges allOf(Weights weights) {
    return new WeightChanges(
        Optional.of(weights.ambient()),
        Optional.of(weights.depth()),
        Optional.of(weights.time()),
        Optional.of(weights.iso()),
        Optional.of(weights.framing()),
        Optional.of(weights.softness()),
        Optional.of(weights.colour()),
        Optional.of(weights.evenness()),
        Optional.of(weights.carryPerKg()),
        Optional.of(weights.pacePerSecond()),
        Optional.of(weights.handling()),
        Optional.of(weights.touch()),
        Optional.of(weights.givenUp()));
  }
}
