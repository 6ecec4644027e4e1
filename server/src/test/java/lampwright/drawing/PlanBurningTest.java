package lampwright.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.IntStream;
import lampwright.engine.light.Point;
import lampwright.engine.unit.Metres;
import lampwright.engine.unit.Stops;
import lampwright.setup.Burning;
import lampwright.setup.Light;
import lampwright.setup.MapQuestion;
import lampwright.setup.SetupDocument;
import lampwright.setup.figures.FiguresComputation;
import lampwright.setup.figures.SetupMap;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Element;
import org.jsoup.parser.Parser;
import org.junit.jupiter.api.Test;

/** The plan of what burns. */
class PlanBurningTest {

  private static final SetupDocument SETUP = InventedSetups.round(5);
  private static final Light OUT = SETUP.lightsInBuildOrder().get(1);

  private static Element plan(Burning burning) {
    return Jsoup.parse(
        Plan.burning(SETUP, FiguresComputation.of(SETUP), burning, UsualNotation.READ).markup(),
        Parser.xmlParser());
  }

  @Test
  void everythingBurningIsThePlanOfTheSetup() {
    Svg plan = Plan.of(SETUP, FiguresComputation.of(SETUP), UsualNotation.READ);
    assertTrue(
        plan.markup()
            .equals(
                Plan.burning(SETUP, FiguresComputation.of(SETUP), Burning.ALL, UsualNotation.READ)
                    .markup()));
  }

  @Test
  void whatIsOffStandsHollowAndSaysSo() {
    Element plan = plan(Burning.ALL.without(OUT.id()));
    assertEquals(4, plan.select(".plan-disc").size());
    assertEquals(4, plan.select(".plan-aim").size());
    assertEquals(List.of("2"), plan.select(".plan-ring-figure").eachText());
    assertEquals(1, plan.select(".plan-before").size());
    assertTrue(plan.select("desc").text().endsWith("Off: 2."), plan.select("desc").text());
  }

  @Test
  void theSheetKeepsItsMeasureWhateverBurns() {
    Element dark = plan(Burning.noLightOf(SETUP).withoutAmbient());
    assertEquals(0, dark.select(".plan-contour, .plan-contour-zero").size());
    assertEquals(plan(Burning.ALL).attr("viewBox"), dark.attr("viewBox"));
    assertEquals(
        plan(Burning.ALL).select(".plan-tick").outerHtml(), dark.select(".plan-tick").outerHtml());
  }

  /** Light adds: at each point of the map the single lights and the ambient are the whole. */
  @Test
  void mapsOfSingleLightsAddUpToTheMapOfAll() {
    Burning dark = Burning.noLightOf(SETUP).withoutAmbient();
    SetupMap whole = map(Burning.ALL);
    List<SetupMap> parts =
        SETUP.lights().stream().map(light -> map(dark.with(light.id()))).toList();
    SetupMap ambient = map(dark.withAmbient());
    for (int column = 0; column < 9; column++) {
      for (int row = 0; row < 9; row++) {
        double sum = ambient.map().sumAt(column, row).value();
        for (SetupMap part : parts) {
          sum += part.map().sumAt(column, row).value();
        }
        double all = whole.map().sumAt(column, row).value();
        assertEquals(all, sum, 1e-12 * all);
      }
    }
  }

  private static SetupMap map(Burning burning) {
    return SetupMap.of(
        SETUP,
        new MapQuestion(
            new MapQuestion.Level(new Point(-4, -4, 1.5), new Metres(8), new Metres(8)),
            9,
            9,
            MapQuestion.Held.TOWARD_CAMERA,
            IntStream.rangeClosed(-3, 2).mapToObj(Stops::new).toList(),
            false),
        burning);
  }
}
