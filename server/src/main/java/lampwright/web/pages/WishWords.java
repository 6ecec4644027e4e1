package lampwright.web.pages;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import lampwright.setup.LightId;
import lampwright.setup.SetupDocument;
import lampwright.setup.adapting.WeightChanges;
import lampwright.setup.adapting.Weights;
import lampwright.web.pages.WishPairs.Pair;
import lampwright.wording.Wording;

/** What is wished, in few words, with the address that wishes the same without it. */
final class WishWords {

  private static final Set<String> WEIGHTS =
      WeightChanges.FORM.writeObject(allOf(Weights.Preset.CLOSEST_LOOK.weights())).keySet();

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
      return Optional.of(words.inSentence(preset(pair.value(), words)));
    }
    return WishName.find(pair.name())
        .map(name -> name.inShort(pair.value(), words))
        .or(() -> ofLight(pair))
        .or(() -> ofGear(pair));
  }

  private Optional<String> ofLight(Pair pair) {
    if (pair.name().equals(WishPairs.WITHOUT)) {
      return Optional.of(words.say("adapting.wished.without", light(pair.value())));
    }
    if (pair.name().equals(WishPairs.GIVE_UP)) {
      return Optional.of(words.say("adapting.wished.give_up", light(pair.value())));
    }
    return after(pair, WishPairs.HEAD)
        .map(id -> light(id) + ": " + pair.value())
        .or(() -> after(pair, WishPairs.MODIFIER).map(id -> light(id) + ": " + pair.value()))
        .or(
            () ->
                after(pair, WishPairs.COUNT)
                    .map(id -> light(id) + ": " + heads(pair.value(), words)));
  }

  private Optional<String> ofGear(Pair pair) {
    return after(pair, WishPairs.DEAD)
        .map(head -> words.say("adapting.wished.dead", pair.value(), head))
        .or(
            () ->
                after(pair, WishPairs.CHARGE)
                    .map(head -> words.say("adapting.wished.charge", head, written(pair))))
        .or(
            () ->
                after(pair, WishPairs.WEIGHT)
                    .map(
                        matter ->
                            words.say(
                                "adapting.wished.weight",
                                words.inSentence(weight(matter, words)),
                                written(pair))));
  }

  private String written(Pair pair) {
    return words.notation().written(pair.value());
  }

  /** So many heads, as an address has the number. */
  static String heads(String count, Wording words) {
    return words.count("adapting.heads", count.equals("1") ? 1 : 2, count);
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
  static String preset(String text, Wording words) {
    return findPreset(text).map(preset -> words.say("adapting.preset." + text)).orElse(text);
  }

  /** What a weight is for. */
  static String weight(String field, Wording words) {
    return WEIGHTS.contains(field) ? words.say("adapting.weight." + field) : field;
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
