package lampwright.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.SplittableRandom;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lampwright.setup.SetupDocument;
import lampwright.setup.figures.FiguresComputation;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jsoup.parser.Parser;
import org.junit.jupiter.api.Test;

class PlanTest {

  private static final Pattern LINE =
      Pattern.compile("M(-?[0-9.]+) (-?[0-9.]+)L(-?[0-9.]+) (-?[0-9.]+)");

  /** Ends are written to a tenth of a unit. */
  private static final double ROUNDING = 0.15;

  private static Document plan(SetupDocument setup) {
    return Jsoup.parse(
        Plan.of(setup, FiguresComputation.of(setup), UsualNotation.READ).markup(),
        "",
        Parser.xmlParser());
  }

  private static double scale(Document plan) {
    return Double.parseDouble(plan.expectFirst("svg").attr("data-units-per-metre"));
  }

  private static double[] line(Element path) {
    Matcher line = LINE.matcher(path.attr("d"));
    assertTrue(line.matches(), path.attr("d"));
    return new double[] {
      Double.parseDouble(line.group(1)),
      Double.parseDouble(line.group(2)),
      Double.parseDouble(line.group(3)),
      Double.parseDouble(line.group(4))
    };
  }

  private static double length(Element path) {
    double[] ends = line(path);
    return Math.hypot(ends[2] - ends[0], ends[3] - ends[1]);
  }

  @Test
  void everyLightHasFaceWedgeAimAndNumber() {
    for (int lights : new int[] {1, 2, 5, 7, 12}) {
      Document plan = plan(InventedSetups.round(lights));
      for (String sign : List.of("path.plan-light", "path.plan-spread", "circle.plan-disc")) {
        assertEquals(lights, plan.select(sign).size(), sign);
      }
      assertEquals(lights, plan.select("path.plan-aim").size());
    }
  }

  @Test
  void faceIsDrawnInItsTrueLength() {
    Document plan = plan(InventedSetups.round(2));
    assertEquals(0.9 * scale(plan), length(plan.select("path.plan-light").get(0)), ROUNDING);
    assertEquals(1.5 * scale(plan), length(plan.select("path.plan-light").get(1)), ROUNDING);
  }

  @Test
  void faceStandsAcrossItsAim() {
    Document plan = plan(InventedSetups.round(7));
    for (int i = 0; i < 7; i++) {
      double[] face = line(plan.select("path.plan-light").get(i));
      double[] aim = line(plan.select("path.plan-aim").get(i));
      double faceX = face[2] - face[0];
      double faceY = face[3] - face[1];
      double aimX = aim[2] - aim[0];
      double aimY = aim[3] - aim[1];
      double cosine =
          (faceX * aimX + faceY * aimY) / Math.hypot(faceX, faceY) / Math.hypot(aimX, aimY);
      assertEquals(0, cosine, 0.02, "light " + (i + 1));
    }
  }

  @Test
  void bothAxesHaveOneScale() {
    // Walls of 4 m, one across and one away from the camera.
    Document plan =
        plan(
            InventedSetups.titled("Two walls")
                .wall("across", -2, 3, 2, 3)
                .wall("away", 3, -2, 3, 2)
                .light(0, -2, -2, 2, null)
                .read());
    assertEquals(4 * scale(plan), length(plan.select("path.plan-surface").get(0)), ROUNDING);
    assertEquals(4 * scale(plan), length(plan.select("path.plan-surface").get(1)), ROUNDING);
  }

  @Test
  void numbersFollowTheBuildOrder() {
    SetupDocument setup =
        InventedSetups.titled("Rim first")
            .light(0, -3, -2, 2, null)
            .light(1, 3, 2, 2, null)
            .built(1, 0)
            .read();
    Document plan = plan(setup);
    assertEquals("1", plan.select("text.plan-disc-figure").get(0).text());
    double first = Double.parseDouble(plan.select("circle.plan-disc").get(0).attr("cx"));
    double second = Double.parseDouble(plan.select("circle.plan-disc").get(1).attr("cx"));
    assertTrue(first > second, "the fill, at the right, is built first");
    PlanTable table = PlanTable.of(setup, FiguresComputation.of(setup), UsualNotation.READ);
    assertEquals("1 Fill", table.rows().getFirst().numbered());
    assertEquals("3 m right", table.rows().getFirst().across());
    assertEquals("2 m nearer", table.rows().get(1).away());
  }

