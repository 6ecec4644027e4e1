package lampwright.picture;

/** A small picture in sRGB. */
final class Pixels {

  private final int width;
  private final int height;
  private final int[] rgb;

  /**
   * @param rgb row by row, 0xRRGGBB; never changed from here on
   */
  Pixels(int width, int height, int[] rgb) {
    this.width = width;
    this.height = height;
    this.rgb = rgb;
  }

  int width() {
    return width;
  }

  int height() {
    return height;
  }

  int[] rgb() {
    return rgb;
  }

  int at(int x, int y) {
    return rgb[y * width + x];
  }
}
