package lampwright.drawing;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.zip.DataFormatException;
import java.util.zip.Deflater;
import java.util.zip.Inflater;

/** A drawing as it is kept: by DEFLATE (RFC 1951) it takes about a tenth of the room. */
public final class PackedSvg {

  private static final int PIECE_BYTES = 16_384;

  private final byte[] packed;
  private final int wholeBytes;

  private PackedSvg(byte[] packed, int wholeBytes) {
    this.packed = packed;
    this.wholeBytes = wholeBytes;
  }

  /** Packs a drawing. */
  public static PackedSvg of(Svg drawing) {
    byte[] whole = drawing.markup().getBytes(StandardCharsets.UTF_8);
    try (Deflater deflater = new Deflater(Deflater.BEST_SPEED, true)) {
      deflater.setInput(whole);
      deflater.finish();
      ByteArrayOutputStream packed = new ByteArrayOutputStream();
      byte[] piece = new byte[PIECE_BYTES];
      while (!deflater.finished()) {
        packed.write(piece, 0, deflater.deflate(piece));
      }
      return new PackedSvg(packed.toByteArray(), whole.length);
    }
  }

  /** The drawing that was packed. */
  public Svg unpacked() {
    byte[] whole = new byte[wholeBytes];
    try (Inflater inflater = new Inflater(true)) {
      inflater.setInput(packed);
      for (int filled = 0; filled < wholeBytes; ) {
        int more = inflater.inflate(whole, filled, wholeBytes - filled);
        if (more == 0) {
          throw new IllegalStateException("A packed drawing ends too early.");
        }
        filled += more;
      }
    } catch (DataFormatException e) {
      throw new IllegalStateException("A packed drawing cannot be read.", e);
    }
    return Svg.trusted(new String(whole, StandardCharsets.UTF_8));
  }

  /** How much room it takes. */
  public int packedBytes() {
    return packed.length;
  }
}
