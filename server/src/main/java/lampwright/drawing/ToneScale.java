package lampwright.drawing;

import java.util.Locale;
import lampwright.engine.colour.Srgb;
import lampwright.language.Notation;

/**
 * How a picture's tones lie between black and white: the range of nearly all of it as a thin line,
 * of its middle half as a thick one, its middle as a tick, over a wedge of greys. All in L* of
 * CIELAB, 0 black to 100 white.
 *
 * @param lowest below which 2 % of the picture lies
 * @param lower below which a quarter lies
 * @param median below which half lies
 * @param upper above which a quarter lies
 * @param highest above which 2 % lies
 */
public record ToneScale(double lowest, double lower, double median, double upper, double highest) {

  private static final int WIDTH = 400;
  private static final int STEPS = 20;
  private static final int WEDGE = 14;
  private static final int LINE = 28;
  private static final int HEIGHT = 40;

  /** The drawing with a title that says the same in words. */
  public Svg svg(Notation notation) {
    StringBuilder svg = new StringBuilder(2_400);
    svg.append("<svg class=\"tone-scale\" viewBox=\"0 0 ").append(WIDTH).append(' ').append(HEIGHT);
    svg.append("\" role=\"img\"><title>").append(title(notation)).append("</title>");
    int step = WIDTH / STEPS;
    for (int i = 0; i < STEPS; i++) {
      String grey = grey(100.0 * i / (STEPS - 1));
      svg.append(
          "<rect x=\"%d\" y=\"0\" width=\"%d\" height=\"%d\" fill=\"%s\"/>"
              .formatted(i * step, step, WEDGE, grey));
    }
    svg.append(
        "<rect class=\"tone-edge\" x=\"0.5\" y=\"0.5\" width=\"%d\" height=\"%d\"/>"
            .formatted(WIDTH - 1, WEDGE - 1));
    line(svg, "tone-all", lowest, highest);
    line(svg, "tone-half", lower, upper);
    svg.append(
        "<path class=\"tone-middle\" d=\"M%s %dV%d\"/>".formatted(at(median), LINE - 9, LINE + 9));
    return Svg.trusted(svg.append("</svg>").toString());
  }

  private String title(Notation notation) {
    return notation.say(
        "drawing.tones",
        notation.fixed(lower, 0),
        notation.fixed(upper, 0),
        notation.fixed(lowest, 0),
        notation.fixed(highest, 0),
        notation.fixed(median, 0));
  }

  private static void line(StringBuilder svg, String name, double from, double to) {
    svg.append("<path class=\"%s\" d=\"M%s %dH%s\"/>".formatted(name, at(from), LINE, at(to)));
  }

  private static String at(double lightness) {
    return String.format(Locale.ROOT, "%.1f", lightness / 100 * WIDTH);
  }

  /** CIE 15: luminance from L*, then the signal of sRGB. */
  private static String grey(double lightness) {
    double luminance =
        lightness > 8 ? StrictMath.pow((lightness + 16) / 116, 3) : lightness * 27 / 24_389;
    long signal = Math.round(255 * Srgb.signal(luminance));
    return "#%02x%02x%02x".formatted(signal, signal, signal);
  }
}
