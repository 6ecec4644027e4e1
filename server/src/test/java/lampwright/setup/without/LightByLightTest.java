package lampwright.setup.without;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import lampwright.engine.exposure.MeterConstant;
import lampwright.engine.unit.Stops;
import lampwright.setup.Burning;
import lampwright.setup.DemoSeeds;
import lampwright.setup.Light;
import lampwright.setup.LightId;
import lampwright.setup.SetupDocument;
import lampwright.setup.Subject;
import lampwright.setup.Target;
import lampwright.setup.figures.Figures;
import lampwright.setup.figures.FiguresComputation;
import lampwright.setup.figures.LightFigures;
import lampwright.setup.figures.SpillFigures;
import lampwright.setup.figures.TargetFigures;
import org.junit.jupiter.api.Test;

/** The levels of whatever burns: on all setups of the demo, and by the arithmetic of the trade. */
class LightByLightTest {

  private static final List<SetupDocument> DEMO = List.copyOf(new DemoSeeds().setups().values());

  private static LightByLight of(SetupDocument setup) {
    return LightByLight.of(setup, FiguresComputation.of(setup));
  }

  private static List<MeterPlace> places(LightByLight lights) {
    return Stream.of(lights.own(), lights.targets(), lights.subjects())
        .flatMap(List::stream)
        .toList();
  }

  private static double level(MeterPlace place, Burning burning) {
    return place.level(burning).map(Stops::value).orElse(Double.NEGATIVE_INFINITY);
  }

  private static LightId id(String text) {
    return new LightId(text);
  }

  @Test
  void withEverythingOnTheLevelsAreTheFiguresOwnToTheLastDigit() {
    int compared = 0;
    for (SetupDocument setup : DEMO) {
      Figures figures = FiguresComputation.of(setup);
      LightByLight lights = LightByLight.of(setup, figures);
      List<SpillFigures> told =
          Stream.concat(
                  figures.targets().stream().map(TargetFigures::spill),
                  figures.unlit().stream().map(unlit -> unlit.spill()))
              .toList();
      assertEquals(told.size(), lights.targets().size(), setup.title());
      for (int i = 0; i < told.size(); i++) {
        MeterPlace place = lights.targets().get(i);
        assertEquals(told.get(i).sums().towardCamera(), place.sum(Burning.ALL), setup.title());
        assertEquals(told.get(i).sums().towardCameraOffset(), place.level(Burning.ALL));
        for (SpillFigures.Reach reach : told.get(i).reaches()) {
          assertEquals(told.get(i).share(reach), place.share(reach.light(), Burning.ALL));
          compared++;
        }
      }
      lights
          .face()
          .ifPresent(
              face -> {
                assertEquals(face.figures().ratio(), face.ratio(Burning.ALL), setup.title());
                assertEquals(
                    face.figures().spill().sums().towardCameraOffset(), face.lit(Burning.ALL));
              });
    }
    assertTrue(compared > 500, compared + " shares were compared");
  }

  @Test
  void singleLightsAndTheAmbientAddUpToTheWhole() {
    for (SetupDocument setup : DEMO) {
      Burning dark = Burning.noLightOf(setup).withoutAmbient();
      for (MeterPlace place : places(of(setup))) {
        double sum = place.sum(dark.withAmbient()).total().value();
        for (Light light : setup.lights()) {
          sum += place.sum(dark.with(light.id())).total().value();
        }
        double whole = place.sum(Burning.ALL).total().value();
        assertEquals(whole, sum, 1e-12 * whole, () -> setup.title() + " " + place.at());
        assertEquals(0, place.sum(dark).total().value());
      }
    }
  }

  @Test
  void turningALightOffNeverRaisesALevel() {
    long seed = 20_311;
    SplittableRandom random = new SplittableRandom(seed);
    for (SetupDocument setup : DEMO) {
      LightByLight lights = of(setup);
      Burning burning = Burning.ALL;
      for (Light light : setup.lights()) {
        burning = random.nextBoolean() ? burning.without(light.id()) : burning;
      }
      for (Light light : setup.lights()) {
        Burning on = burning.with(light.id());
        for (MeterPlace place : places(lights)) {
          assertTrue(
              level(place, on.without(light.id())) <= level(place, on),
              () -> setup.title() + " " + light.id() + " seed " + seed);
          assertTrue(level(place, on.withoutAmbient()) <= level(place, on.withAmbient()));
        }
      }
    }
  }

