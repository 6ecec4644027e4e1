package lampwright.setup.buildable;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import lampwright.Sweep;
import lampwright.engine.unit.Stops;
import lampwright.gear.Kit;
import lampwright.gear.Modifier;
import lampwright.setup.Documents;
import lampwright.setup.SetupDocument;
import lampwright.setup.adapting.AdaptationSearch;
import lampwright.setup.figures.Figures;
import lampwright.setup.figures.FiguresComputation;
import org.junit.jupiter.api.Test;

/** The quick yes or no is the full search's, for generated studios and by hand. */
class BuildableTest {

  private static final int PAIRS = Sweep.cases(400);
  private static final int DISTANCES = PAIRS / 10;
  private static final int KITS = 5;
  private static final double[] WITHIN = {0.05, 0.2, 1.0 / 3, 0.5, 1, 2};

  private static Demand demand(SetupDocument setup) {
    return Demand.of(setup, FiguresComputation.of(setup));
  }

  private static DemandCatalogue catalogue(int from, int to) {
    return DemandCatalogue.of(
        IntStream.range(from, to)
            .mapToObj(RandomStudios::setup)
            .map(BuildableTest::demand)
            .toList(),
        setup -> RandomStudios.setup(from + setup));
  }

  private static DemandCatalogue one(SetupDocument setup) {
    return DemandCatalogue.of(List.of(demand(setup)), _ -> setup);
  }

  /** The least stops within which a setup is made; infinite for never. */
  private static double howFarOff(Judge judge, int setup) {
    return switch (judge.judge(setup, Stops.ZERO)) {
      case Verdict.Within _ -> 0;
      case Verdict.Beyond(Stops stops) -> stops.value();
      case Verdict.Never _ -> Double.POSITIVE_INFINITY;
    };
  }

  @Test
  void everyAnswerOnManyPairsIsTheFullSearchs() {
    int from = 200_000;
    DemandCatalogue demands = catalogue(from, from + PAIRS);
    List<Kit> kits = IntStream.range(0, KITS).mapToObj(RandomStudios::kit).toList();
    List<Judge> judges = kits.stream().map(kit -> Judge.of(kit, demands)).toList();
    Random random = new Random(8);
    int yes = 0;
    int compared = 0;
    for (int i = 0; i < PAIRS; i++) {
      Kit kit = kits.get(i % KITS);
      SetupDocument setup = demands.setup(i);
      Figures figures = FiguresComputation.of(setup);
      Stops within = new Stops(WITHIN[random.nextInt(WITHIN.length)]);
      Verdict quick = judges.get(i % KITS).judge(i, within);
      boolean full = AdaptationSearch.isWithin(setup, figures, kit, within);
      String where = "setup " + (from + i) + ", kit " + i % KITS + ", " + within + ": " + quick;
      assertEquals(full, quick instanceof Verdict.Within, where);
      yes += full ? 1 : 0;
      // Asked for no miss at all, what can be made is told with its distance.
      Verdict told =
          full && compared < DISTANCES ? judges.get(i % KITS).judge(i, Stops.ZERO) : quick;
      if (!(told instanceof Verdict.Within)) {
        compared += told instanceof Verdict.Beyond ? 1 : 0;
        sameDistance(told, new SearchedReach(setup, figures, kit), where + ", " + told);
      }
    }
    assertTrue(yes > PAIRS / 3 && yes < PAIRS * 9 / 10, yes + " of " + PAIRS + " are made");
    assertTrue(compared >= DISTANCES, compared + " distances compared");
    assertEquals(0, judges.stream().mapToLong(Judge::searched).sum(), "left to the full search");
  }

