package lampwright.drawing;

import java.util.Optional;
import java.util.stream.IntStream;
import lampwright.engine.lens.FocusedLens;
import lampwright.engine.lens.ImageMotion;
import lampwright.engine.lens.SensorFormat;
import lampwright.engine.power.FlashPulse;
import lampwright.engine.unit.MetresPerSecond;
import lampwright.engine.unit.Seconds;
import lampwright.engine.unit.Stops;
import lampwright.language.Notation;
import lampwright.setup.signature.Freezing;
import lampwright.setup.signature.MovingSubject;
import lampwright.wording.Wording;

/**
 * How a head that cuts its flash short freezes better at lower power: a point of light on a runner
 * who crosses the picture five metres before a 50 mm lens on 36 × 24 mm, as the flash draws it.
 */
public final class PowerBook {

  private static final int STEPS = 12;
  private static final double STOPS_A_STEP = 0.5;

  /** A battery head of middling speed: a judgement. */
  private static final FlashPulse PULSE = new FlashPulse.Cut(new Seconds(1 / 400.0));

  private static final ImageMotion RUNNER =
      ImageMotion.across(FocusedLens.of(50, 8, 5), new MetresPerSecond(5));

  private static final double CIRCLE_MM =
      SensorFormat.FULL_FRAME.diagonal().value() / SensorFormat.USUAL_CIRCLE_DIVISOR;

  private static final double HEIGHT = 94;
  private static final double UNITS_A_CIRCLE = 20.8;
  private static final Spot BEGIN = new Spot(22, 24);
  private static final double SCALE = 70;
  private static final int CIRCLES = 15;
  private static final int FIGURE_EVERY = 3;

  private final Notation notation;
  private final Wording words;

  private PowerBook(Notation notation) {
    this.notation = notation;
    this.words = new Wording(notation);
  }

  /** The book in somebody's words. */
  public static FlipBook of(Notation notation) {
    return new PowerBook(notation).book();
  }

  private FlipBook book() {
    return new FlipBook(
        "power",
        notation.say("glossary.draw.power.label"),
        IntStream.rangeClosed(0, STEPS)
            .mapToObj(step -> leaf(new Stops(step * STOPS_A_STEP)))
            .toList());
  }

  private FlipBook.Leaf leaf(Stops down) {
    Seconds duration = PULSE.tenthTime(down);
    double circles = RUNNER.blur(duration).value() / CIRCLE_MM;
    String drawsFor = words.duration(duration);
    boolean isFull = down.value() == 0;
    String full = notation.say("glossary.draw.power.full");
    String power =
        isFull ? full : notation.say("glossary.draw.power.at", words.stops(down.value()));
    return new FlipBook.Leaf(
        isFull ? full : notation.signed(down.negated()),
        notation.say(
            "glossary.draw.power.says",
            Wording.capital(power),
            drawsFor,
            notation.count(
                "glossary.draw.power.circles",
                notation.fixed(circles, 1).equals(notation.fixed(1, 1)) ? 1 : 2,
                notation.fixed(circles, 1)),
            notation.say("signature.freezing." + Wording.key(kind(circles)))),
        drawing(circles, drawsFor),
        Optional.empty());
  }

  private static Freezing.Kind kind(double circles) {
    return circles <= MovingSubject.FROZEN_CIRCLES
        ? Freezing.Kind.FROZEN
        : circles <= MovingSubject.SLIGHTLY_SOFT_CIRCLES
            ? Freezing.Kind.SLIGHTLY_SOFT
            : Freezing.Kind.BLURRED;
  }

  private Svg drawing(double circles, String drawsFor) {
    Markup body = new Markup();
    Spot scale = new Spot(BEGIN.x(), SCALE);
    FlipSheet.box(
        body,
        "chart-band",
        new Box(
            scale.x(),
            SCALE - 7,
            scale.x() + MovingSubject.SLIGHTLY_SOFT_CIRCLES * UNITS_A_CIRCLE,
            SCALE));
    FlipSheet.box(
        body,
        "flip-frozen",
        new Box(
            scale.x(),
            SCALE - 7,
            scale.x() + MovingSubject.FROZEN_CIRCLES * UNITS_A_CIRCLE,
            SCALE));
    Strokes line = FlipSheet.ticks(scale, UNITS_A_CIRCLE, CIRCLES + 1);
    body.path("plan-tick", line.from(scale).to(scale.plus(new Spot(CIRCLES * UNITS_A_CIRCLE, 0))));
    for (int at = 0; at <= CIRCLES; at += FIGURE_EVERY) {
      FlipSheet.figure(
          body, notation.fixed(at, 0), "middle", scale.plus(new Spot(at * UNITS_A_CIRCLE, 13)));
    }
    FlipSheet.words(
        body,
        notation.say("glossary.draw.power.scale"),
        "end",
        scale.plus(new Spot(CIRCLES * UNITS_A_CIRCLE, -17)));
    double radius = UNITS_A_CIRCLE / 2;
    Spot end = BEGIN.plus(new Spot(circles * UNITS_A_CIRCLE, 0));
    Spot up = new Spot(0, -radius);
    Spot down = new Spot(0, radius);
    body.path(
        "flip-blur",
        new Strokes()
            .from(BEGIN.plus(up))
            .to(end.plus(up))
            .arc(radius, end.plus(down))
            .to(BEGIN.plus(down))
            .arc(radius, BEGIN.plus(up))
            .close());
    body.circle("flip-circle", BEGIN, radius);
    return FlipSheet.svg(HEIGHT, notation.say("glossary.draw.power.title", drawsFor), body);
  }
}
