package lampwright.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lampwright.engine.light.LightingRatio;
import lampwright.engine.unit.Stops;
import lampwright.language.Notation;
import lampwright.wording.Wording;

/**
 * How the shadow side comes up as the fill does: from four stops under the key to level with it.
 * The bars are light itself, not stops, so that the ratio can be seen.
 */
public final class RatioBook {

  private static final int THIRDS = 12;
  private static final double HEIGHT = 146;
  private static final double BARS = 128;
  private static final double LEVEL = (FlipSheet.RIGHT - BARS) / 2;
  private static final double BAR = 22;
  private static final double LIT = 30;
  private static final double SHADOW = 104;
  private static final Spot HEAD = new Spot(58, 52);
  private static final double RADIUS = 24;
  private static final Spot TOWARD_CAMERA = new Spot(0, 1);

  private final Notation notation;
  private final Wording words;

  private RatioBook(Notation notation) {
    this.notation = notation;
    this.words = new Wording(notation);
  }

  /** The book in somebody's words. */
  public static FlipBook of(Notation notation) {
    return new RatioBook(notation).book();
  }

  private FlipBook book() {
    List<FlipBook.Leaf> leaves = new ArrayList<>();
    for (int third = THIRDS; third >= 0; third--) {
      leaves.add(leaf(new LightingRatio(Stops.THIRD.times(third))));
    }
    return new FlipBook("ratio", notation.say("glossary.draw.ratio.label"), leaves);
  }

  private FlipBook.Leaf leaf(LightingRatio ratio) {
    Stops apart = ratio.keyOverFill();
    String litToShadow = notation.fixed(ratio.litToShadow(), 1);
    String contrast = words.stops(ratio.contrast().value());
    String says =
        words.isNothing(apart)
            ? notation.say("glossary.draw.ratio.level", litToShadow, contrast)
            : notation.say(
                "glossary.draw.ratio.says", words.stops(apart.value()), litToShadow, contrast);
    StopRuler ruler =
        StopRuler.of(notation.say("glossary.draw.level"), notation)
            .withNames(
                notation.say("glossary.draw.ratio.lit"), notation.say("glossary.draw.ratio.shadow"))
            .withDot(0)
            .withBar(-ratio.contrast().value());
    return new FlipBook.Leaf(
        notation.signed(apart.negated()),
        says,
        drawing(ratio),
        Optional.of(FlipBook.Ruler.of(ruler)));
  }

  private Svg drawing(LightingRatio ratio) {
    Markup body = new Markup();
    drawHead(body);
    double fill = LEVEL / ratio.keyToFill();
    FlipSheet.words(
        body, notation.say("glossary.draw.ratio.lit"), "start", new Spot(BARS, LIT - 12));
    FlipSheet.box(body, "flip-key", new Box(BARS, LIT, BARS + LEVEL, LIT + BAR));
    FlipSheet.box(body, "flip-fill", new Box(BARS + LEVEL, LIT, BARS + LEVEL + fill, LIT + BAR));
    FlipSheet.words(
        body, notation.say("glossary.draw.ratio.key"), "start", new Spot(BARS, LIT + BAR + 11));
    FlipSheet.words(
        body,
        notation.say("glossary.draw.ratio.fill"),
        "start",
        new Spot(BARS + LEVEL, LIT + BAR + 11));
    FlipSheet.words(
        body, notation.say("glossary.draw.ratio.shadow"), "start", new Spot(BARS, SHADOW - 12));
    FlipSheet.box(body, "flip-fill", new Box(BARS, SHADOW, BARS + fill, SHADOW + BAR));
    return FlipSheet.svg(
        HEIGHT,
        notation.say("glossary.draw.ratio.title", words.stops(ratio.keyOverFill().value())),
        body);
  }

  /** A head from above, the key from camera left, the fill beside the camera. */
  private static void drawHead(Markup body) {
    Spot way = new Spot(-0.7071, 0.7071);
    Spot key = HEAD.along(way, 64);
    Spot across = way.turned(90);
    Spot keyLeft = key.along(across, 13);
    Spot keyRight = key.along(across, -13);
    body.path(
        "plan-spread",
        new Strokes()
            .from(keyLeft)
            .to(HEAD.along(across, RADIUS))
            .to(HEAD.along(across, -RADIUS))
            .to(keyRight)
            .close());
    FlipSheet.subject(body, HEAD, RADIUS, TOWARD_CAMERA);
    // The half that the key reaches.
    body.path(
        "flip-lit",
        new Strokes().from(HEAD.along(across, -RADIUS)).arc(RADIUS, HEAD.along(across, RADIUS)));
    body.path("plan-light", new Strokes().from(keyLeft).to(keyRight));
    Spot fill = HEAD.plus(new Spot(14, 84));
    body.path(
        "flip-fill-face",
        new Strokes().from(fill.plus(new Spot(-17, 0))).to(fill.plus(new Spot(17, 0))));
    body.circle("plan-camera", HEAD.plus(new Spot(0, 72)), 4);
  }
}