  /** One halving of the full search's at each side of the quick answer is all that is needed. */
  private static void sameDistance(Verdict quick, SearchedReach full, String where) {
    switch (quick) {
      case Verdict.Beyond(Stops off) -> {
        double tolerance = Judge.TOLERANCE_STOPS;
        assertTrue(full.isWithin(off.value() + tolerance), where);
        assertTrue(off.value() <= tolerance || !full.isWithin(off.value() - tolerance), where);
      }
      case Verdict.Never _ -> assertTrue(!full.isWithin(20), where);
      case Verdict.Within _ -> throw new AssertionError(where);
    }
  }

  @Test
  void anotherHeadNeverMakesItWorse() {
    DemandCatalogue demands = catalogue(0, 300);
    int better = 0;
    for (int k = 0; k < KITS; k++) {
      Map<String, Object> json = RandomStudios.kitJson(k);
      Judge less = Judge.of(RandomStudios.kit(k), demands);
      int count = ((Number) Documents.at(json, "/heads/0/count")).intValue();
      Object more = Documents.with(json, "/heads/0/count", count + 1.0);
      Judge judge = Judge.of(Documents.kit(more), demands);
      for (int i = 0; i < demands.size(); i++) {
        double before = howFarOff(less, i);
        double after = howFarOff(judge, i);
        assertTrue(after <= before + Judge.TOLERANCE_STOPS, "setup " + i + ", kit " + k);
        better += after < before - Judge.TOLERANCE_STOPS ? 1 : 0;
      }
    }
    assertTrue(better > 20, better + " setups came nearer");
  }

  @Test
  void whatIsMadeWithinLessIsMadeWithinMore() {
    DemandCatalogue demands = catalogue(0, 300);
    int turned = 0;
    for (int k = 0; k < KITS; k++) {
      Judge judge = Judge.of(RandomStudios.kit(k), demands);
      for (int i = 0; i < demands.size(); i++) {
        boolean made = false;
        boolean first = judge.judge(i, Stops.ZERO) instanceof Verdict.Within;
        for (double within : WITHIN) {
          boolean now = judge.judge(i, new Stops(within)) instanceof Verdict.Within;
          assertTrue(now || !made, "setup " + i + ", kit " + k + ", " + within);
          made = now;
        }
        turned += made && !first ? 1 : 0;
      }
    }
    assertTrue(turned > 100, turned + " setups turned from no to yes");
  }

  @Test
  void whatIsAskedForIsNotExceededByHowFarOff() {
    DemandCatalogue demands = catalogue(0, 300);
    for (int k = 0; k < KITS; k++) {
      Judge judge = Judge.of(RandomStudios.kit(k), demands);
      for (int i = 0; i < demands.size(); i++) {
        double off = howFarOff(judge, i);
        for (double within : WITHIN) {
          boolean made = judge.judge(i, new Stops(within)) instanceof Verdict.Within;
          assertTrue(made || off >= within - Judge.TOLERANCE_STOPS, "setup " + i + ", kit " + k);
          assertTrue(!made || off <= within + Judge.TOLERANCE_STOPS, "setup " + i + ", kit " + k);
        }
      }
    }
  }

  /**
   * By the guide number (GN = f-number times distance at ISO 100): a head of GN 64 two stops down,
   * 2 m away, gives f/16, which is what is shot with at 1/200 s. A head of GN 32 gives just that at
   * full power. One of GN 16 is two stops short: opened by two stops the ambient comes up by two,
   * as 1/200 s is the shortest time; opened by one the light is one stop short and the ambient one
   * over. So it is one stop off.
   */
  @Test
  void aHeadTwoStopsTooWeakIsOneStopOff() {
    DemandCatalogue demands = DemandCatalogue.of(List.of(demand(Documents.setup(oneLight()))));
    assertEquals(0, howFarOff(Judge.of(oneHead(32), demands), 0), 0.02);
    assertEquals(1, howFarOff(Judge.of(oneHead(16), demands), 0), 0.02);
    Judge weak = Judge.of(oneHead(16), demands);
    assertTrue(weak.judge(0, new Stops(1)) instanceof Verdict.Within);
    assertTrue(weak.judge(0, new Stops(0.9)) instanceof Verdict.Beyond);
  }