  @Test
  void distanceOnAnAimIsTheTrueOneThroughTheAir() {
    // 3 m aside and 4 m up make 5 m.
    Document plan = plan(InventedSetups.titled("High").light(0, -3, 0, 5.6, null).read());
    assertEquals("5.0 m", plan.select("text.plan-label.plan-figure").text());
  }

  @Test
  void wordsOfPeopleNeverBecomeMarkup() {
    String hostile = "<script>alert('x')</script>";
    SetupDocument setup =
        InventedSetups.titled(hostile)
            .subject("\"><script>", 0, 0, 0)
            .wall("]]><script src=x>", -2, 3, 2, 3)
            .light(0, -2, -2, 2, null)
            .read();
    Document plan = plan(setup);
    assertTrue(plan.select("script").isEmpty());
    assertEquals("Plan of " + hostile, plan.expectFirst("svg > title").text());
    assertTrue(Plan.small(setup, UsualNotation.READ).markup().contains("&lt;script&gt;"));
    assertFalse(Plan.small(setup, UsualNotation.READ).markup().contains("<script"));
  }

  @Test
  void whatStandsFarOffIsAnArrowWithItsDistance() {
    Document plan =
        plan(
            InventedSetups.titled("Far wall")
                .wall("sea wall", -20, 40, 20, 40)
                .light(0, -2, -2, 2, null)
                .read());
    assertEquals(1, plan.select("path.plan-far").size());
    assertEquals("sea wall, 40 m off", plan.expectFirst("text.plan-label").text());
    assertTrue(plan.select("path.plan-surface").isEmpty());
  }

  @Test
  void drawingsOnOnePageHaveTheirOwnIds() {
    SetupDocument setup = InventedSetups.round(5);
    Document plan = plan(setup);
    Element svg = plan.expectFirst("svg");
    assertEquals(svg.attr("aria-labelledby"), plan.expectFirst("title").id());
    assertEquals(svg.attr("aria-describedby"), plan.expectFirst("desc").id());
    assertNotEquals(
        svg.attr("aria-labelledby"),
        plan(InventedSetups.round(6)).expectFirst("svg").attr("aria-labelledby"));
  }

  @Test
  void drawingNeedsNoStyleAttributesAndIsSmallAndTheSameEveryTime() {
    SetupDocument setup = InventedSetups.round(6);
    String markup = Plan.of(setup, FiguresComputation.of(setup), UsualNotation.READ).markup();
    assertFalse(markup.contains("style="));
    int bytes = markup.getBytes(StandardCharsets.UTF_8).length;
    assertTrue(bytes < 24_000, bytes + " bytes");
    assertEquals(markup, Plan.of(setup, FiguresComputation.of(setup), UsualNotation.READ).markup());
  }

  @Test
  void smallPlanKeepsOfAllWordsOnlyTheNumbers() {
    Document small =
        Jsoup.parse(
            Plan.small(InventedSetups.round(5), UsualNotation.READ).markup(),
            "",
            Parser.xmlParser());
    assertEquals(5, small.select("text").size());
    assertEquals(5, small.select("text.plan-disc-figure").size());
    assertTrue(small.select(".plan-tick").isEmpty());
    assertTrue(small.select("[id]").isEmpty(), "two copies may stand in one list");
  }

  @Test
  void labelsNeverCollideNorLeaveTheFrame() {
    for (long seed = 1; seed <= 300; seed++) {
      SetupDocument setup = InventedSetups.anywhere(new SplittableRandom(seed));
      Drawing drawing =
          Plan.draw(
              setup,
              FiguresComputation.of(setup),
              setup.numbersInBuildOrder(),
              UsualNotation.READ,
              false);
      List<Label.Placed> labels = drawing.labels();
      DrawingChecks.checkLabels(drawing.sheet().frame(), labels, "seed " + seed);
      long numbers =
          labels.stream().filter(label -> label.label().kind() == Label.Kind.DISC).count();
      assertEquals(setup.lights().size(), numbers, "numbers, seed " + seed);
    }
  }
}
