package lampwright.learning.drill;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import lampwright.engine.exposure.MarkedScale;
import lampwright.engine.exposure.ShutterTime;
import lampwright.engine.unit.Stops;
import lampwright.gear.Body;
import lampwright.language.Filling;
import lampwright.language.Said;
import lampwright.setup.Camera;
import lampwright.setup.Light;
import lampwright.setup.figures.ShutterComputation;
import lampwright.setup.figures.ShutterEffect;

/** What a time does to the flash, and the grey filter that spares one a time beyond sync. */
final class FasterThanSync implements Maker {

  private static final double SHORTEST_S = 1.0 / 8192;

  /** Less loss than this is none that one sees; more than the other surely is. */
  private static final double NO_LOSS = 0.1;

  private static final double SURE_LOSS = 0.5;

  /** What the picture gets of the flash. */
  private enum Outcome {
    WHOLE,
    STRIP,
    BURST,
    NONE;

    Said text() {
      return Said.of(
          switch (this) {
            case WHOLE -> "drilling.sync.option.whole";
            case STRIP -> "drilling.sync.option.strip";
            case BURST -> "drilling.sync.option.burst";
            case NONE -> "drilling.sync.option.none";
          });
    }
  }

  @Override
  public Optional<Drill> make(Material material, Dice dice) {
    return material
        .setup()
        .camera()
        .flatMap(Camera::body)
        .filter(body -> MarkedScale.SHUTTER_THIRD.findExact(body.sync().seconds()).isPresent())
        .flatMap(
            body ->
                dice.flip()
                    ? filter(material, body, dice.pick(List.of(1, 2, 3, 4)))
                    : picture(material, body, dice));
  }

  private static Optional<Drill> filter(Material material, Body body, int stops) {
    ShutterTime wished = body.sync().plus(new Stops(-stops));
    if (wished.seconds() < SHORTEST_S) {
      return Optional.empty();
    }
    double factor = new Stops(stops).toFactor();
    return Optional.of(
        new Drill(
            DrillKind.SYNC,
            List.of(
                Said.of("drilling.sync.given", Filling.shown(body.sync())),
                Said.of(
                    "drilling.sync.given.wish",
                    Filling.shown(material.setup().exposure().fNumber()),
                    Filling.shown(wished))),
            Said.of("drilling.sync.question.filter"),
            Fair.number(
                Measure.STOPS_SET,
                stops,
                new Answer.Slip(factor, Said.of("drilling.sync.slip.factor")),
                new Answer.Slip(-stops, Said.of("drilling.sync.slip.sign"))),
            List.of(
                Said.of(
                    "drilling.sync.why.filter",
                    new Filling.Rounded(factor, 0),
                    new Filling.Briefly(stops))),
            List.of()));
  }

  private static Optional<Drill> picture(Material material, Body body, Dice dice) {
    Light light = dice.pick(material.setup().lights());
    ShutterTime time = body.sync().plus(new Stops(dice.pick(List.of(-2, -1, 0, 1))));
    boolean isPossible =
        time.seconds() >= SHORTEST_S
            && (body.shutter() == Body.Shutter.FOCAL_PLANE
                || !new ShutterComputation(body).isFasterThanSync(time));
    if (!isPossible) {
      return Optional.empty();
    }
    ShutterEffect effect =
        new ShutterComputation(body).effect(light.head(), light.stopsDown(), time);
    return outcome(effect).map(right -> drill(body, light, time, right, effect));
  }

  /** What surely happens; empty where it is neither one nor the other. */
  private static Optional<Outcome> outcome(ShutterEffect effect) {
    double loss = effect.wholeFrameOrNone().value();
    if (effect.longBurst()) {
      return loss >= SURE_LOSS ? Optional.of(Outcome.BURST) : Optional.empty();
    }
    if (effect.litShare() < 0.9) {
      return Optional.of(Outcome.STRIP);
    }
    boolean isWhole =
        effect.litShare() == 1
            && loss <= NO_LOSS
            && effect.worstEdge().map(edge -> edge.value() <= NO_LOSS).orElse(true);
    return isWhole ? Optional.of(Outcome.WHOLE) : Optional.empty();
  }

  private static Drill drill(
      Body body, Light light, ShutterTime time, Outcome right, ShutterEffect effect) {
    boolean hasBurst = light.head().longBurstEfficiency().isPresent();
    return new Drill(
        DrillKind.SYNC,
        List.of(
            Said.of(
                body.shutter() == Body.Shutter.LEAF
                    ? "drilling.sync.given.leaf"
                    : "drilling.sync.given.curtain",
                Filling.shown(body.sync())),
            Said.of(
                hasBurst ? "drilling.sync.given.burst" : "drilling.sync.given.single",
                Filling.text(Fair.quoted(light)))),
        Said.of("drilling.sync.question.picture", Filling.shown(time)),
        Choosing.among(
            Arrays.asList(Outcome.values()),
            right,
            Outcome::text,
            option ->
                option == Outcome.WHOLE
                    ? Optional.of(Said.of("drilling.sync.slip.tooFast"))
                    : option == Outcome.STRIP && right == Outcome.WHOLE
                        ? Optional.of(Said.of("drilling.sync.slip.slowEnough"))
                        : Optional.empty()),
        List.of(
            switch (right) {
              case WHOLE -> Said.of("drilling.sync.why.whole");
              case STRIP ->
                  Said.of("drilling.sync.why.strip", Filling.number(effect.litShare() * 100, 0));
              case BURST ->
                  Said.of(
                      "drilling.sync.why.burst",
                      new Filling.Briefly(Fair.shown(effect.wholeFrameOrNone().value(), 1)));
              case NONE -> throw new IllegalStateException("No such picture is ever asked for.");
            }),
        effect.workings());
  }
}
