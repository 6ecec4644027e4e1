package lampwright.picture;

import java.util.List;
import java.util.Optional;

/** The size and the facts of a TIFF file's first picture (TIFF 6.0, sections 2 and 8). */
final class TiffParts {

  private static final int WIDTH = 0x0100;
  private static final int HEIGHT = 0x0101;

  /** Room for a profile, notes and the places of strips; the picture itself is not in it. */
  private static final long MOST_TOLD_BYTES = 16 << 20;

  private TiffParts() {}

  static Parts of(Bytes file) throws Unusable.Found {
    TiffDirectory first = TiffDirectory.first(file).orElseThrow(Unusable::truncated);
    long width = first.whole(WIDTH).orElse(0);
    long height = first.whole(HEIGHT).orElse(0);
    if (width < 1 || height < 1 || width > Integer.MAX_VALUE || height > Integer.MAX_VALUE) {
      throw Unusable.unreadable("The TIFF does not say how large it is, or ends before it does.");
    }
    if (!TiffDirectory.isBounded(file, MOST_TOLD_BYTES)) {
      throw Unusable.unreadable("The TIFF tells more beside its picture than is read here.");
    }
    return new Parts(
        PictureFormat.TIFF,
        (int) width,
        (int) height,
        List.of(),
        Optional.of(file),
        Optional.empty());
  }
}
