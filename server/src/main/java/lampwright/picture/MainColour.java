package lampwright.picture;

/**
 * One of a picture's main colours.
 *
 * @param rgb 0xRRGGBB
 * @param share of the picture's pixels, 0 to 1
 */
public record MainColour(int rgb, double share) {

  /** It as sheets of style write it: "#c08040". */
  public String hex() {
    return "#%06x".formatted(rgb & 0xffffff);
  }
}
