package lampwright.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import lampwright.language.Notation;

/**
 * The sign for a level: a ruler from four stops under to four stops over, in thirds, with the
 * shooting exposure at its middle. An open dot says what was shot (or metered), a bar what the kit
 * gives (or is expected), a band how sure that is. What lies beyond an end is drawn there as an
 * arrow. The scale never changes, so that two rulers can always be compared; print the number
 * beside it.
 *
 * @param what whose level it is, for the title ("Key")
 * @param dot the open dot, in stops from the shooting exposure
 * @param bar the bar, in stops from the shooting exposure
 * @param band half the width of the band, in stops, around the bar, or the dot where there is no
 *     bar
 * @param dotName what the dot stands for, for the title ("as shot")
 * @param barName what the bar stands for, for the title ("this kit")
 * @param notation of whoever reads
 */
public record StopRuler(
    String what,
    OptionalDouble dot,
    OptionalDouble bar,
    OptionalDouble band,
    String dotName,
    String barName,
    Notation notation) {

  /** The ends of the scale, in stops from the shooting exposure. */
  public static final double REACH_STOPS = 4;

  // In units of the view box, which pages show at one CSS pixel each: a third is then 8 pixels
  // wide and every tick falls on a whole pixel.
  private static final int STOP = 24;
  private static final int MARGIN = 12;
  private static final int WIDTH = 2 * MARGIN + 8 * STOP;
  private static final int MIDDLE = WIDTH / 2;
  private static final int BASE = 20;
  private static final int MARK = 9;

  public StopRuler {
    requireFinite("Dot", dot);
    requireFinite("Bar", bar);
    requireFinite("Band", band);
    if (band.isPresent() && band.getAsDouble() < 0) {
      throw new IllegalArgumentException(
          "Band (" + band.getAsDouble() + " stops) must be 0 or more. Maybe 0.3?");
    }
  }

  /** A ruler without marks yet, with the names of a setup and its adaptation. */
  public static StopRuler of(String what, Notation notation) {
    return new StopRuler(
        what,
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        notation.say("drawing.as_shot"),
        notation.say("drawing.this_kit"),
        notation);
  }

  /** The same with an open dot, in stops from the shooting exposure. */
  public StopRuler withDot(double stops) {
    return new StopRuler(what, OptionalDouble.of(stops), bar, band, dotName, barName, notation);
  }

  /** The same with a bar, in stops from the shooting exposure. */
  public StopRuler withBar(double stops) {
    return new StopRuler(what, dot, OptionalDouble.of(stops), band, dotName, barName, notation);
  }

  /** The same with a band of so many stops to either side. */
  public StopRuler withBand(double stops) {
    return new StopRuler(what, dot, bar, OptionalDouble.of(stops), dotName, barName, notation);
  }

  /** The same with other words for the marks: "metered" and "expected" in a guided build. */
  public StopRuler withNames(String newDotName, String newBarName) {
    return new StopRuler(what, dot, bar, band, newDotName, newBarName, notation);
  }

  /** The figures of the scale alone, its title in the person's language. */
  public static Svg scale(Notation notation) {
    StringBuilder svg = new StringBuilder(600);
    svg.append("<svg class=\"ruler-scale\" viewBox=\"0 0 ").append(WIDTH).append(" 14\"");
    svg.append(" width=\"").append(WIDTH).append("\" height=\"14\" role=\"img\">");
    svg.append("<title>")
        .append(Svg.escaped(notation.say("drawing.ruler_scale")))
        .append("</title>");
    for (int stop = -4; stop <= 4; stop += 2) {
      svg.append("<text class=\"ruler-figure\" text-anchor=\"middle\" x=\"")
          .append(MIDDLE + stop * STOP)
          .append("\" y=\"11\">")
          .append(stop == 0 ? "0" : (stop < 0 ? "−" : "+") + Math.abs(stop))
          .append("</text>");
    }
    return Svg.trusted(svg.append("</svg>").toString());
  }

  /** The ruler as one drawing with a title that says the same in words. */
  public Svg svg() {
    StringBuilder svg = new StringBuilder(2_000);
    svg.append("<svg class=\"ruler\" viewBox=\"0 0 ").append(WIDTH).append(" 24\"");
    svg.append(" width=\"").append(WIDTH).append("\" height=\"24\" role=\"img\">");
    svg.append("<title>").append(Svg.escaped(title())).append("</title>");
    OptionalDouble centre = bar.isPresent() ? bar : dot;
    if (band.isPresent() && centre.isPresent()) {
      drawBand(svg, centre.getAsDouble(), band.getAsDouble());
    }
    drawScale(svg);
    bar.ifPresent(stops -> drawBar(svg, stops));
    dot.ifPresent(stops -> drawDot(svg, stops));
    return Svg.trusted(svg.append("</svg>").toString());
  }

  private String title() {
    List<String> words = new ArrayList<>();
    dot.ifPresent(stops -> words.add(dotName + " " + inWords(stops)));
    bar.ifPresent(stops -> words.add(barName + " " + inWords(stops)));
    if (band.isPresent() && (dot.isPresent() || bar.isPresent())) {
      words.add(notation.say("drawing.give_or_take", notation.size(band.getAsDouble())));
    }
    return what
        + ": "
        + (words.isEmpty() ? notation.say("drawing.no_level") : String.join(", ", words));
  }

  private String inWords(double stops) {
    String size = notation.size(Math.abs(stops));
    String nothing = notation.size(0);
    if (size.equals(nothing)) {
      return notation.say("drawing.at_exposure");
    }
    String key = stops < 0 ? "drawing.stops_under" : "drawing.stops_over";
    return notation.say(size.equals(notation.size(1)) ? key + ".one" : key + ".other", size);
  }

  private static void drawScale(StringBuilder svg) {
    StringBuilder thirds = new StringBuilder(300);
    StringBuilder stops = new StringBuilder(120);
    for (int third = -12; third <= 12; third++) {
      int x = MIDDLE + third * STOP / 3;
      if (third % 3 == 0) {
        stops.append("M").append(x).append(" ").append(BASE).append("v-6");
      } else {
        thirds.append("M").append(x).append(" ").append(BASE).append("v-3");
      }
    }
    svg.append("<path class=\"ruler-third\" d=\"").append(thirds).append("\"/>");
    svg.append("<path class=\"ruler-stop\" d=\"M").append(MARGIN).append(" ").append(BASE);
    svg.append("h").append(8 * STOP).append(stops).append("\"/>");
    svg.append("<path class=\"ruler-zero\" d=\"M").append(MIDDLE).append(" ").append(BASE + 3);
    svg.append("V0\"/>");
  }

  private static void drawBand(StringBuilder svg, double centre, double halfWidth) {
    double from = Math.clamp(centre - halfWidth, -REACH_STOPS, REACH_STOPS);
    double to = Math.clamp(centre + halfWidth, -REACH_STOPS, REACH_STOPS);
    svg.append("<rect class=\"ruler-band\" x=\"").append(number(x(from)));
    svg.append("\" y=\"").append(MARK - 4).append("\" width=\"");
    svg.append(number((to - from) * STOP)).append("\" height=\"8\"/>");
  }

  private static void drawBar(StringBuilder svg, double stops) {
    if (Math.abs(stops) > REACH_STOPS) {
      svg.append("<path class=\"ruler-bar ruler-beyond\" d=\"").append(arrow(stops)).append("\"/>");
      return;
    }
    svg.append("<rect class=\"ruler-bar\" x=\"").append(number(x(stops) - 1.5));
    svg.append("\" y=\"").append(MARK - 7).append("\" width=\"3\" height=\"14\"/>");
  }

  private static void drawDot(StringBuilder svg, double stops) {
    if (Math.abs(stops) > REACH_STOPS) {
      svg.append("<path class=\"ruler-dot ruler-beyond\" d=\"").append(arrow(stops)).append("\"/>");
      return;
    }
    svg.append("<circle class=\"ruler-dot\" cx=\"").append(number(x(stops)));
    svg.append("\" cy=\"").append(MARK).append("\" r=\"4.5\"/>");
  }

  /** A triangle at the end of the scale that points away from it. */
  private static String arrow(double stops) {
    int side = stops < 0 ? -1 : 1;
    int x = MIDDLE + side * 4 * STOP;
    return "M" + (x + side * 2) + " " + (MARK - 5) + "v10l" + side * 8 + " -5z";
  }

  private static double x(double stops) {
    return MIDDLE + stops * STOP;
  }

  private static String number(double value) {
    double tenths = Math.rint(value * 10) / 10;
    return tenths == Math.rint(tenths)
        ? Long.toString((long) tenths)
        : String.format(Locale.ROOT, "%.1f", tenths);
  }

  private static void requireFinite(String name, OptionalDouble stops) {
    if (stops.isPresent() && !Double.isFinite(stops.getAsDouble())) {
      throw new IllegalArgumentException(
          name + " (" + stops.getAsDouble() + " stops) must be a finite number. Leave it out?");
    }
  }
}
