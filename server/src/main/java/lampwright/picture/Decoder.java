package lampwright.picture;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.util.Iterator;
import java.util.Locale;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;

/** Decodes a file with the reader of its own format, and no other's. */
final class Decoder {

  /** More pixels than these are left out while decoding: every second, every third, and so on. */
  static final long MOST_DECODED = 26_000_000;

  private Decoder() {}

  static Decoded decode(ByteBuffer file, Parts parts) throws Unusable.Found {
    ImageReader reader = reader(parts.format());
    try {
      // What is told besides the picture is not looked at: it can be packed without a bound.
      reader.setInput(new BufferStream(file), true, parts.format() == PictureFormat.PNG);
      if (reader.getWidth(0) != parts.width() || reader.getHeight(0) != parts.height()) {
        throw Unusable.unreadable(
            "The file says twice how large the picture is, and not the same.");
      }
      ImageReadParam how = reader.getDefaultReadParam();
      int step = step((long) parts.width() * parts.height());
      how.setSourceSubsampling(step, step, 0, 0);
      if (parts.format() == PictureFormat.JPEG
          && PackedBytes.suits(reader.getImageTypes(0).next())) {
        how.setDestination(
            PackedBytes.image(
                (parts.width() + step - 1) / step, (parts.height() + step - 1) / step));
      }
      BufferedImage image = reader.read(0, how);
      return Decoded.of(image, parts.profile());
    } catch (IOException | RuntimeException e) {
      // The libraries throw whatever comes up in a broken file; all of it means the same to us.
      throw Unusable.unreadable("The %s is broken.".formatted(parts.format()));
    } finally {
      reader.dispose();
    }
  }

  private static int step(long pixels) {
    int step = 1;
    while (pixels / ((long) step * step) > MOST_DECODED) {
      step++;
    }
    return step;
  }

  private static ImageReader reader(PictureFormat format) {
    Iterator<ImageReader> readers =
        ImageIO.getImageReadersByFormatName(format.name().toLowerCase(Locale.ROOT));
    if (!readers.hasNext()) {
      throw new IllegalStateException("No reader for " + format);
    }
    return readers.next();
  }
}
