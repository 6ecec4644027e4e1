package lampwright.picture;

import java.awt.color.ColorSpace;
import java.awt.color.ICC_ColorSpace;
import java.awt.color.ICC_Profile;
import java.awt.image.BufferedImage;
import java.awt.image.ColorConvertOp;
import java.awt.image.ColorModel;
import java.awt.image.ComponentColorModel;
import java.awt.image.DataBuffer;
import java.awt.image.DataBufferByte;
import java.awt.image.Raster;
import java.awt.image.WritableRaster;
import java.util.List;
import java.util.Optional;

/**
 * A decoded picture, from which smaller ones in sRGB are made.
 *
 * <p>Colours are converted after the picture has become smaller, which is averaged as if its
 * numbers were signals of sRGB: the curves of the usual profiles lie so near that the difference
 * cannot be seen, and it bounds the work.
 */
final class Decoded {

  private final BufferedImage image;
  private final Optional<ColorSpace> space;

  private Decoded(BufferedImage image, Optional<ColorSpace> space) {
    this.image = image;
    this.space = space;
  }

  /**
   * @param profile what its numbers mean, where the image does not know itself
   */
  static Decoded of(BufferedImage image, Optional<byte[]> profile) throws Unusable.Found {
    ColorModel model = image.getColorModel();
    int type = image.getRaster().getDataBuffer().getDataType();
    boolean known = type == DataBuffer.TYPE_BYTE || type == DataBuffer.TYPE_USHORT;
    if (model instanceof ComponentColorModel && !known) {
      throw Unusable.unreadable("The picture has neither 8 nor 16 bits a colour.");
    }
    ColorSpace own = model.getColorSpace();
    if (own.getType() != ColorSpace.TYPE_RGB && own.getType() != ColorSpace.TYPE_GRAY) {
      return new Decoded(inSrgb(image), Optional.empty());
    }
    if (own.getType() == ColorSpace.TYPE_RGB && !own.isCS_sRGB()) {
      return new Decoded(image, Optional.of(own));
    }
    return new Decoded(
        image,
        own.getType() == ColorSpace.TYPE_RGB ? profile.flatMap(Decoded::space) : Optional.empty());
  }

  private static BufferedImage inSrgb(BufferedImage image) {
    BufferedImage converted =
        new BufferedImage(image.getWidth(), image.getHeight(), BufferedImage.TYPE_3BYTE_BGR);
    return new ColorConvertOp(null).filter(image, converted);
  }

  private static Optional<ColorSpace> space(byte[] profile) {
    try {
      ICC_Profile read = ICC_Profile.getInstance(profile);
      return read.getColorSpaceType() == ColorSpace.TYPE_RGB
          ? Optional.of(new ICC_ColorSpace(read))
          : Optional.empty();
    } catch (IllegalArgumentException e) {
      return Optional.empty();
    }
  }

  /** It at its own size. */
  Pixels whole() {
    return shrunk(List.of(Math.max(image.getWidth(), image.getHeight()))).getFirst();
  }

  /** It with longer sides of so many pixels, or as it is where that is less; read once for all. */
  List<Pixels> shrunk(List<Integer> longerSides) {
    List<Shrinking> all =
        longerSides.stream()
            .map(side -> new Shrinking(image.getWidth(), image.getHeight(), side))
            .toList();
    int[] row = new int[image.getWidth()];
    for (int y = 0; y < image.getHeight(); y++) {
      read(y, row);
      for (Shrinking shrinking : all) {
        shrinking.add(row);
      }
    }
    return all.stream().map(Shrinking::result).map(this::shown).toList();
  }

  private Pixels shown(Pixels small) {
    return space.map(from -> converted(small, from)).orElse(small);
  }

  private void read(int y, int[] row) {
    ColorModel model = image.getColorModel();
    if (!(model instanceof ComponentColorModel)) {
      image.getRGB(0, y, row.length, 1, row, 0, row.length);
      if (model.hasAlpha()) {
        for (int x = 0; x < row.length; x++) {
          row[x] = onWhite(row[x] & 0xffffff, row[x] >>> 24);
        }
      }
      return;
    }
    Raster raster = image.getRaster();
    if (PackedBytes.holds(raster)) {
      PackedBytes.read(raster, y, row);
      return;
    }
    int bands = raster.getNumBands();
    int[] samples = raster.getPixels(0, y, row.length, 1, (int[]) null);
    int shift = raster.getSampleModel().getSampleSize(0) - 8;
    boolean grey = bands < 3;
    for (int x = 0; x < row.length; x++) {
      int at = x * bands;
      int red = byteOf(samples[at], shift);
      int rgb =
          grey
              ? red * 0x010101
              : (red << 16)
                  | (byteOf(samples[at + 1], shift) << 8)
                  | byteOf(samples[at + 2], shift);
      row[x] = model.hasAlpha() ? onWhite(rgb, byteOf(samples[at + bands - 1], shift)) : rgb;
    }
  }

  private static int byteOf(int sample, int shift) {
    return shift >= 0 ? (sample >> shift) & 0xff : sample * 255 / ((1 << (8 + shift)) - 1);
  }

  /** What can be seen through lies on white, as on paper. */
  private static int onWhite(int rgb, int alpha) {
    if (alpha == 255) {
      return rgb;
    }
    int out = 0;
    for (int shift = 16; shift >= 0; shift -= 8) {
      int mixed = (((rgb >> shift) & 0xff) * alpha + 255 * (255 - alpha) + 127) / 255;
      out |= mixed << shift;
    }
    return out;
  }

  private static Pixels converted(Pixels small, ColorSpace from) {
    int count = small.rgb().length;
    byte[] bytes = new byte[count * 3];
    for (int i = 0; i < count; i++) {
      bytes[3 * i] = (byte) (small.rgb()[i] >> 16);
      bytes[3 * i + 1] = (byte) (small.rgb()[i] >> 8);
      bytes[3 * i + 2] = (byte) small.rgb()[i];
    }
    try {
      Raster source = interleaved(bytes, small);
      byte[] shown = new byte[count * 3];
      new ColorConvertOp(from, ColorSpace.getInstance(ColorSpace.CS_sRGB), null)
          .filter(source, interleaved(shown, small));
      int[] rgb = new int[count];
      for (int i = 0; i < count; i++) {
        rgb[i] =
            ((shown[3 * i] & 0xff) << 16)
                | ((shown[3 * i + 1] & 0xff) << 8)
                | (shown[3 * i + 2] & 0xff);
      }
      return new Pixels(small.width(), small.height(), rgb);
    } catch (RuntimeException e) {
      // A profile that cannot be worked with is none; then the numbers are taken as sRGB's.
      return small;
    }
  }

  private static WritableRaster interleaved(byte[] bytes, Pixels like) {
    return Raster.createInterleavedRaster(
        new DataBufferByte(bytes, bytes.length),
        like.width(),
        like.height(),
        3 * like.width(),
        3,
        new int[] {0, 1, 2},
        null);
  }
}
