package lampwright.picture;

import java.awt.image.BufferedImage;
import java.awt.image.DataBuffer;
import java.awt.image.Raster;
import java.awt.image.WritableRaster;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.Iterator;
import java.util.function.IntBinaryOperator;
import java.util.zip.CRC32;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;

/** Picture files that tests draw themselves; nobody's photographs. */
public final class Drawn {

  private Drawn() {}

  /** A picture whose pixels a function of column and row says, 0xRRGGBB. */
  public static BufferedImage image(int width, int height, IntBinaryOperator colour) {
    BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        image.setRGB(x, y, colour.applyAsInt(x, y));
      }
    }
    return image;
  }

  /** A scene of a sky, a ground and a round lamp, each with soft shades. */
  public static BufferedImage scene(int width, int height) {
    return image(
        width,
        height,
        (x, y) -> {
          double across = (double) x / width;
          double down = (double) y / height;
          double lamp = Math.hypot(across - 0.3, down - 0.35);
          if (lamp < 0.12) {
            return rgb(250, 225, 160 - (int) (lamp * 300));
          }
          return down < 0.6
              ? rgb(40, 60 + (int) (60 * down), 110 + (int) (80 * across))
              : rgb(70 + (int) (50 * across), 55, 40 + (int) (20 * down));
        });
  }

  static int rgb(int red, int green, int blue) {
    return (red << 16) | (green << 8) | blue;
  }

  static int grey(int signal) {
    return rgb(signal, signal, signal);
  }

  public static byte[] jpeg(BufferedImage image, double quality) {
    ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
    ImageWriteParam how = writer.getDefaultWriteParam();
    how.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
    how.setCompressionQuality((float) quality);
    return written(writer, new IIOImage(image, null, null), how);
  }

  /** A JPEG whose whole picture comes first coarse, then finer. */
  public static byte[] progressiveJpeg(BufferedImage image) {
    ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
    ImageWriteParam how = writer.getDefaultWriteParam();
    how.setProgressiveMode(ImageWriteParam.MODE_DEFAULT);
    return written(writer, new IIOImage(image, null, null), how);
  }

  /**
   * A JPEG of four inks, half of each and no black: with the segment APP14 that says so, and so
   * with its numbers the other way round (ITU-T T.872, section 6.5.3).
   */
  public static byte[] cmykJpeg(int width, int height) {
    Iterator<ImageWriter> writers = ImageIO.getImageWritersByFormatName("jpeg");
    ImageWriter writer = writers.next();
    while (!writer.canWriteRasters()) {
      writer = writers.next();
    }
    WritableRaster inks =
        Raster.createInterleavedRaster(DataBuffer.TYPE_BYTE, width, height, 4, null);
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        inks.setPixel(x, y, new int[] {127, 127, 127, 255});
      }
    }
    byte[] plain = written(writer, new IIOImage(inks, null, null), writer.getDefaultWriteParam());
    byte[] inksAreMeant = HexFormat.of().parseHex("ffee000e41646f626500640000000000");
    return ByteBuffer.allocate(plain.length + inksAreMeant.length)
        .put(plain, 0, 2)
        .put(inksAreMeant)
        .put(plain, 2, plain.length - 2)
        .array();
  }

  private static byte[] written(ImageWriter writer, IIOImage image, ImageWriteParam how) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (var stream = ImageIO.createImageOutputStream(out)) {
      writer.setOutput(stream);
      writer.write(null, image, how);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } finally {
      writer.dispose();
    }
    return out.toByteArray();
  }

  public static byte[] png(BufferedImage image) {
    return written(image, "png");
  }

  public static byte[] tiff(BufferedImage image) {
    return written(image, "tiff");
  }

  public static byte[] gif(BufferedImage image) {
    return written(image, "gif");
  }

  private static byte[] written(BufferedImage image, String format) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try {
      if (!ImageIO.write(image, format, out)) {
        throw new IllegalStateException("Nothing writes " + format);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.toByteArray();
  }

  /**
   * A lossless WebP whose left half has one green and whose right half another, with red 200 and
   * blue 50 (RFC 9649, section 3: prefix codes of one and two symbols).
   */
  public static byte[] webp(int width, int height, int leftGreen, int rightGreen) {
    Bits bits = new Bits();
    bits.put(0x2f, 8).put(width - 1, 14).put(height - 1, 14).put(0, 1).put(0, 3);
    // No transforms, no cache of colours, one group of codes.
    bits.put(0, 1).put(0, 1).put(0, 1);
    int low = Math.min(leftGreen, rightGreen);
    int high = Math.max(leftGreen, rightGreen);
    bits.put(1, 1).put(1, 1).put(1, 1).put(low, 8).put(high, 8);
    for (int symbol : new int[] {200, 50, 255, 0}) {
      bits.put(1, 1).put(0, 1).put(1, 1).put(symbol, 8);
    }
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        bits.put((x < width / 2 ? leftGreen : rightGreen) == high ? 1 : 0, 1);
      }
    }
    return riff(chunk("VP8L", bits.bytes()));
  }

  /** The same with what a camera wrote and a note, in the extended format. */
  public static byte[] webpWith(byte[] plain, int width, int height, byte[] exif, String note) {
    byte[] head =
        ByteBuffer.allocate(10)
            .order(ByteOrder.LITTLE_ENDIAN)
            .put((byte) 0x0c)
            .put(new byte[3])
            .put(u24(width - 1))
            .put(u24(height - 1))
            .array();
    byte[] picture = Arrays.copyOfRange(plain, 12, plain.length);
    return riff(
        chunk("VP8X", head),
        picture,
        chunk("EXIF", exif),
        chunk("XMP ", note.getBytes(StandardCharsets.UTF_8)));
  }

  private static byte[] u24(int value) {
    return new byte[] {(byte) value, (byte) (value >> 8), (byte) (value >> 16)};
  }

  private static byte[] chunk(String name, byte[] content) {
    return ByteBuffer.allocate(8 + content.length + content.length % 2)
        .order(ByteOrder.LITTLE_ENDIAN)
        .put(name.getBytes(StandardCharsets.US_ASCII))
        .putInt(content.length)
        .put(content)
        .array();
  }

  private static byte[] riff(byte[]... chunks) {
    ByteArrayOutputStream all = new ByteArrayOutputStream();
    for (byte[] chunk : chunks) {
      all.writeBytes(chunk);
    }
    return ByteBuffer.allocate(12 + all.size())
        .order(ByteOrder.LITTLE_ENDIAN)
        .put("RIFF".getBytes(StandardCharsets.US_ASCII))
        .putInt(4 + all.size())
        .put("WEBP".getBytes(StandardCharsets.US_ASCII))
        .put(all.toByteArray())
        .array();
  }

  /** Puts a segment right behind a JPEG's start. */
  public static byte[] withSegment(byte[] jpeg, int marker, byte[] content) {
    return ByteBuffer.allocate(jpeg.length + 4 + content.length)
        .put(jpeg, 0, 2)
        .put((byte) 0xff)
        .put((byte) marker)
        .putShort((short) (content.length + 2))
        .put(content)
        .put(jpeg, 2, jpeg.length - 2)
        .array();
  }

  /** Puts what a camera wrote into a JPEG. */
  public static byte[] withExif(byte[] jpeg, byte[] exif) {
    byte[] content =
        ByteBuffer.allocate(6 + exif.length)
            .put("Exif\0\0".getBytes(StandardCharsets.US_ASCII))
            .put(exif)
            .array();
    return withSegment(jpeg, 0xe1, content);
  }

  /** Puts a chunk behind a PNG's head. */
  public static byte[] withChunk(byte[] png, String name, byte[] content) {
    CRC32 sum = new CRC32();
    sum.update(name.getBytes(StandardCharsets.US_ASCII));
    sum.update(content);
    return ByteBuffer.allocate(png.length + 12 + content.length)
        .put(png, 0, 33)
        .putInt(content.length)
        .put(name.getBytes(StandardCharsets.US_ASCII))
        .put(content)
        .putInt((int) sum.getValue())
        .put(png, 33, png.length - 33)
        .array();
  }

  private static final class Bits {

    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private int held;
    private int count;

    Bits put(int value, int bits) {
      for (int i = 0; i < bits; i++) {
        held |= ((value >> i) & 1) << count++;
        if (count == 8) {
          out.write(held);
          held = 0;
          count = 0;
        }
      }
      return this;
    }

    byte[] bytes() {
      if (count > 0) {
        out.write(held);
      }
      return out.toByteArray();
    }
  }
}
