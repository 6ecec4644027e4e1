package lampwright.setup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import lampwright.document.Json;
import lampwright.engine.exposure.ShutterTime;
import lampwright.engine.unit.Stops;
import lampwright.gear.Body;
import lampwright.gear.Kit;
import lampwright.setup.adapting.AdaptationSearch;
import lampwright.setup.adapting.Answer;
import lampwright.setup.adapting.Wishes;
import lampwright.setup.figures.Figures;
import lampwright.setup.figures.FiguresComputation;
import lampwright.setup.figures.LightFigures;
import org.junit.jupiter.api.Test;

/** Holds the setups of the demo studio to what its README promises. */
class DemoStudioTest {

  /** Farther from the model than a meter's scatter explains. */
  private static final double SCATTER_STOPS = 0.3;

  private final DemoSeeds seeds = new DemoSeeds();

  @Test
  void everySetupIsSoundAndWritesWhatItReads() {
    seeds
        .setups()
        .forEach(
            (name, setup) ->
                assertEquals(
                    setup,
                    DemoSeeds.sound(SetupDocument.FORM, SetupDocument.FORM.write(setup), name)));
  }

  @Test
  void thereAreEnoughOfThemAtEnoughPlacesOfEveryKind() {
    Set<String> places = new HashSet<>();
    Set<String> moods = new HashSet<>();
    Set<Integer> lights = new HashSet<>();
    int moving = 0;
    for (SetupDocument setup : seeds.setups().values()) {
      Occasion.Place place = setup.occasion().flatMap(Occasion::place).orElseThrow();
      places.add(place.location().orElseThrow().text());
      moods.addAll(setup.moods());
      lights.add(setup.lights().size());
      moving += setup.subjects().stream().anyMatch(subject -> !subject.path().isEmpty()) ? 1 : 0;
    }
    long proven = seeds.setups().keySet().stream().filter(seeds::isProven).count();
    assertTrue(proven >= 60, proven + " proven");
    assertTrue(seeds.setups().size() - proven >= 12, seeds.setups().size() + " with drafts");
    assertTrue(places.size() >= 14, places.toString());
    assertTrue(moods.size() >= 150, moods.size() + " moods");
    assertTrue(lights.containsAll(Set.of(1, 2, 3, 4, 5, 6, 7, 8, 9)), lights.toString());
    assertTrue(moving >= 20, moving + " with a subject that moves");
  }

  @Test
  void everyFigureOfAProvenSetupCanBeComputed() {
    seeds
        .setups()
        .forEach(
            (name, setup) -> {
              Figures figures = FiguresComputation.of(setup);
              if (seeds.isProven(name)) {
                assertEquals(List.of(), figures.needs(), name);
              }
              for (LightFigures light : figures.lights()) {
                assertTrue(light.level().isPresent(), name + " " + light.light().id());
              }
            });
  }

  /**
   * One bound for all, tighter than what the engine says of these levels where it does not know the
   * readings: 0.38 to 0.86 stop.
   */
  @Test
  void everyReadingIsWithinItsUncertaintyOfTheModelOrIsOwnedUpTo() {
    List<String> unexplained = new ArrayList<>();
    Map<String, Double> far = new TreeMap<>();
    for (Map.Entry<String, SetupDocument> setup : seeds.setups().entrySet()) {
      for (LightFigures light : FiguresComputation.of(setup.getValue()).lights()) {
        double miss = Math.abs(light.computedMinusMetered().map(Stops::value).orElse(0.0));
        LightId id = light.light().id();
        boolean isOwned =
            setup.getValue().outcome().stream()
                .anyMatch(said -> said.light().equals(Optional.of(id)));
        if (miss > SCATTER_STOPS) {
          far.put(setup.getKey() + " " + id, miss);
          if (!isOwned) {
            unexplained.add(setup.getKey() + " " + id + " " + miss);
          }
        }
      }
    }
    assertEquals(List.of(), unexplained);
    assertTrue(far.size() >= 8 && far.size() <= 20, far.toString());
  }

  @Test
  void noShutterIsFasterThanItsBodySyncs() {
    seeds
        .setups()
        .forEach(
            (name, setup) -> {
              ShutterTime time = setup.exposure().time();
              Body body = setup.camera().flatMap(Camera::body).orElseThrow();
              assertTrue(time.stopsOver(body.sync()).value() > -1e-9, name);
            });
  }

  @Test
  void everyLightSaysWhyAndStandsInTheBuildOrder() {
    seeds
        .setups()
        .forEach(
            (file, setup) -> {
              for (Light light : setup.lights()) {
                String name = file + " " + light.id();
                assertTrue(light.reason().isPresent(), name);
                assertTrue(
                    setup.buildOrder().stream()
                        .anyMatch(step -> step.light().equals(Optional.of(light.id()))),
                    name);
              }
              assertFalse(setup.cautions().isEmpty(), file);
              assertTrue(!setup.outcome().isEmpty() || !seeds.isProven(file), file);
            });
  }

  @Test
  void noTwoOfThemBeginAlike() {
    Set<String> beginnings = new HashSet<>();
    seeds
        .setups()
        .forEach(
            (name, setup) -> {
              String[] words = setup.intent().orElseThrow().split(" ");
              assertTrue(
                  beginnings.add(String.join(" ", List.of(words).subList(0, 3))),
                  name + " begins as another does");
              assertTrue(words.length > 40, name + " says little of what is meant");
            });
  }

  @Test
  void theQuarryLeapCostsTheSatchelKitMoreThanAStopOfItsSky() {
    Answer answer = adapt("over-the-cut", "satchel-kit");
    assertTrue(answer instanceof Answer.Adapted, answer.toString());
    Stops change = ((Answer.Adapted) answer).adaptations().getFirst().ambientChange().orElseThrow();
    assertTrue(change.value() > 1, change.toString());
  }

  @Test
  void theVanKitHasTooFewHeadsForTheQuarryLeap() {
    Answer answer = adapt("over-the-cut", "van-kit");
    assertTrue(answer instanceof Answer.NotEnoughGear, answer.toString());
    assertEquals(3, ((Answer.NotEnoughGear) answer).unlit().size());
  }

  @Test
  void oneSetupHasTheMoodInTheVeryWordsAndAnotherInNoneOfThem() {
    assertTrue(
        seeds.setup("last-boat-out").moods().containsAll(List.of("cold", "lonely", "first light")));
    String other = Json.print(SetupDocument.FORM.write(seeds.setup("ebb-and-iron")));
    for (String word : List.of("cold", "lonely", "first light")) {
      assertFalse(other.contains(word), word);
    }
  }

  private Answer adapt(String setup, String kit) {
    Kit whole = seeds.kit(kit);
    return AdaptationSearch.adapt(seeds.setup(setup), whole, Wishes.none());
  }
}
