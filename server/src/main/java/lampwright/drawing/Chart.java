package lampwright.drawing;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.CRC32;

/**
 * The frame of a chart with its two scales, as wide as a plan and in its letters.
 *
 * @param frame on the drawing
 * @param fromX the value at the frame's left edge
 * @param fromY the value at its lower edge
 */
record Chart(Box frame, double fromX, double toX, double fromY, double toY) {

  static final double WIDTH = 790;
  static final double LEFT = 74;
  static final double RIGHT = WIDTH - 16;
  static final Sheet.Format FORMAT = Sheet.Format.PAGE;
  private static final double TICK = 7;

  /** A value of a scale and how it is written; without words it is a tick alone. */
  record Tick(double at, String words) {}

  static Chart between(
      double top, double bottom, double fromX, double toX, double fromY, double toY) {
    return new Chart(new Box(LEFT, top, RIGHT, bottom), fromX, toX, fromY, toY);
  }

  Spot spot(double x, double y) {
    return new Spot(
        frame.left() + (x - fromX) / (toX - fromX) * frame.width(),
        frame.bottom() - (y - fromY) / (toY - fromY) * frame.height());
  }

  /** A level line across the frame. */
  Segment across(double y) {
    return new Segment(spot(fromX, y), spot(toX, y));
  }

  /** A band across the frame, cut at its edges. */
  void band(Markup markup, String cssClass, double low, double high) {
    Spot corner = spot(fromX, Math.min(toY, Math.max(fromY, high)));
    double bottom = spot(fromX, Math.min(toY, Math.max(fromY, low))).y();
    if (bottom > corner.y()) {
      markup.add(
          "rect",
          "class",
          cssClass,
          "x",
          Markup.number(corner.x()),
          "y",
          Markup.number(corner.y()),
          "width",
          Markup.number(frame.width()),
          "height",
          Markup.number(bottom - corner.y()));
    }
  }

  /** A line through points of values, broken where it leaves the frame. */
  void line(Markup markup, String cssClass, List<Spot> spots) {
    Strokes strokes = new Strokes();
    boolean isDown = false;
    for (Spot spot : spots) {
      if (!frame.contains(spot)) {
        isDown = false;
      } else if (isDown) {
        strokes.to(spot);
      } else {
        strokes.from(spot);
        isDown = true;
      }
    }
    markup.path(cssClass, strokes);
  }

  /** The frame with figures below and at the left. */
  void draw(Markup markup, List<Tick> xs, List<Tick> ys) {
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
    Strokes ticks = new Strokes();
    Markup figures = new Markup();
    for (Tick tick : xs) {
      Spot at = new Spot(spot(tick.at(), fromY).x(), frame.bottom());
      ticks.from(at).to(at.plus(new Spot(0, -TICK)));
      figure(figures, tick.words(), "middle", at.plus(new Spot(0, 19)));
    }
    for (Tick tick : ys) {
      Spot at = new Spot(frame.left(), spot(fromX, tick.at()).y());
      ticks.from(at).to(at.plus(new Spot(TICK, 0)));
      figure(figures, tick.words(), "end", at.plus(new Spot(-8, 0)));
    }
    markup.path("plan-tick", ticks).add(figures);
  }

  static void figure(Markup markup, String words, String anchor, Spot at) {
    if (!words.isEmpty()) {
      PlanFrame.text(markup, "plan-figure", words, anchor, at);
    }
  }

  /** The whole values of a scale between two ends, so many apart. */
  static List<Integer> whole(double from, double to, int step) {
    List<Integer> whole = new ArrayList<>();
    for (int at = (int) Math.ceil(from / step) * step; at <= to; at += step) {
      whole.add(at);
    }
    return whole;
  }

  /** The drawing of a chart or charts one over the other. */
  static Svg svg(String key, double height, String title, String description, Markup body) {
    CRC32 sum = new CRC32();
    sum.update((title + body).getBytes(StandardCharsets.UTF_8));
    String id = key + "-" + Long.toHexString(sum.getValue());
    Markup markup =
        new Markup()
            .open(
                "svg",
                "xmlns",
                "http://www.w3.org/2000/svg",
                "class",
                "plan chart",
                "viewBox",
                "0 0 " + Markup.number(WIDTH) + " " + Markup.number(height),
                "width",
                Markup.number(WIDTH),
                "height",
                Markup.number(height),
                "role",
                "img",
                "aria-labelledby",
                id + "-title",
                "aria-describedby",
                id + "-desc")
            .words("title", title, "id", id + "-title")
            .words("desc", description, "id", id + "-desc")
            .add(body)
            .close("svg");
    return Svg.trusted(markup.toString());
  }
}
