package lampwright.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lampwright.engine.light.EmittingFace;
import lampwright.engine.light.FallOff;
import lampwright.engine.unit.Metres;
import lampwright.engine.unit.Stops;
import lampwright.language.LengthUnit;
import lampwright.language.Notation;
import lampwright.wording.Wording;

/**
 * How the light of a small source falls from one metre to four. The leaves are a third of a stop
 * apart, so that the distances run like the f-numbers.
 */
public final class DistanceBook {

  private static final Metres NEAREST = new Metres(1);
  private static final int THIRDS = 12;
  private static final double UNITS_A_METRE = 72;
  private static final Box FRAME = new Box(FlipSheet.LEFT, 8, FlipSheet.RIGHT, 132);
  private static final double HEIGHT = 154;
  private static final Spot LIGHT = new Spot(28, 70);
  private static final double SUBJECT = 9;
  private static final double ARC = 55;
  private static final double FIGURES = 40;
  private static final Spot TOWARD_LIGHT = new Spot(-1, 0);

  private final Notation notation;
  private final Wording words;

  private DistanceBook(Notation notation) {
    this.notation = notation;
    this.words = new Wording(notation);
  }

  /** The book in somebody's words. */
  public static FlipBook of(Notation notation) {
    return new DistanceBook(notation).book();
  }

  private FlipBook book() {
    List<FlipBook.Leaf> leaves = new ArrayList<>();
    for (int third = 0; third <= THIRDS; third++) {
      leaves.add(leaf(FallOff.inverseSquareDistance(NEAREST, Stops.THIRD.times(-third))));
    }
    return new FlipBook("distance", notation.say("glossary.draw.distance.label"), leaves);
  }

  private FlipBook.Leaf leaf(Metres distance) {
    Stops level = new EmittingFace.PointSource().change(NEAREST, distance);
    String far = FlipSheet.unbroken(notation.tape(distance));
    String says =
        words.isNothing(level)
            ? notation.say("glossary.draw.distance.start", far)
            : notation.say(
                "glossary.draw.distance.says",
                far,
                words.stops(-level.value()),
                FlipSheet.unbroken(notation.tape(NEAREST)));
    StopRuler ruler =
        StopRuler.of(notation.say("glossary.draw.level"), notation)
            .withNames(notation.tape(NEAREST), far)
            .withDot(0)
            .withBar(level.value());
    return new FlipBook.Leaf(
        far, says, drawing(distance, far), Optional.of(FlipBook.Ruler.of(ruler)));
  }

  private Svg drawing(Metres distance, String far) {
    Markup body = new Markup();
    Strokes beam =
        new Strokes()
            .from(LIGHT)
            .to(new Spot(FRAME.right(), FRAME.top()))
            .to(new Spot(FRAME.right(), FRAME.bottom()))
            .close();
    body.path("plan-spread", beam);
    FlipSheet.box(body, "plan-frame", FRAME);
    drawScale(body);
    for (int stop = 0; stop <= THIRDS / 3; stop++) {
      drawLevel(body, stop);
    }
    Spot subject = LIGHT.plus(new Spot(distance.value() * UNITS_A_METRE, 0));
    body.path("plan-aim", new Strokes().from(LIGHT).to(subject.plus(new Spot(-SUBJECT, 0))));
    body.path(
        "plan-light",
        new Strokes().from(LIGHT.plus(new Spot(0, -6))).to(LIGHT.plus(new Spot(0, 6))));
    FlipSheet.subject(body, subject, SUBJECT, TOWARD_LIGHT);
    Spot middle = LIGHT.plus(subject).times(0.5);
    PlanFrame.text(body, "flip-figure flip-aim", far, "middle", middle.plus(new Spot(0, -13)));
    return FlipSheet.svg(HEIGHT, notation.say("glossary.draw.distance.title", far), body);
  }

  /** The line on which the light is so many stops down, with its figure. */
  private static void drawLevel(Markup body, int stops) {
    double radius =
        FallOff.inverseSquareDistance(NEAREST, new Stops(-stops)).value() * UNITS_A_METRE;
    double across = Math.sqrt(radius * radius - ARC * ARC);
    Spot from = LIGHT.plus(new Spot(across, -ARC));
    Spot to = LIGHT.plus(new Spot(across, ARC));
    body.path(
        stops == 0 ? "plan-contour-zero" : "plan-contour",
        new Strokes().from(from).arc(radius, to));
    Spot figure = LIGHT.plus(new Spot(Math.sqrt(radius * radius - FIGURES * FIGURES), FIGURES));
    FlipSheet.level(body, PlanLevels.figure(-stops), figure);
  }

  private void drawScale(Markup body) {
    double unit = notation.lengths().metres() * UNITS_A_METRE;
    int step = notation.lengths() == LengthUnit.METRES ? 1 : 3;
    int count = (int) ((FRAME.right() - LIGHT.x()) / (unit * step)) + 1;
    Spot zero = new Spot(LIGHT.x(), FRAME.bottom());
    body.path("plan-tick", FlipSheet.ticks(zero, unit * step, count));
    for (int i = 0; i < count; i++) {
      String figure = notation.fixed(i * step, 0);
      FlipSheet.figure(
          body,
          i == count - 1 ? figure + " " + notation.lengthSign() : figure,
          "middle",
          zero.plus(new Spot(i * unit * step, 13)));
    }
  }
}
