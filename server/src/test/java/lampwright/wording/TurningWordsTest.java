package lampwright.wording;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import lampwright.engine.unit.Stops;
import lampwright.setup.DemoSeeds;
import lampwright.setup.Light;
import lampwright.setup.LightId;
import lampwright.setup.SetupDocument;
import lampwright.setup.figures.FiguresComputation;
import lampwright.setup.without.LightByLight;
import lampwright.setup.without.OneFace;
import lampwright.setup.without.Shift;
import org.junit.jupiter.api.Test;

class TurningWordsTest {

  private static TurningWords words(SetupDocument setup, Wording words) {
    return new TurningWords(LightByLight.of(setup, FiguresComputation.of(setup)), words);
  }

  private static List<String> without(String light, SetupDocument setup) {
    return words(setup, WordsForTests.usual()).without(new LightId(light));
  }

  @Test
  void aFillHoldsTheShadowSideAndTheRatio() {
    assertEquals(
        List.of(
            "Metered for it at the face: 0.6 stop over with it, at the shooting exposure without."
                + " 33\u00a0% of the light there is its own.",
            "The shadow side at the face falls from 1.0 stop under to dark. The lit side at the"
                + " face falls from 0.6 stop over to the shooting exposure. The lighting ratio,"
                + " 3.0\u00a0:\u00a01 with it, is gone."),
        without("fill", OneFace.keyAStopOverFill()));
  }

  @Test
  void aKeyIsWhatPartsTheSides() {
    List<String> said = without("key", OneFace.keyAStopOverFill());
    assertTrue(
        said.get(1)
            .endsWith(
                "Both sides are then alike: the key is what parts them. The lighting"
                    + " ratio, 3.0\u00a0:\u00a01 with it, is gone."),
        said.toString());
  }

  @Test
  void whatALightIsForIsSaidWhereNothingElseChanges() {
    List<String> said = without("wall", new DemoSeeds().setup("last-boat-out"));
    assertEquals(
        "At the face and elsewhere nothing measurable changes: it is there for “quay wall” alone.",
        said.getLast());
  }

  @Test
  void aLightOfUnknownStrengthGetsNoGuess() {
    SetupDocument setup =
        OneFace.setup(
            Map.of(), OneFace.light("key", "key", 0, -3, "toward_light", 8), OneFace.unknownRim());
    assertEquals(
        List.of("What it gives is not known, so it is in no level here."), without("rim", setup));
  }

  @Test
  void inThirdsAShiftThatRoundsAwayIsNotTold() {
    Shift tenth = new Shift(Optional.of(new Stops(-1)), Optional.of(new Stops(-1.1)));
    assertTrue(new MeterWords(WordsForTests.usual()).shows(tenth));
    assertFalse(new MeterWords(WordsForTests.germanFeetAndThirds()).shows(tenth));
    Shift acrossAThird = new Shift(Optional.of(new Stops(0.49)), Optional.of(new Stops(0.52)));
    assertFalse(new MeterWords(WordsForTests.germanFeetAndThirds()).shows(acrossAThird));
  }

  @Test
  void everyLightOfTheDemoIsToldInBothLanguages() {
    for (Wording words : List.of(WordsForTests.usual(), WordsForTests.germanFeetAndThirds())) {
      for (SetupDocument setup : new DemoSeeds().setups().values()) {
        TurningWords turning = words(setup, words);
        for (Light light : setup.lights()) {
          sound(turning.without(light.id()), setup);
        }
        sound(turning.withoutAmbient(), setup);
        LightByLight.of(setup, FiguresComputation.of(setup))
            .stages()
            .forEach(stage -> sound(turning.came(stage), setup));
      }
    }
  }

  private static void sound(List<String> said, SetupDocument setup) {
    assertFalse(said.isEmpty(), setup.title());
    for (String line : said) {
      assertTrue(line.endsWith(".") && !line.contains("{") && !line.contains("  "), line);
    }
  }
}
