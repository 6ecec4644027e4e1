package lampwright.search;

import java.util.Arrays;

/** Facts of a setup as bytes, which nobody but a {@link Resemblance} reads. */
public final class Packed {

  private final byte[] bytes;

  private Packed(byte[] bytes) {
    this.bytes = bytes;
  }

  public static Packed of(byte[] bytes) {
    return new Packed(bytes.clone());
  }

  /** A copy of them. */
  public byte[] toBytes() {
    return bytes.clone();
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Packed that && Arrays.equals(bytes, that.bytes);
  }

  @Override
  public int hashCode() {
    return Arrays.hashCode(bytes);
  }

  @Override
  public String toString() {
    return bytes.length + " bytes";
  }
}
