package lampwright.picture;

import java.util.Arrays;
import lampwright.engine.colour.Srgb;

/**
 * Makes a picture smaller, row by row: each new pixel is the mean of the light of what it covers,
 * parts of pixels by their share.
 */
final class Shrinking {

  private static final float[] LIGHT = lightOfSignals();
  private static final int STEPS = 4096;
  private static final byte[] SIGNAL = signalsOfLight();

  private final int sourceWidth;
  private final int width;
  private final int height;
  private final double across;
  private final double down;
  private final double[] sum;
  private final double[] line;
  private final int[] rgb;
  private int sourceRow;
  private int row;

  Shrinking(int sourceWidth, int sourceHeight, int longerSide) {
    this.sourceWidth = sourceWidth;
    double scale = Math.min(1, (double) longerSide / Math.max(sourceWidth, sourceHeight));
    width = Math.max(1, (int) Math.round(sourceWidth * scale));
    height = Math.max(1, (int) Math.round(sourceHeight * scale));
    across = (double) sourceWidth / width;
    down = (double) sourceHeight / height;
    sum = new double[3 * width];
    line = new double[3 * width];
    rgb = new int[width * height];
  }

  /** Takes the next row of the source. */
  void add(int[] source) {
    if (down == 1 && across == 1) {
      System.arraycopy(source, 0, rgb, sourceRow * width, width);
      sourceRow++;
      return;
    }
    shrinkLine(source);
    double top = sourceRow;
    double bottom = sourceRow + 1.0;
    while (top < bottom - 1e-9 && row < height) {
      double end = Math.min(bottom, row == height - 1 ? bottom : (row + 1) * down);
      double share = end - top;
      for (int i = 0; i < sum.length; i++) {
        sum[i] += share * line[i];
      }
      if (row < height - 1 ? end >= (row + 1) * down - 1e-9 : bottom >= height * down - 1e-9) {
        finishRow();
      }
      top = end;
    }
    sourceRow++;
  }

  private void shrinkLine(int[] source) {
    Arrays.fill(line, 0);
    int column = 0;
    for (int x = 0; x < sourceWidth; x++) {
      float red = LIGHT[(source[x] >> 16) & 0xff];
      float green = LIGHT[(source[x] >> 8) & 0xff];
      float blue = LIGHT[source[x] & 0xff];
      double left = x;
      double right = x + 1.0;
      while (left < right - 1e-9) {
        double end = column == width - 1 ? right : Math.min(right, (column + 1) * across);
        double share = end - left;
        line[3 * column] += share * red;
        line[3 * column + 1] += share * green;
        line[3 * column + 2] += share * blue;
        if (column < width - 1 && end >= (column + 1) * across - 1e-9) {
          column++;
        }
        left = end;
      }
    }
  }

  private void finishRow() {
    double area = across * down;
    for (int x = 0; x < width; x++) {
      rgb[row * width + x] =
          (signal(sum[3 * x] / area) << 16)
              | (signal(sum[3 * x + 1] / area) << 8)
              | signal(sum[3 * x + 2] / area);
    }
    Arrays.fill(sum, 0);
    row++;
  }

  Pixels result() {
    return new Pixels(width, height, rgb);
  }

  /** The signal nearest to a light; the table is even in the root, where signals are nearly so. */
  private static int signal(double light) {
    double cut = Math.max(0, Math.min(1, light));
    return SIGNAL[(int) Math.round(Math.sqrt(cut) * STEPS)] & 0xff;
  }

  private static float[] lightOfSignals() {
    float[] light = new float[256];
    for (int signal = 0; signal < 256; signal++) {
      light[signal] = (float) Srgb.linear(signal / 255.0);
    }
    return light;
  }

  private static byte[] signalsOfLight() {
    byte[] signals = new byte[STEPS + 1];
    for (int i = 0; i <= STEPS; i++) {
      double root = (double) i / STEPS;
      signals[i] = (byte) Math.round(255 * Math.min(1, Srgb.signal(root * root)));
    }
    return signals;
  }
}
