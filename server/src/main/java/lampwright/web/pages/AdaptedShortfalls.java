package lampwright.web.pages;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lampwright.engine.unit.Stops;
import lampwright.setup.LightId;
import lampwright.setup.SetupDocument;
import lampwright.setup.adapting.Adaptation;
import lampwright.setup.adapting.AdaptedLight;
import lampwright.setup.adapting.Answer;
import lampwright.setup.adapting.Remedy;
import lampwright.wording.LightNames;
import lampwright.wording.Wording;

/** What a kit cannot make, light by light, and what would help. */
final class AdaptedShortfalls {

  /** Less reads as nothing in tenths. */
  private static final double ON_THE_SPOT_STOPS = 0.05;

  private final SetupDocument setup;
  private final Map<LightId, Integer> numbers;
  private final Answer answer;
  private final List<Remedy> remedies;
  private final Wording words;

  /** Of the adaptation that is shown, if there is one. */
  AdaptedShortfalls(SetupDocument setup, Answer answer, Optional<Adaptation> shown, Wording words) {
    this.setup = setup;
    this.words = words;
    this.numbers = setup.numbersInBuildOrder();
    this.answer = answer;
    this.remedies = new ArrayList<>();
    if (answer instanceof Answer.NotEnoughGear falls) {
      remedies.addAll(falls.remedies());
    }
    shown.ifPresent(
        adaptation ->
            adaptation.remedies().stream()
                .filter(remedy -> !remedies.contains(remedy))
                .forEach(remedies::add));
  }

  List<Shortfall> of(Optional<Adaptation> shown) {
    List<Shortfall> shortfalls = new ArrayList<>();
    shown.ifPresent(
        adaptation ->
            adaptation.lights().stream()
                .filter(light -> light.made().isPresent())
                .filter(AdaptedLights::isOff)
                .forEach(light -> shortfalls.add(off(light))));
    if (answer instanceof Answer.NotEnoughGear falls) {
      for (LightId id : falls.unlit()) {
        shortfalls.add(new Shortfall(name(id), words.say("pages.adapted.noHeadLeft"), of(id)));
      }
      if (shown.isEmpty()) {
        new LightNames(setup, words)
            .say(falls.reasons())
            .forEach(reason -> shortfalls.add(new Shortfall(reason, "", List.of())));
      }
    }
    return shortfalls;
  }

  /** What would help all lights at once. */
  List<String> forAll() {
    return remedies.stream().filter(remedy -> remedy.light().isEmpty()).map(this::said).toList();
  }

  private Shortfall off(AdaptedLight light) {
    Stops by = light.made().orElseThrow().deviation();
    LightId id = light.original().light().id();
    return new Shortfall(
        name(id),
        words.say(
            by.value() < 0 ? "pages.adapted.under" : "pages.adapted.over",
            words.stops(Math.abs(by.value()))),
        of(id));
  }

  private List<String> of(LightId id) {
    return remedies.stream()
        .filter(remedy -> remedy.light().filter(id::equals).isPresent())
        .map(this::said)
        .toList();
  }

  /** What to do, and what came of solving again with it. */
  private String said(Remedy remedy) {
    String act = new LightNames(setup, words).say(remedy.words());
    return remedy
        .leaves()
        .map(left -> words.say("pages.adapted.solvedAgain", act, left(Math.abs(left.value()))))
        .orElse(act);
  }

  private String left(double stops) {
    return stops < ON_THE_SPOT_STOPS
        ? words.say("pages.adapted.onLevel")
        : words.say("pages.adapted.within", words.stops(stops));
  }

  private String name(LightId id) {
    return setup.lights().stream()
        .filter(light -> light.id().equals(id))
        .map(light -> words.light(numbers.getOrDefault(light.id(), 0), light))
        .findFirst()
        .orElse(id.text());
  }
}
