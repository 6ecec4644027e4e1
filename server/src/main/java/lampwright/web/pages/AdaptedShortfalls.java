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

/** What a kit cannot make, light by light, and what would help. */
final class AdaptedShortfalls {

  /** Less reads as nothing in tenths. */
  private static final double ON_THE_SPOT_STOPS = 0.05;

  private final SetupDocument setup;
  private final Map<LightId, Integer> numbers;
  private final Answer answer;
  private final List<Remedy> remedies;

  /** Of the adaptation that is shown, if there is one. */
  AdaptedShortfalls(SetupDocument setup, Answer answer, Optional<Adaptation> shown) {
    this.setup = setup;
    this.numbers = SetupView.numbers(setup);
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
        shortfalls.add(new Shortfall(name(id), "no head left", of(id)));
      }
      if (shown.isEmpty()) {
        new LightNames(setup)
            .in(falls.reasons())
            .forEach(reason -> shortfalls.add(new Shortfall(reason, "", List.of())));
      }
    }
    return shortfalls;
  }

  /** What would help all lights at once. */
  List<String> forAll() {
    return remedies.stream().filter(remedy -> remedy.light().isEmpty()).map(this::words).toList();
  }

  private Shortfall off(AdaptedLight light) {
    Stops by = light.made().orElseThrow().deviation();
    LightId id = light.original().light().id();
    return new Shortfall(
        name(id),
        Wording.stops(Math.abs(by.value())) + (by.value() < 0 ? " under" : " over"),
        of(id));
  }

  private List<String> of(LightId id) {
    return remedies.stream()
        .filter(remedy -> remedy.light().filter(id::equals).isPresent())
        .map(this::words)
        .toList();
  }

  /** What to do, and what came of solving again with it. */
  private String words(Remedy remedy) {
    return new LightNames(setup).in(remedy.words())
        + remedy
            .leaves()
            .map(left -> " Solved again: then " + left(Math.abs(left.value())) + ".")
            .orElse("");
  }

  private static String left(double stops) {
    return stops < ON_THE_SPOT_STOPS ? "on its level" : "within " + Wording.stops(stops);
  }

  private String name(LightId id) {
    return setup.lights().stream()
        .filter(light -> light.id().equals(id))
        .map(light -> WishWords.light(numbers, light))
        .findFirst()
        .orElse(id.text());
  }
}