  @Test
  void aLightAloneIsItsOwnReadingAsItReachesThePicture() {
    for (SetupDocument setup : DEMO) {
      Figures figures = FiguresComputation.of(setup);
      LightByLight lights = LightByLight.of(setup, figures);
      for (LightFigures light : figures.lights()) {
        if (light.light().target().held() != Target.Held.TOWARD_LIGHT || light.level().isEmpty()) {
          continue;
        }
        LightId id = light.light().id();
        assertEquals(
            light
                .inPicture()
                .map(alone -> setup.exposure().settings().offsetOf(alone, MeterConstant.FLAT)),
            lights.own(id).orElseThrow().level(Burning.noLightOf(setup).with(id).withoutAmbient()),
            () -> setup.title() + " " + id);
      }
    }
  }

  @Test
  void aSetupGrowsFromTheAmbientToTheWholeOneLightAtATime() {
    for (SetupDocument setup : DEMO) {
      LightByLight lights = of(setup);
      List<LightByLight.Stage> stages = lights.stages();
      assertEquals(setup.lights().size() + 1, stages.size());
      assertEquals(Optional.empty(), stages.getFirst().came());
      assertTrue(stages.getLast().after().isAll());
      List<LightId> came = new ArrayList<>();
      for (int i = 1; i < stages.size(); i++) {
        assertEquals(stages.get(i - 1).after(), stages.get(i).before());
        came.add(stages.get(i).came().orElseThrow());
      }
      assertEquals(setup.lightsInBuildOrder().stream().map(Light::id).toList(), came);
    }
  }

  /** Two equal lights are one stop more than one: common practice, no source. */
  @Test
  void ofTwoEqualLightsOneIsAStop() {
    LightByLight lights =
        of(
            OneFace.setup(
                Map.of(),
                OneFace.light("left", "fill", -2, -2, "toward_camera", 8),
                OneFace.light("right", "fill", 2, -2, "toward_camera", 8)));
    MeterPlace face = lights.targets().getFirst();
    assertEquals(1, level(face, Burning.ALL), 1e-12);
    assertEquals(0, level(face, Burning.ALL.without(id("left"))), 1e-12);
    assertEquals(0.5, face.share(id("right"), Burning.ALL), 1e-12);
  }

  /**
   * Three to one is a key one stop over its fill, the fill from the camera: common practice, the
   * handbook's lighting ratio of key and fill together against fill. The sides then lie log2(3)
   * apart, and the lit side loses log2(3/2) with the fill.
   */
  @Test
  void threeToOneIsAKeyAStopOverTheFill() {
    FaceSides face = of(OneFace.keyAStopOverFill()).face().orElseThrow();
    Burning noFill = Burning.ALL.without(id("fill"));
    Burning noKey = Burning.ALL.without(id("key"));
    assertEquals(3, face.ratio(Burning.ALL).orElseThrow().litToShadow(), 1e-9);
    assertEquals(1.585, face.apart(Burning.ALL).orElseThrow().value(), 5e-4);
    assertEquals(-0.585, face.litShift(Burning.ALL, noFill).change().orElseThrow().value(), 5e-4);
    assertEquals(-1.585, face.litShift(Burning.ALL, noKey).change().orElseThrow().value(), 5e-4);
    assertEquals(0, face.apart(noKey).orElseThrow().value(), 1e-12);
    assertEquals(Optional.empty(), face.ratio(noFill));
    assertEquals(Optional.empty(), face.shadow(noFill), "no ambient is known, so it is black");
  }

  /** The inverse square law: at twice the distance two stops less. */
  @Test
  void aSubjectWithoutATargetIsMeteredWhereItsEyesAre() {
    double tall = 1.5 / Subject.EYES_SHARE;
    LightByLight lights =
        of(
            OneFace.setup(
                Map.of(
                    "subjects",
                    List.of(
                        Map.of("name", "in front", "place", OneFace.point(0, 0, 0)),
                        Map.of(
                            "name", "behind", "place", OneFace.point(0, 3, 0), "height_m", tall))),
                OneFace.light("key", "key", 0, -3, "toward_light", 8)));
    assertEquals(1, lights.subjects().size(), "the first has the target on it");
    assertEquals(-2, level(lights.subjects().getFirst(), Burning.ALL), 1e-9);
  }

  @Test
  void aLightOfUnknownStrengthIsInNoLevel() {
    LightByLight lights =
        of(
            OneFace.setup(
                Map.of(),
                OneFace.light("key", "key", 0, -3, "toward_light", 8),
                OneFace.unknownRim()));
    assertEquals(List.of(id("rim")), lights.unknown());
    assertEquals(Optional.empty(), lights.own(id("rim")));
    MeterPlace face = lights.own(id("key")).orElseThrow();
    assertEquals(face.level(Burning.ALL), face.level(Burning.ALL.without(id("rim"))));
  }
}
