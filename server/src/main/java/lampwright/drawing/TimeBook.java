package lampwright.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lampwright.engine.exposure.Ambient;
import lampwright.engine.exposure.Ev100;
import lampwright.engine.exposure.ExposureSettings;
import lampwright.engine.exposure.FNumber;
import lampwright.engine.exposure.Iso;
import lampwright.engine.exposure.MeterConstant;
import lampwright.engine.exposure.ShutterTime;
import lampwright.engine.light.LightSum;
import lampwright.engine.unit.Stops;
import lampwright.language.Notation;
import lampwright.wording.Wording;

/**
 * A shorter shutter time lowers the ambient and leaves the flash. At f/8 and ISO 100 the flash
 * alone gives the exposure; the ambient is as bright at the longest time, and the shortest is the
 * body's sync time.
 */
public final class TimeBook {

  private static final int THIRDS = 12;
  private static final FNumber APERTURE = FNumber.ofMark(8);
  private static final ShutterTime LONGEST = ShutterTime.parse("1/15");
  private static final Ambient AMBIENT = Ambient.of(new Ev100(10));
  private static final Iso ISO = new Iso(100);
  private static final MeterConstant METER = MeterConstant.FLAT;

  private static final double TOP = 14;
  private static final double BOTTOM = 134;
  private static final double HEIGHT = 156;
  private static final double LEFT = 34;
  private static final Chart CHART =
      new Chart(new Box(LEFT, TOP, FlipSheet.RIGHT, BOTTOM), -0.5, THIRDS / 3 + 0.5, -4.5, 1.2);

  private final Notation notation;
  private final Wording words;

  private TimeBook(Notation notation) {
    this.notation = notation;
    this.words = new Wording(notation);
  }

  /** The book in somebody's words. */
  public static FlipBook of(Notation notation) {
    return new TimeBook(notation).book();
  }

  private static ShutterTime time(int third) {
    return LONGEST.plus(Stops.THIRD.times(-third));
  }

  private static ExposureSettings settings(int third) {
    return ExposureSettings.of(APERTURE, time(third), ISO);
  }

  private FlipBook book() {
    List<FlipBook.Leaf> leaves = new ArrayList<>();
    for (int third = 0; third <= THIRDS; third++) {
      leaves.add(leaf(third));
    }
    return new FlipBook("time", notation.say("glossary.draw.time.label"), leaves);
  }

  private FlipBook.Leaf leaf(int third) {
    ExposureSettings settings = settings(third);
    LightSum light =
        new LightSum(APERTURE.toExposure(ISO, METER), AMBIENT.exposure(settings.time(), METER));
    Stops ambient = AMBIENT.offset(settings);
    Stops together = light.offset(settings, METER);
    String over =
        words.isNothing(together)
            ? notation.say("glossary.draw.time.exposed")
            : notation.say("glossary.draw.time.over", words.stops(together.value()));
    String time = words.time(settings.time());
    String says =
        words.isNothing(ambient)
            ? notation.say("glossary.draw.time.level", time, over)
            : notation.say(
                "glossary.draw.time.says", time, words.stops(ambient.negated().value()), over);
    StopRuler ruler =
        StopRuler.of(notation.say("glossary.draw.level"), notation)
            .withNames(
                notation.say("glossary.draw.time.flash"),
                notation.say("glossary.draw.time.ambient"))
            .withDot(0)
            .withBar(ambient.value());
    return new FlipBook.Leaf(
        time + " s", says, drawing(third, time), Optional.of(FlipBook.Ruler.of(ruler)));
  }

  private Svg drawing(int third, String time) {
    Markup body = new Markup();
    FlipSheet.box(body, "plan-frame", CHART.frame());
    Strokes ticks = new Strokes();
    for (int stop = 0; stop <= THIRDS / 3; stop++) {
      Spot below = new Spot(CHART.spot(stop, 0).x(), BOTTOM);
      ticks.from(below).to(below.plus(new Spot(0, -7)));
      FlipSheet.figure(body, words.time(time(stop * 3)), "middle", below.plus(new Spot(0, 13)));
      Spot aside = new Spot(LEFT, CHART.spot(0, -stop).y());
      ticks.from(aside).to(aside.plus(new Spot(7, 0)));
      FlipSheet.figure(body, PlanLevels.figure(-stop), "end", aside.plus(new Spot(-6, 0)));
    }
    body.path("plan-tick", ticks);
    double at = third / 3.0;
    body.path(
        "chart-moment",
        new Strokes()
            .line(new Segment(CHART.spot(at, CHART.fromY()), CHART.spot(at, CHART.toY()))));
    body.path(
        "flip-flash", new Strokes().line(new Segment(CHART.spot(0, 0), CHART.spot(THIRDS / 3, 0))));
    body.path(
        "chart-line chart-model", new Strokes().line(new Segment(ambientAt(0), ambientAt(THIRDS))));
    FlipSheet.words(
        body,
        notation.say("glossary.draw.time.flash"),
        "end",
        CHART.spot(THIRDS / 3 - 0.25, 0).plus(new Spot(0, -15)));
    FlipSheet.words(body, notation.say("glossary.draw.time.ambient"), "start", CHART.spot(0, -2.7));
    body.circle("ruler-dot", CHART.spot(at, 0), 6.5);
    body.circle("chart-dot", ambientAt(third), 4);
    return FlipSheet.svg(HEIGHT, notation.say("glossary.draw.time.title", time), body);
  }

  private static Spot ambientAt(int third) {
    return CHART.spot(third / 3.0, AMBIENT.offset(settings(third)).value());
  }
}
