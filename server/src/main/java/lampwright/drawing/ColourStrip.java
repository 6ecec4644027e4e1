package lampwright.drawing;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import lampwright.language.Notation;

/** A picture's main colours side by side, each as wide as its share of them. */
public record ColourStrip(List<Share> shares) {

  private static final int WIDTH = 400;
  private static final int HEIGHT = 32;

  public ColourStrip {
    shares = List.copyOf(shares);
  }

  /**
   * One colour.
   *
   * @param rgb 0xRRGGBB
   * @param share 0 to 1
   */
  public record Share(int rgb, double share) {

    String hex() {
      return "#%06x".formatted(rgb & 0xffffff);
    }
  }

  /** The drawing with a title that says the same in words. */
  public Svg svg(Notation notation) {
    double all = shares.stream().mapToDouble(Share::share).sum();
    StringBuilder svg = new StringBuilder(800);
    svg.append(
        "<svg class=\"colour-strip\" viewBox=\"0 0 %d %d\" role=\"img\"><title>"
            .formatted(WIDTH, HEIGHT));
    svg.append(notation.say("drawing.colours"))
        .append(": ")
        .append(
            shares.stream()
                .map(of -> "%s %d %%".formatted(of.hex(), Math.round(100 * of.share())))
                .collect(Collectors.joining(", ")))
        .append("</title>");
    double left = 0;
    for (Share of : shares) {
      double width = WIDTH * of.share() / Math.max(1e-9, all);
      svg.append(
          String.format(
              Locale.ROOT,
              "<rect x=\"%.1f\" y=\"0\" width=\"%.1f\" height=\"%d\" fill=\"%s\"/>",
              left,
              width,
              HEIGHT,
              of.hex()));
      left += width;
    }
    svg.append(
        "<rect class=\"tone-edge\" x=\"0.5\" y=\"0.5\" width=\"%d\" height=\"%d\"/>"
            .formatted(WIDTH - 1, HEIGHT - 1));
    return Svg.trusted(svg.append("</svg>").toString());
  }
}