  @Test
  void whatIsMissingForGoodIsSaid() {
    DemandCatalogue demands = DemandCatalogue.of(List.of(demand(Documents.setup(oneLight()))));
    Kit none = Documents.kit(Documents.with(kitJson(32), "/heads", List.of()));
    Kit low =
        Documents.kit(
            Documents.with(
                kitJson(32),
                "/stands",
                List.of(Map.of("stand", Map.of("name", "low", "highest_m", 0.5)))));
    assertEquals(
        new Verdict.Never(Verdict.Reason.TOO_FEW_HEADS),
        Judge.of(none, demands).judge(0, Stops.ONE));
    assertEquals(
        new Verdict.Never(Verdict.Reason.NO_STAND_SO_HIGH),
        Judge.of(low, demands).judge(0, Stops.ONE));
    Object soft =
        Documents.with(
            oneLight(),
            "/lights/0/modifier",
            Map.of(
                "name",
                "box",
                "kind",
                "softbox",
                "face",
                Map.of("shape", "disc", "diameter_m", 1.0),
                "loss_stops",
                2.0));
    DemandCatalogue boxed = DemandCatalogue.of(List.of(demand(Documents.setup(soft))));
    assertEquals(
        new Verdict.Never(Verdict.Reason.NO_MODIFIER_OF_THAT_SIZE),
        Judge.of(oneHead(32), boxed).judge(0, Stops.ONE));
  }

  @Test
  void aKitWithHeadsOnPacksIsLeftToTheFullSearch() {
    SetupDocument setup = Documents.setup(oneLight());
    Object packed =
        Documents.with(
            Documents.with(kitJson(32), "/heads/0/head/pack", "pack"),
            "/packs",
            List.of(Map.of("pack", Map.of("name", "pack", "energy_ws", 100.0, "outlets", 2.0))));
    Kit kit = Documents.kit(packed);
    Judge judge = Judge.of(kit, one(setup));
    for (double within : WITHIN) {
      boolean made =
          AdaptationSearch.isWithin(setup, FiguresComputation.of(setup), kit, new Stops(within));
      assertEquals(made, judge.judge(0, new Stops(within)) instanceof Verdict.Within);
    }
    assertEquals(WITHIN.length, judge.searched());
  }

  @Test
  void theFullSearchTellsHowFarOffItIsOrThatItWasStopped() {
    SearchedReach weak = reach(oneHead(16));
    assertEquals(Optional.empty(), weak.find(() -> true));
    // As by the guide number above: one stop off.
    Verdict off = weak.find(() -> false).orElseThrow();
    assertTrue(off instanceof Verdict.Beyond(Stops stops) && stops.value() == 1, off.toString());
    assertEquals(Optional.of(new Verdict.Within()), reach(oneHead(32)).find(() -> false));
    Kit none = Documents.kit(Documents.with(kitJson(32), "/heads", List.of()));
    assertTrue(reach(none).find(() -> false).orElseThrow() instanceof Verdict.Never);
  }

  private static SearchedReach reach(Kit kit) {
    SetupDocument setup = Documents.setup(oneLight());
    return new SearchedReach(setup, FiguresComputation.of(setup), kit);
  }

  /**
   * A kit of lights goes with the setup's own grey filter, which two alike but for it differ by.
   */
  @Test
  void setupsThatDifferByTheirGreyFilterOnlyAreToldApart() {
    Object lightsOnly =
        Documents.with(Documents.with(kitJson(32), "/bodies", List.of()), "/lenses", List.of());
    Kit kit = Documents.kit(lightsOnly);
    SetupDocument plain = Documents.setup(oneLight());
    SetupDocument grey =
        Documents.setup(Documents.with(oneLight(), "/exposure/neutral_density_stops", 3.3));
    for (List<SetupDocument> setups : List.of(List.of(plain, grey), List.of(grey, plain))) {
      Judge judge =
          Judge.of(kit, DemandCatalogue.of(setups.stream().map(BuildableTest::demand).toList()));
      for (int i = 0; i < 2; i++) {
        for (double within : WITHIN) {
          SetupDocument setup = setups.get(i);
          boolean made =
              AdaptationSearch.isWithin(
                  setup, FiguresComputation.of(setup), kit, new Stops(within));
          assertEquals(
              made,
              judge.find(i, new Stops(within)).orElseThrow() instanceof Verdict.Within,
              "setup " + i + " within " + within);
        }
      }
    }
  }

