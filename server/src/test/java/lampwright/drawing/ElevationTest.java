package lampwright.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import lampwright.engine.light.Point;
import lampwright.engine.light.Pose;
import lampwright.engine.light.SourceFrame;
import lampwright.engine.light.UnitVector;
import lampwright.engine.unit.Degrees;
import lampwright.engine.unit.Metres;
import lampwright.language.Language;
import lampwright.language.LengthUnit;
import lampwright.language.Notation;
import lampwright.language.PhraseFiles;
import lampwright.language.StopFraction;
import lampwright.setup.DemoSeeds;
import lampwright.setup.Light;
import lampwright.setup.SetupDocument;
import lampwright.setup.figures.Figures;
import lampwright.setup.figures.FiguresComputation;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jsoup.parser.Parser;
import org.junit.jupiter.api.Test;

class ElevationTest {

  private static final Notation GERMAN_FEET =
      new Notation(PhraseFiles.read(Language.GERMAN), LengthUnit.FEET, StopFraction.THIRDS);

  private static Document read(Svg svg) {
    return Jsoup.parse(svg.markup(), "", Parser.xmlParser());
  }

  private static Document side(SetupDocument setup) {
    return read(Elevation.side(setup, FiguresComputation.of(setup), UsualNotation.READ));
  }

  private static double number(Document drawing, String hook) {
    return Double.parseDouble(drawing.expectFirst("svg").attr(hook));
  }

  private static double[] numbers(Element path) {
    return java.util.Arrays.stream(path.attr("d").split("[MLz ]+", -1))
        .filter(part -> !part.isEmpty())
        .mapToDouble(Double::parseDouble)
        .toArray();
  }

  @Test
  void aLightTwoMetresUpIsDrawnTwoMetresTimesTheScaleOverTheGround() {
    Document side = side(InventedSetups.titled("High").light(0, -1, -3, 2, null).read());
    double[] stand = numbers(side.expectFirst("path.plan-stand"));
    double scale = number(side, "data-units-per-metre");
    assertEquals(2 * scale, stand[1] - stand[3], 0.15, "height");
    assertEquals(number(side, "data-origin-x") - 3 * scale, stand[0], 0.15, "nearer the camera");
    assertEquals(number(side, "data-origin-y"), stand[1], 0.15, "foot on the ground");
  }

  @Test
  void bothElevationsAndThePlanHaveTheHooksOfEveryPieceOnce() {
    SetupDocument setup = InventedSetups.round(4);
    Figures figures = FiguresComputation.of(setup);
    for (Svg svg :
        List.of(
            Plan.of(setup, figures, UsualNotation.READ),
            Elevation.side(setup, figures, UsualNotation.READ),
            Elevation.front(setup, figures, UsualNotation.READ))) {
      List<String> pieces = read(svg).select("g.piece").eachAttr("data-piece");
      Set<String> expected = new HashSet<>(Set.of("camera", "subject/0", "mark/0/0", "mark/0/1"));
      for (Light light : setup.lights()) {
        expected.add("light/" + light.id().text());
        expected.add("target/" + light.id().text());
      }
      assertEquals(expected, new HashSet<>(pieces));
      assertEquals(expected.size(), pieces.size(), "no group twice");
    }
  }

  @Test
  void facesAreTheEnginesOwn() {
    SplittableRandom random = new SplittableRandom(11);
    for (int i = 0; i < 60; i++) {
      SetupDocument setup = InventedSetups.anywhere(random);
      for (Light light : setup.lights()) {
        LightOnPlan on = LightOnPlan.of(1, light, new Metres(1));
        Point place = light.place();
        Point axis = on.axis();
        SourceFrame frame =
            SourceFrame.of(
                new Pose(place, UnitVector.of(axis.x(), axis.y(), axis.z()), new Degrees(0)));
        double half = on.faceWidthM() / 2;
        double right = 0;
        for (Point corner : on.faceOutline()) {
          assertEquals(0, frame.beforeOf(corner.x(), corner.y(), corner.z()), 1e-9);
          right = Math.max(right, frame.rightOf(corner.x(), corner.y(), corner.z()));
        }
        // A disc's corners lie on it, its drawn width is short by less than a hundredth.
        assertEquals(half, right, 0.01 * half + 1e-9);
      }
    }
  }

  @Test
  void theHorizonIsAsHighAsTheLens() {
    Document side = side(InventedSetups.round(2));
    double[] horizon = numbers(side.expectFirst("path.plan-horizon"));
    double up = number(side, "data-origin-y") - horizon[1];
    assertEquals(1.2 * number(side, "data-units-per-metre"), up, 0.15);
  }

  @Test
  void everyDemoSetupIsLegibleAndWellFormedInTheLongerLanguageAndInFeet() {
    new DemoSeeds()
        .setups()
        .forEach(
            (name, setup) -> {
              Figures figures = FiguresComputation.of(setup);
              var numbers = setup.numbersInBuildOrder();
              DrawingChecks.check(Plan.draw(setup, figures, numbers, GERMAN_FEET, false), name);
              for (View view : List.of(View.SIDE, View.FRONT)) {
                DrawingChecks.check(
                    Elevation.draw(view, setup, figures, numbers, GERMAN_FEET), name + " " + view);
              }
            });
  }

  @Test
  void labelsNeverCollideNorLeaveTheFrame() {
    for (long seed = 1; seed <= 60; seed++) {
      SetupDocument setup = InventedSetups.anywhere(new SplittableRandom(seed));
      Figures figures = FiguresComputation.of(setup);
      for (View view : List.of(View.SIDE, View.FRONT)) {
        DrawingChecks.check(
            Elevation.draw(view, setup, figures, setup.numbersInBuildOrder(), UsualNotation.READ),
            "seed " + seed + " " + view);
      }
    }
  }

  @Test
  void wordsOfPeopleNeverBecomeMarkup() {
    SetupDocument setup =
        InventedSetups.titled("<script>x</script>")
            .subject("\"><script>", 0, 0, 0)
            .wall("]]><script src=x>", -2, 3, 2, 3)
            .light(0, -2, -2, 2, null)
            .read();
    Document side = side(setup);
    assertTrue(side.select("script").isEmpty());
    assertEquals(
        "Elevation of <script>x</script>, from the side", side.expectFirst("svg > title").text());
  }
}
