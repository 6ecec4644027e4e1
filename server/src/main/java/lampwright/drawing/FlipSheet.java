package lampwright.drawing;

/** What the leaves of flip books share: a sheet as wide as a small phone, its letters and marks. */
final class FlipSheet {

  static final double WIDTH = 360;
  static final double LEFT = 8;
  static final double RIGHT = WIDTH - LEFT;

  private static final double TICK = 7;

  private FlipSheet() {}

  /** The drawing of a leaf, so high, without ids. */
  static Svg svg(double height, String title, Markup body) {
    return Svg.trusted(
        new Markup()
            .open(
                "svg",
                "xmlns",
                "http://www.w3.org/2000/svg",
                "class",
                "flip",
                "viewBox",
                "0 0 " + Markup.number(WIDTH) + " " + Markup.number(height),
                "width",
                Markup.number(WIDTH),
                "height",
                Markup.number(height),
                "role",
                "img")
            .words("title", title)
            .add(body)
            .close("svg")
            .toString());
  }

  /** A figure that keeps its unit beside it where its sentence is broken into lines. */
  static String unbroken(String figure) {
    return figure.replace(' ', '\u00a0');
  }

  static void words(Markup markup, String words, String anchor, Spot at) {
    PlanFrame.text(markup, "flip-words", words, anchor, at);
  }

  static void figure(Markup markup, String words, String anchor, Spot at) {
    PlanFrame.text(markup, "flip-figure", words, anchor, at);
  }

  /** The figure of a contour, on its line. */
  static void level(Markup markup, String words, Spot at) {
    PlanFrame.text(markup, "flip-figure flip-level", words, "middle", at);
  }

  static void box(Markup markup, String cssClass, Box box) {
    markup.add(
        "rect",
        "class",
        cssClass,
        "x",
        Markup.number(box.left()),
        "y",
        Markup.number(box.top()),
        "width",
        Markup.number(box.width()),
        "height",
        Markup.number(box.height()));
  }

  /** A subject from above: a circle with a notch where it faces. */
  static void subject(Markup markup, Spot at, double radius, Spot facing) {
    markup.circle("plan-subject", at, radius);
    Strokes notch =
        new Strokes()
            .from(at.along(facing.turned(-22), radius))
            .to(at.along(facing, radius * 1.55))
            .to(at.along(facing.turned(22), radius))
            .close();
    markup.path("plan-facing", notch);
  }

  /** A scale from a spot to the right: ticks upwards, each so many units from the last. */
  static Strokes ticks(Spot from, double apart, int count) {
    Strokes ticks = new Strokes();
    for (int i = 0; i < count; i++) {
      Spot at = from.plus(new Spot(i * apart, 0));
      ticks.from(at).to(at.plus(new Spot(0, -TICK)));
    }
    return ticks;
  }
}