  @Test
  void aSetupsOwnReadingOfTheKitsGearIsLeftToTheFullSearch() {
    Object read =
        Documents.with(
            Documents.with(
                oneLight(), "/lights/0/output", Map.of("f_number", 22.0, "distance_m", 2.0)),
            "/lights/0/head",
            Documents.at(kitJson(32), "/heads/0/head"));
    SetupDocument setup = Documents.setup(read);
    Judge judge = Judge.of(oneHead(32), one(setup));
    boolean made =
        AdaptationSearch.isWithin(setup, FiguresComputation.of(setup), oneHead(32), new Stops(0.1));
    assertEquals(made, judge.judge(0, new Stops(0.1)) instanceof Verdict.Within);
    assertEquals(1, judge.searched());
  }

  @Test
  void theTablesAreWithinTheirError() {
    DemandCatalogue demands = catalogue(0, 300);
    double worst = 0;
    for (int k = 0; k < KITS; k++) {
      List<Modifier> modifiers = new ArrayList<>();
      RandomStudios.kit(k).modifiers().forEach(several -> modifiers.add(several.item()));
      for (Modifier modifier : modifiers) {
        ModifierReach reach = new ModifierReach(modifier);
        for (int light = 0; light < demands.straight.length; light++) {
          double table = reach.stops(demands, light, false);
          double exact = reach.stops(demands, light, true);
          worst = table == exact ? worst : Math.max(worst, Math.abs(table - exact));
        }
      }
    }
    assertTrue(worst > 0 && worst < ModifierReach.TABLE_ERROR_STOPS / 2, worst + " stops");
  }

  private static Map<String, Object> oneLight() {
    Map<String, Object> light = new HashMap<>();
    light.put("id", "key");
    light.put("role", "key");
    light.put("head", head(64));
    light.put("place", Map.of("x_m", 0.0, "y_m", -2.0, "z_m", 1.5));
    light.put("target", Map.of("name", "face", "at", Map.of("x_m", 0.0, "y_m", 0.0, "z_m", 1.5)));
    light.put("stops_down", 2.0);
    Map<String, Object> setup = new HashMap<>();
    setup.put("title", "One light");
    setup.put("exposure", Map.of("f_number", 16.0, "time", "1/200", "iso", 100.0));
    setup.put("ambient", Map.of("ev100", 12.0));
    setup.put("lights", List.of(light));
    return setup;
  }

  private static Map<String, Object> head(double guideNumber) {
    return Map.of(
        "name",
        "head " + guideNumber,
        "energy_ws",
        100.0,
        "output",
        Map.of("kind", "guide_number", "guide_number_m", guideNumber));
  }

  private static Kit oneHead(double guideNumber) {
    return Documents.kit(kitJson(guideNumber));
  }

  private static Map<String, Object> kitJson(double guideNumber) {
    return Map.of(
        "name", "one head",
        "heads", List.of(Map.of("head", head(guideNumber))),
        "bodies",
            List.of(
                Map.of(
                    "name", "body",
                    "width_mm", 36.0,
                    "height_mm", 24.0,
                    "pixels_wide", 6000.0,
                    "sync", "1/200")),
        "lenses",
            List.of(
                Map.of(
                    "name", "lens",
                    "focal_length_mm", 50.0,
                    "widest_f_number", 2.0,
                    "smallest_f_number", 22.0)));
  }
}
