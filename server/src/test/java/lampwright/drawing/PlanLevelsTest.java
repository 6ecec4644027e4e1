package lampwright.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Objects;
import java.util.SplittableRandom;
import lampwright.engine.light.Point;
import lampwright.engine.unit.Metres;
import lampwright.setup.DemoSeeds;
import lampwright.setup.MapQuestion;
import lampwright.setup.SetupDocument;
import lampwright.setup.figures.Figures;
import lampwright.setup.figures.FiguresComputation;
import lampwright.setup.figures.SetupMap;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jsoup.parser.Parser;
import org.junit.jupiter.api.Test;

class PlanLevelsTest {

  private static Drawing draw(SetupDocument setup) {
    return Plan.draw(
        setup, FiguresComputation.of(setup), setup.numbersInBuildOrder(), UsualNotation.READ, true);
  }

  /** Asks the engine for the level at each corner of a line, one point at a time. */
  @Test
  void linesPassWhereTheEngineSaysTheLevelIs() {
    SetupDocument setup = InventedSetups.round(5);
    Sheet sheet = draw(setup).sheet();
    PlanLevels levels = PlanLevels.of(sheet, setup).orElseThrow();
    assertTrue(levels.levels().contains(0));
    int checked = 0;
    for (PlanLevels.Line line : levels.lines()) {
      for (int i = 0; i < line.spots().size(); i += 7) {
        Spot spot = line.spots().get(i);
        double x =
            sheet.extent().left() + (spot.x() - sheet.frame().left()) / sheet.unitsPerMetre();
        double y = sheet.extent().far() - (spot.y() - sheet.frame().top()) / sheet.unitsPerMetre();
        // Close to a face the level changes a stop within a cell: straight lines do not follow;
        // else to a tenth of a stop, a meter's last digit.
        boolean nearAFace =
            setup.lights().stream()
                .anyMatch(
                    light ->
                        light.place().distanceTo(new Point(x, y, light.place().z())).value() < 1.4);
        if (!nearAFace) {
          // The plane looks to the camera from its middle, so the middle must stay the same.
          double middleX = (sheet.extent().left() + sheet.extent().right()) / 2;
          double middleY = (sheet.extent().near() + sheet.extent().far()) / 2;
          double halfX = Math.abs(x - middleX) + 1e-6;
          double halfY = Math.abs(y - middleY) + 1e-6;
          MapQuestion point =
              new MapQuestion(
                  new MapQuestion.Level(
                      new Point(middleX - halfX, middleY - halfY, levels.heightM()),
                      new Metres(2 * halfX),
                      new Metres(2 * halfY)),
                  2,
                  2,
                  MapQuestion.Held.TOWARD_CAMERA,
                  java.util.List.of(),
                  false);
          double[] corners = SetupMap.of(setup, point).levels();
          int corner = (x > middleX ? 1 : 0) + (y > middleY ? 2 : 0);
          assertEquals(line.level(), corners[corner], 0.1, "at " + x + ", " + y);
          checked++;
        }
      }
    }
    assertTrue(checked > 20, "checked " + checked);
  }

  @Test
  void theZeroIsHeavierAndOnlyLinesThatAreThereAreTold() {
    SetupDocument setup = InventedSetups.round(5);
    Document plan = Jsoup.parse(draw(setup).svg().markup(), "", Parser.xmlParser());
    assertEquals(1, plan.select("path.plan-contour-zero").size());
    PlanLevels levels = PlanLevels.of(draw(setup).sheet(), setup).orElseThrow();
    assertEquals(levels.levels().size() - 1, plan.select("path.plan-contour").size());
    assertTrue(plan.expectFirst("desc").text().contains("1.6 m above the ground"));
    assertTrue(plan.select("text.plan-contour-figure").size() >= 2);
  }

  @Test
  void levelsLieUnderEveryThingAndCanBeLeftOut() {
    SetupDocument setup = InventedSetups.round(5);
    String markup = draw(setup).svg().markup();
    assertTrue(markup.lastIndexOf("plan-contour\"") < markup.indexOf("class=\"piece\""));
    Figures figures = FiguresComputation.of(setup);
    assertFalse(
        Plan.withoutLevels(setup, figures, UsualNotation.READ).markup().contains("plan-contour"));
  }

  @Test
  void labelsKeepApartOverAllDemoSetupsAndOthers() {
    new DemoSeeds().setups().forEach((name, setup) -> DrawingChecks.check(draw(setup), name));
    for (long seed = 500; seed < 520; seed++) {
      SetupDocument setup = InventedSetups.anywhere(new SplittableRandom(seed));
      DrawingChecks.check(draw(setup), "seed " + seed);
    }
  }

  /** The compass says where: a bearing of the camera's own is straight up the sheet. */
  @Test
  void theSunStandsOnItsBearing() {
    SetupDocument setup = Objects.requireNonNull(new DemoSeeds().setups().get("last-boat-out"));
    Figures figures = FiguresComputation.of(setup);
    var sun = figures.sun().orElseThrow();
    double relative = sun.ofCamera().orElseThrow().relativeAzimuth().value();
    Document plan =
        Jsoup.parse(
            Plan.withoutLevels(setup, figures, UsualNotation.READ).markup(),
            "",
            Parser.xmlParser());
    Element circle = plan.expectFirst("circle.plan-sun");
    Element svg = plan.expectFirst("svg");
    double right =
        Double.parseDouble(circle.attr("cx")) - Double.parseDouble(svg.attr("data-origin-x"));
    double away =
        Double.parseDouble(svg.attr("data-origin-y")) - Double.parseDouble(circle.attr("cy"));
    Point camera = setup.camera().orElseThrow().place().orElseThrow();
    Point aim = setup.camera().orElseThrow().aim().orElse(new Point(0, 0, 0));
    double axis = Math.toDegrees(Math.atan2(aim.x() - camera.x(), aim.y() - camera.y()));
    assertEquals(relative, Math.toDegrees(Math.atan2(right, away)) - axis, 0.1);
  }
}
