package lampwright.drawing;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import lampwright.engine.light.Gel;
import lampwright.engine.unit.Kelvin;
import lampwright.engine.unit.Mired;
import lampwright.engine.unit.Stops;
import lampwright.language.Notation;

/**
 * What a warm gel makes of a flash of 5500 K: even steps on the scale of mireds, uneven ones on the
 * scale of kelvins below it.
 */
public final class GelBook {

  private static final int STEPS = 14;
  private static final int MIREDS_A_STEP = 10;
  private static final Kelvin OF_HEAD = new Kelvin(5500);

  private static final double HEIGHT = 94;
  private static final double FROM = 145;
  private static final double TO = 340;
  private static final double UNITS_A_MIRED = (FlipSheet.RIGHT - 20 - 20) / (TO - FROM);
  private static final double ARROW = 20;
  private static final double SCALE = 58;
  private static final List<Integer> KELVINS = List.of(6500, 5500, 4500, 4000, 3500, 3000);

  private final Notation notation;

  private GelBook(Notation notation) {
    this.notation = notation;
  }

  /** The book in somebody's words. */
  public static FlipBook of(Notation notation) {
    return new GelBook(notation).book();
  }

  private FlipBook book() {
    return new FlipBook(
        "gel",
        notation.say("glossary.draw.gel.label"),
        IntStream.rangeClosed(0, STEPS)
            .mapToObj(step -> leaf(new Gel(Stops.ZERO, new Mired(step * MIREDS_A_STEP))))
            .toList());
  }

  private FlipBook.Leaf leaf(Gel gel) {
    Kelvin colour = gel.toColour(OF_HEAD);
    boolean isNone = gel.shift().value() == 0;
    String shift = (isNone ? "" : "+") + notation.fixed(gel.shift().value(), 0);
    return new FlipBook.Leaf(
        shift,
        isNone
            ? notation.say(
                "glossary.draw.gel.none",
                kelvins(OF_HEAD),
                notation.fixed(OF_HEAD.toMired().value(), 0))
            : notation.say("glossary.draw.gel.says", shift, kelvins(OF_HEAD), kelvins(colour)),
        drawing(gel, shift),
        Optional.empty());
  }

  /** To ten kelvins, which is finer than a flash keeps its colour. */
  private String kelvins(Kelvin colour) {
    return notation.fixed(Math.rint(colour.value() / 10) * 10, 0);
  }

  private Svg drawing(Gel gel, String shift) {
    Markup body = new Markup();
    Strokes scale = new Strokes().from(at(FROM, SCALE)).to(at(TO, SCALE));
    for (int mired = 150; mired <= TO; mired += 10) {
      scale.from(at(mired, SCALE)).to(at(mired, SCALE - (mired % 50 == 0 ? 9 : 5)));
      if (mired % 50 == 0) {
        FlipSheet.figure(body, notation.fixed(mired, 0), "middle", at(mired, SCALE - 18));
      }
    }
    for (int kelvin : KELVINS) {
      double mired = new Kelvin(kelvin).toMired().value();
      scale.from(at(mired, SCALE)).to(at(mired, SCALE + 9));
      String figure = notation.fixed(kelvin, 0);
      String unit =
          kelvin == KELVINS.getLast() ? " " + notation.say("glossary.draw.gel.kelvin") : "";
      FlipSheet.figure(body, figure + unit, "middle", at(mired, SCALE + 19));
    }
    body.path("plan-tick", scale);
    FlipSheet.words(
        body, notation.say("glossary.draw.gel.mired"), "start", new Spot(FlipSheet.LEFT, ARROW));
    Spot from = at(OF_HEAD.toMired().value(), ARROW);
    Spot to = at(gel.toColour(OF_HEAD).toMired().value(), ARROW);
    body.path("flip-flash", new Strokes().from(from).to(to));
    body.path("chart-moment", new Strokes().from(to).to(new Spot(to.x(), SCALE + 10)));
    body.circle("ruler-dot", from, 5);
    body.circle("flip-now", to, 5);
    return FlipSheet.svg(
        HEIGHT, notation.say("glossary.draw.gel.title", kelvins(OF_HEAD), shift), body);
  }

  private static Spot at(double mired, double y) {
    return new Spot(20 + (mired - FROM) * UNITS_A_MIRED, y);
  }
}
