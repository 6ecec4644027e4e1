package lampwright.setup.figures;

import static lampwright.wording.WordsForTests.english;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import lampwright.engine.Working;
import lampwright.engine.power.Beaufort;
import lampwright.setup.Documents;
import lampwright.setup.LightId;
import lampwright.setup.WholeExamples;
import lampwright.setup.WorkedExamples;
import org.junit.jupiter.api.Test;

/** Sun, wind and mains of a setup. */
class SiteTest {

  private static final Figures DANCER = figures(WholeExamples.dancer());
  private static final Figures CELLIST = figures(WholeExamples.cellist());

  private static Figures figures(Object json) {
    return FiguresComputation.of(Documents.setup(json));
  }

  private static void same(String pointer, double value) {
    double expected = WorkedExamples.number(pointer);
    assertEquals(expected, value, 1e-6 * Math.abs(expected), pointer);
  }

  @Test
  void theKeyInASteadyWindIsThatOfReference17a() {
    String results = "/example_1/results/wind_key";
    assertEquals(1, DANCER.winds().size());
    WindFigures key = DANCER.winds().getFirst();
    assertEquals(new LightId("key"), key.light());
    WindFigures.Push steady = key.steady().orElseThrow();
    same(results + "/drag_n", steady.force().value());
    same(results + "/moment_nm", steady.moment().value());
    same(results + "/total_mass_needed_kg", steady.massNeeded().value());
    same(results + "/ballast_kg", steady.ballast().value());
    same(results + "/tip_speed_unballasted_m_s", key.gustAtWhichItGoes().value());
    assertEquals(Beaufort.GENTLE_BREEZE, key.beaufort().orElseThrow());
  }

  /** Force goes with the square of the speed (NASA, Shape Effects on Drag): 1.6 squared is 2.56. */
  @Test
  void gustsPushByTheSquareOfTheirFactor() {
    WindFigures key = DANCER.winds().getFirst();
    assertEquals(
        2.56 * key.steady().orElseThrow().force().value(), key.force().orElseThrow().value(), 1e-9);
    double mean = key.speedAtWhichItGoes().value();
    assertEquals(key.gustAtWhichItGoes().value() / 1.6, mean, 1e-12);
    assertEquals(mean / Math.sqrt(1.5), key.speedWithMargin().value(), 1e-12);
  }

  @Test
  void aStandWithoutAWindStillTellsWhenItGoes() {
    Figures calm = figures(Documents.without(WholeExamples.dancer(), "/occasion/wind_m_per_s"));
    WindFigures key = calm.winds().getFirst();
    assertTrue(key.force().isEmpty());
    assertTrue(key.steady().isEmpty());
    same("/example_1/results/wind_key/tip_speed_unballasted_m_s", key.gustAtWhichItGoes().value());
    assertTrue(calm.needs().contains("/occasion/wind_m_per_s"), calm.needs().toString());
  }

  @Test
  void whatStandsInTheWindWithoutItsWeightIsSaid() {
    String assumed = english(DANCER.winds().getFirst().assumptions()).toString();
    assertTrue(assumed.contains("The head's weight is not known"), assumed);
    Object noLegs = Documents.without(WholeExamples.dancer(), "/lights/0/stand/leg_radius_m");
    assertEquals(List.of(), figures(noLegs).winds());
    assertTrue(figures(noLegs).needs().contains("/lights/0/stand/leg_radius_m"));
  }

  @Test
  void underARoofThereIsNeitherSunNorWind() {
    Figures inside =
        figures(Documents.with(WholeExamples.dancer(), "/occasion/place/indoors", true));
    assertEquals(List.of(), inside.winds());
    assertTrue(inside.sun().isEmpty());
    assertFalse(inside.needs().stream().anyMatch(need -> need.contains("/stand")));
  }

  @Test
  void theSunIsAskedForOutdoorsOnly() {
    Object setup = Documents.without(WholeExamples.dancer(), "/occasion/utc_offset");
    assertTrue(figures(setup).needs().contains("/occasion/utc_offset"));
    assertTrue(figures(setup).sun().isEmpty());
    assertTrue(DANCER.sun().isPresent());
    Map<String, Object> studio = Map.of("name", "studio two");
    Object timeless =
        Documents.with(
            Documents.without(WholeExamples.dancer(), "/occasion"),
            "/occasion",
            Map.of("place", studio));
    Object indoors = Documents.with(setup, "/occasion/place/indoors", true);
    for (Object without : List.of(timeless, indoors)) {
      List<String> needs = figures(without).needs();
      assertFalse(
          needs.toString().matches(".*/occasion/(place|date|time|utc_offset).*"), needs.toString());
    }
  }

  @Test
  void theCellistsMainsAreThoseOfReference17b() {
    String results = "/example_2/results/kit_a";
    MainsFigures mains = CELLIST.power().mains().orElseThrow();
    same(results + "/recharge_watts_peak", mains.charging().value());
    same(results + "/with_modelling_w", mains.total().value());
    same(results + "/mains_current_a", mains.current().value());
    same(results + "/generator_va", mains.generator().value());
    same(results + "/average_watts_at_interval", mains.average().orElseThrow().power().value());
  }

  @Test
  void theUsualMainsAreSaidWhereThePlanDoesNotSayOthers() {
    Figures figures = figures(Documents.without(WholeExamples.cellist(), "/plan"));
    MainsFigures mains = figures.power().mains().orElseThrow();
    same("/example_2/results/kit_a/mains_current_a", mains.current().value());
    assertEquals(3, mains.assumptions().size());
    assertTrue(mains.average().isEmpty());
    Object other = Documents.with(WholeExamples.cellist(), "/plan/mains_volts", 120.0);
    String assumed = english(figures(other).power().mains().orElseThrow().assumptions()).toString();
    assertFalse(assumed.contains("230 V"), assumed);
    assertTrue(assumed.contains("0.65"), assumed);
  }

  /** P = E n / 60 + lamp: the wall's 150 W·s thirty times a minute and its lamp of 150 W. */
  @Test
  void theHottestHeadIsTheOneThatFlashesMost() {
    HeatFigures hottest = CELLIST.power().heat().orElseThrow();
    assertEquals(new LightId("wall"), hottest.hottest());
    assertEquals(225, hottest.load().average().value(), 1e-9);
    assertTrue(hottest.isPaceOfPlan());
  }

  @Test
  void anyNumberOfHeadsOnTheMainsIsAddedUp() {
    Object setup = WholeExamples.cellist();
    Object wall = Documents.at(setup, "/lights/2");
    for (int i = 3; i < 20; i++) {
      setup = Documents.with(setup, "/lights/" + i, Documents.with(wall, "/id", "wall-" + i));
    }
    MainsFigures mains = figures(setup).power().mains().orElseThrow();
    double three = WorkedExamples.number("/example_2/results/kit_a/mains_current_a");
    assertEquals(three * 20 / 3, mains.current().value(), 1e-6 * three);
    assertEquals(2, mains.loads().size());
    Working current = mains.workings().getFirst();
    assertEquals(mains.current().value(), current.value(), 1e-12);
    assertEquals(2, current.parts().size());
  }

  @Test
  void noFigureOfTheSiteIsEverCalledSafe() {
    String words =
        english(DANCER.winds().getFirst().assumptions())
            + " "
            + english(WindFigures.CAUTIONS)
            + english(CELLIST.power().mains().orElseThrow().assumptions())
            + english(MainsFigures.CAUTIONS);
    assertFalse(words.matches("(?is).*\\bsafe\\b.*"), words);
    assertTrue(words.contains("local codes"));
  }
}
