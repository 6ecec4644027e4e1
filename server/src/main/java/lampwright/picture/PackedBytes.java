package lampwright.picture;

import java.awt.color.ColorSpace;
import java.awt.image.BufferedImage;
import java.awt.image.ColorModel;
import java.awt.image.ComponentColorModel;
import java.awt.image.DataBuffer;
import java.awt.image.DataBufferByte;
import java.awt.image.PixelInterleavedSampleModel;
import java.awt.image.Raster;
import java.awt.image.WritableRaster;
import java.util.Arrays;
import javax.imageio.ImageTypeSpecifier;

/**
 * Pictures whose bytes lie as red, green, blue, red and so on. The JPEG reader and writer hand
 * their rows over in this order: only then are they copied as they are, and not byte by byte, which
 * takes longer than decoding.
 */
final class PackedBytes {

  private static final int[] ORDER = {0, 1, 2};

  private PackedBytes() {}

  /** Whether a picture that would be decoded to that may be decoded to packed bytes as well. */
  static boolean suits(ImageTypeSpecifier type) {
    return type.getBufferedImageType() == BufferedImage.TYPE_3BYTE_BGR;
  }

  static BufferedImage image(int width, int height) {
    return image(new byte[3 * width * height], width, height);
  }

  static BufferedImage image(Pixels pixels) {
    int[] rgb = pixels.rgb();
    byte[] bytes = new byte[3 * rgb.length];
    for (int i = 0; i < rgb.length; i++) {
      bytes[3 * i] = (byte) (rgb[i] >> 16);
      bytes[3 * i + 1] = (byte) (rgb[i] >> 8);
      bytes[3 * i + 2] = (byte) rgb[i];
    }
    return image(bytes, pixels.width(), pixels.height());
  }

  private static BufferedImage image(byte[] bytes, int width, int height) {
    WritableRaster raster =
        Raster.createInterleavedRaster(
            new DataBufferByte(bytes, bytes.length), width, height, 3 * width, 3, ORDER, null);
    ColorModel model =
        new ComponentColorModel(
            ColorSpace.getInstance(ColorSpace.CS_sRGB),
            false,
            false,
            ColorModel.OPAQUE,
            DataBuffer.TYPE_BYTE);
    return new BufferedImage(model, raster, false, null);
  }

  /** Whether a raster is nothing but rows of such bytes. */
  static boolean holds(Raster raster) {
    return raster.getDataBuffer() instanceof DataBufferByte
        && raster.getSampleModel() instanceof PixelInterleavedSampleModel model
        && model.getPixelStride() == 3
        && model.getNumBands() == 3
        && model.getScanlineStride() == 3 * raster.getWidth()
        && Arrays.equals(model.getBandOffsets(), ORDER)
        && raster.getParent() == null;
  }

  /** Reads a row of a raster that {@link #holds} them, as 0xRRGGBB. */
  static void read(Raster raster, int y, int[] row) {
    byte[] bytes = ((DataBufferByte) raster.getDataBuffer()).getData();
    int at = 3 * row.length * y;
    for (int x = 0; x < row.length; x++, at += 3) {
      row[x] = ((bytes[at] & 0xff) << 16) | ((bytes[at + 1] & 0xff) << 8) | (bytes[at + 2] & 0xff);
    }
  }
}
