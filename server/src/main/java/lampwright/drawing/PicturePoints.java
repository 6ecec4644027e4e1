package lampwright.drawing;

import java.util.List;
import java.util.Locale;
import lampwright.language.Notation;

/**
 * Numbered discs at points of a picture, to lie over it.
 *
 * @param width of the picture, in pixels
 * @param height of the picture, in pixels
 */
public record PicturePoints(int width, int height, List<Point> points) {

  private static final int VIEW = 1_000;
  private static final int RADIUS = 20;

  public PicturePoints {
    points = List.copyOf(points);
  }

  /**
   * One point.
   *
   * @param x share of the width from the left, 0 to 1
   * @param y share of the height from the top, 0 to 1
   */
  public record Point(int number, double x, double y) {}

  /** The drawing; what stands at each number is to be listed beside it. */
  public Svg svg(Notation notation) {
    double scale = (double) VIEW / Math.max(width, height);
    double across = width * scale;
    double down = height * scale;
    StringBuilder svg = new StringBuilder(600);
    svg.append(
        String.format(
            Locale.ROOT,
            "<svg class=\"picture-points\" viewBox=\"0 0 %.1f %.1f\" role=\"img\">",
            across,
            down));
    svg.append("<title>")
        .append(
            points.size() == 1
                ? notation.say("drawing.point", points.getFirst().number())
                : notation.say(
                    "drawing.points", points.getFirst().number(), points.getLast().number()))
        .append("</title>");
    for (Point point : points) {
      svg.append(
          String.format(
              Locale.ROOT,
              "<circle cx=\"%.1f\" cy=\"%.1f\" r=\"%d\"/><text x=\"%.1f\" y=\"%.1f\">%d</text>",
              point.x() * across,
              point.y() * down,
              RADIUS,
              point.x() * across,
              point.y() * down,
              point.number()));
    }
    return Svg.trusted(svg.append("</svg>").toString());
  }
}
