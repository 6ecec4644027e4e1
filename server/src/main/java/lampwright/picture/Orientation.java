package lampwright.picture;

/**
 * How a stored picture must be turned to stand upright: the eight values of the tag 0x0112 (Exif
 * 3.0, 4.6.5.1; TIFF 6.0, p. 36).
 *
 * @param tag 1 to 8, 1 is upright
 */
public record Orientation(int tag) {

  static final Orientation UPRIGHT = new Orientation(1);

  /** Checks the bound. */
  public Orientation {
    if (tag < 1 || tag > 8) {
      throw new IllegalArgumentException("Orientation (" + tag + ") must be from 1 to 8.");
    }
  }

  /** Whether width and height change places. */
  public boolean swapsSides() {
    return tag >= 5;
  }

  Pixels upright(Pixels stored) {
    if (tag == 1) {
      return stored;
    }
    int width = swapsSides() ? stored.height() : stored.width();
    int height = swapsSides() ? stored.width() : stored.height();
    int[] turned = new int[width * height];
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        turned[y * width + x] = stored.at(column(x, y, stored), row(x, y, stored));
      }
    }
    return new Pixels(width, height, turned);
  }

  private int column(int x, int y, Pixels stored) {
    int along = swapsSides() ? y : x;
    boolean mirrored = tag == 2 || tag == 3 || tag == 7 || tag == 8;
    return mirrored ? stored.width() - 1 - along : along;
  }

  private int row(int x, int y, Pixels stored) {
    int along = swapsSides() ? x : y;
    boolean mirrored = tag == 3 || tag == 4 || tag == 6 || tag == 7;
    return mirrored ? stored.height() - 1 - along : along;
  }
}
