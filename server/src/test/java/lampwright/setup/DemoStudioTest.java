package lampwright.setup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Stream;
import lampwright.document.Form;
import lampwright.document.Json;
import lampwright.document.Reading;
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

/** Holds the demo studio to what its README promises. */
class DemoStudioTest {

  /** The tests run in {@code server/}. */
  private static final Path STUDIO = Path.of("../seed-data/studio");

  /** Farther from the model than a meter's scatter explains. */
  private static final double SCATTER_STOPS = 0.3;

  @Test
  void everySetupIsSoundAndWritesWhatItReads() throws Exception {
    for (Map.Entry<String, SetupDocument> setup : setups().entrySet()) {
      Object written = SetupDocument.FORM.write(setup.getValue());
      assertEquals(setup.getValue(), sound(SetupDocument.FORM, written, setup.getKey()));
    }
  }

  @Test
  void everyKitIsSoundAndWritesWhatItReads() throws Exception {
    for (Map.Entry<String, Kit> kit : kits().entrySet()) {
      Object written = Kit.FORM.write(kit.getValue());
      assertEquals(kit.getValue(), sound(Kit.FORM, written, kit.getKey()));
    }
  }

  @Test
  void theStudioNamesEveryFileOnce() throws Exception {
    for (String folder : List.of("setups", "kits")) {
      List<String> named = named(folder);
      assertEquals(new TreeSet<>(named).size(), named.size(), folder);
      try (Stream<Path> files = Files.list(STUDIO.resolve(folder))) {
        assertEquals(
            files.map(file -> String.valueOf(file.getFileName())).sorted().toList(),
            named.stream().sorted().toList());
      }
    }
  }

  @Test
  void everyFigureOfASetupCanBeComputed() throws Exception {
    for (Map.Entry<String, SetupDocument> setup : setups().entrySet()) {
      Figures figures = FiguresComputation.of(setup.getValue());
      assertEquals(List.of(), figures.needs(), setup.getKey());
      for (LightFigures light : figures.lights()) {
        assertTrue(light.level().isPresent(), setup.getKey() + " " + light.light().id());
      }
    }
  }

  @Test
  void aReadingFarFromTheModelIsOneThatTheOutcomeOwnsUpTo() throws Exception {
    List<String> far = new ArrayList<>();
    for (Map.Entry<String, SetupDocument> setup : setups().entrySet()) {
      for (LightFigures light : FiguresComputation.of(setup.getValue()).lights()) {
        double miss = Math.abs(light.computedMinusMetered().map(Stops::value).orElse(0.0));
        if (miss > SCATTER_STOPS) {
          far.add(setup.getKey() + " " + light.light().id());
        }
      }
    }
    assertEquals(
        List.of(
            "glass-after-rain.json sun-in",
            "the-low-string.json south-two",
            "above-the-ropeworks.json elder"),
        far);
  }

  @Test
  void noShutterIsFasterThanItsBodySyncs() throws Exception {
    for (Map.Entry<String, SetupDocument> setup : setups().entrySet()) {
      ShutterTime time = setup.getValue().exposure().time();
      Body body = setup.getValue().camera().flatMap(Camera::body).orElseThrow();
      assertTrue(time.stopsOver(body.sync()).value() > -1e-9, setup.getKey());
    }
  }

  @Test
  void everyLightSaysWhyAndStandsInTheBuildOrder() throws Exception {
    for (Map.Entry<String, SetupDocument> setup : setups().entrySet()) {
      for (Light light : setup.getValue().lights()) {
        String name = setup.getKey() + " " + light.id();
        assertTrue(light.reason().isPresent(), name);
        assertTrue(
            setup.getValue().buildOrder().stream()
                .anyMatch(step -> step.light().equals(Optional.of(light.id()))),
            name);
      }
      assertFalse(setup.getValue().cautions().isEmpty(), setup.getKey());
      assertFalse(setup.getValue().outcome().isEmpty(), setup.getKey());
    }
  }

  @Test
  void theQuarryLeapCostsTheSatchelKitMoreThanAStopOfItsSky() throws Exception {
    Answer answer = adapt("over-the-cut.json", "satchel-kit.json");
    assertTrue(answer instanceof Answer.Adapted, answer.toString());
    Stops change = ((Answer.Adapted) answer).adaptations().getFirst().ambientChange().orElseThrow();
    assertTrue(change.value() > 1, change.toString());
  }

  @Test
  void theVanKitHasTooFewHeadsForTheQuarryLeap() throws Exception {
    Answer answer = adapt("over-the-cut.json", "van-kit.json");
    assertTrue(answer instanceof Answer.NotEnoughGear, answer.toString());
    assertEquals(3, ((Answer.NotEnoughGear) answer).unlit().size());
  }

  @Test
  void oneSetupHasTheMoodInTheVeryWordsAndAnotherInNoneOfThem() throws Exception {
    assertTrue(
        one("setups", SetupDocument.FORM, "last-boat-out.json")
            .moods()
            .containsAll(List.of("cold", "lonely", "first light")));
    String other = Files.readString(STUDIO.resolve("setups/ebb-and-iron.json"));
    for (String word : List.of("cold", "lonely", "first light")) {
      assertFalse(other.contains(word), word);
    }
  }

  private static Answer adapt(String setup, String kit) throws Exception {
    return AdaptationSearch.adapt(
        one("setups", SetupDocument.FORM, setup), one("kits", Kit.FORM, kit), Wishes.none());
  }

  private static Map<String, SetupDocument> setups() throws Exception {
    return read("setups", SetupDocument.FORM);
  }

  private static Map<String, Kit> kits() throws Exception {
    return read("kits", Kit.FORM);
  }

  private static <T> Map<String, T> read(String folder, Form<T> form) throws Exception {
    Map<String, T> documents = new LinkedHashMap<>();
    for (String name : named(folder)) {
      documents.put(name, one(folder, form, name));
    }
    return documents;
  }

  private static <T> T one(String folder, Form<T> form, String name) throws Exception {
    return sound(form, Json.parse(Files.readString(STUDIO.resolve(folder).resolve(name))), name);
  }

  private static <T> T sound(Form<T> form, Object json, String name) {
    return switch (form.read(json)) {
      case Reading.Sound<T> sound -> sound.value();
      case Reading.Faulty<T> faulty -> throw new AssertionError(name + ": " + faulty.problems());
    };
  }

  private static List<String> named(String field) throws Exception {
    Object studio = Json.parse(Files.readString(STUDIO.resolve("studio.json")));
    if (studio instanceof Map<?, ?> fields && fields.get(field) instanceof List<?> names) {
      return names.stream().map(String::valueOf).toList();
    }
    throw new AssertionError("studio.json has no list of " + field);
  }
}
