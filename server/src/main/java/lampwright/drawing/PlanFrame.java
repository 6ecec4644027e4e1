package lampwright.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lampwright.drawing.Label.Kind;
import lampwright.drawing.Label.Side;
import lampwright.drawing.Label.Wish;

/** The frame of a drawing with its ticks and figures in metres or feet, and the bearings at it. */
record PlanFrame(Sheet sheet, Optional<Spot> north) {

  private static final double TICK = 7;
  private static final double BEARING_TICK = 15;

  /** Figures closer than this would run into one another on a phone. */
  private static final double CLOSEST_FIGURES = 52;

  private static final int[] STEPS = {1, 2, 5, 10, 20, 50, 100, 200, 500};
  private static final List<String> QUARTERS =
      List.of("drawing.north", "drawing.east", "drawing.south", "drawing.west");

  void draw(Markup markup) {
    Box frame = sheet.frame();
    markup.add(
        "rect",
        "class",
        "plan-frame",
        "x",
        Markup.number(frame.left()),
        "y",
        Markup.number(frame.top()),
        "width",
        Markup.number(frame.width()),
        "height",
        Markup.number(frame.height()));
    if (sheet.isWhole()) {
      drawTicks(markup);
      drawBearings(markup);
    }
  }

  /** Whole units of the person's tape from figure to figure. */
  int step() {
    for (int step : STEPS) {
      if (sheet.units(step * unitM()) >= CLOSEST_FIGURES) {
        return step;
      }
    }
    return 2 * STEPS[STEPS.length - 1];
  }

  private double unitM() {
    return sheet.notation().lengths().metres();
  }

  private void drawTicks(Markup markup) {
    Box frame = sheet.frame();
    Extent extent = sheet.extent();
    Strokes ticks = new Strokes();
    Markup figures = new Markup();
    int step = step();
    for (int tick : ticks(extent.left(), extent.right(), step)) {
      double x = sheet.spot(tick * unitM(), 0).x();
      ticks.from(new Spot(x, frame.bottom())).to(new Spot(x, frame.bottom() - TICK));
      ticks.from(new Spot(x, frame.top())).to(new Spot(x, frame.top() + TICK));
      figure(figures, tick, "middle", new Spot(x, frame.bottom() + 19));
    }
    for (int tick : ticks(extent.near(), extent.far(), step)) {
      double y = sheet.spot(0, tick * unitM()).y();
      ticks.from(new Spot(frame.left(), y)).to(new Spot(frame.left() + TICK, y));
      ticks.from(new Spot(frame.right(), y)).to(new Spot(frame.right() - TICK, y));
      figure(figures, tick, "end", new Spot(frame.left() - 8, y));
    }
    markup.path("plan-tick", ticks).add(figures);
    text(
        markup,
        "plan-figure",
        sheet.notation().lengthSign(),
        "end",
        new Spot(frame.left() - 8, frame.bottom() + 19));
  }

  /** The multiples of the step that lie between, clear of the frame's corners. */
  private List<Integer> ticks(double from, double to, int step) {
    double corner = 12 / sheet.unitsPerMetre();
    List<Integer> ticks = new ArrayList<>();
    for (int tick = (int) Math.ceil((from + corner) / unitM() / step) * step;
        tick * unitM() <= to - corner;
        tick += step) {
      ticks.add(tick);
    }
    return ticks;
  }

  private void drawBearings(Markup markup) {
    if (north.isEmpty()) {
      return;
    }
    Strokes ticks = new Strokes();
    for (int quarter = 0; quarter < QUARTERS.size(); quarter++) {
      Spot way = way(quarter);
      Spot border = border(way);
      ticks.from(border).to(border.along(way, -BEARING_TICK));
      if (quarter == 0) {
        ticks
            .from(border.along(way.turned(155), BEARING_TICK * 0.6))
            .to(border)
            .to(border.along(way.turned(-155), BEARING_TICK * 0.6));
      }
    }
    markup.path("plan-bearing", ticks);
  }

  void keepFree(LabelPlacer placer) {
    if (north.isPresent()) {
      for (int quarter = 0; quarter < QUARTERS.size(); quarter++) {
        Spot way = way(quarter);
        Spot border = border(way);
        placer.keepFree(new Segment(border, border.along(way, -BEARING_TICK)));
      }
    }
  }

  /** The letters of the bearings. */
  List<Label> labels() {
    List<Label> labels = new ArrayList<>();
    if (north.isPresent()) {
      for (int quarter = 0; quarter < QUARTERS.size(); quarter++) {
        Spot way = way(quarter);
        Spot tail = border(way).along(way, -BEARING_TICK);
        List<Wish> wishes = new ArrayList<>();
        wishes.add(new Wish(tail.along(way, -16), Side.MIDDLE, 0));
        for (int side = -1; side <= 1; side += 2) {
          Spot beside = tail.along(way.turned(90.0 * side), 17).along(way, -2);
          wishes.add(new Wish(beside, Side.MIDDLE, 6));
        }
        Kind kind = quarter == 0 ? Kind.WORDS : Kind.QUIET_WORDS;
        labels.add(
            new Label(sheet.notation().say(QUARTERS.get(quarter)), kind, tail, wishes, 95, 30));
      }
    }
    return labels;
  }

  private Spot way(int quarter) {
    return north.orElseThrow().turned(90.0 * quarter);
  }

  /** Where the frame lies in a direction from the hit mark. */
  private Spot border(Spot way) {
    Spot origin = sheet.spot(0, 0);
    Segment sight = new Segment(origin, origin.along(way, sheet.width() + sheet.height()));
    return sheet.frame().clip(sight).orElse(sight).to();
  }

  private void figure(Markup markup, int tick, String anchor, Spot at) {
    text(markup, "plan-figure", sheet.notation().fixed(tick, 0), anchor, at);
  }

  static void text(Markup markup, String cssClass, String words, String anchor, Spot at) {
    markup.words(
        "text",
        words,
        "class",
        cssClass,
        "x",
        Markup.number(at.x()),
        "y",
        Markup.number(at.y()),
        "text-anchor",
        anchor,
        "dominant-baseline",
        "central");
  }
}
