package lampwright.meaning;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.Arrays;

/**
 * What a text means: a direction in a space of {@link #DIMENSIONS} dimensions. Two texts are the
 * nearer in meaning the smaller the angle between theirs.
 */
public final class Meaning {

  /** Of every meaning; more would only be of another model. */
  public static final int DIMENSIONS = 384;

  private static final int BYTES = DIMENSIONS * Short.BYTES;

  private final float[] direction;

  private Meaning(float[] direction) {
    this.direction = direction;
  }

  /**
   * The direction of some numbers, whatever their length.
   *
   * @throws IllegalArgumentException where they are not as many as the dimensions, all zero or not
   *     finite
   */
  public static Meaning of(float[] numbers) {
    double squares = 0;
    for (float number : numbers) {
      squares += (double) number * number;
    }
    if (numbers.length != DIMENSIONS || !(squares > 0) || !Double.isFinite(squares)) {
      throw new IllegalArgumentException("These numbers are no direction of meaning.");
    }
    float[] direction = new float[DIMENSIONS];
    double length = Math.sqrt(squares);
    for (int i = 0; i < DIMENSIONS; i++) {
      direction[i] = (float) (numbers[i] / length);
    }
    return new Meaning(direction);
  }

  /**
   * Reads what {@link #toBytes} wrote.
   *
   * @throws IllegalArgumentException where it is of another length or no direction
   */
  public static Meaning ofBytes(byte[] bytes) {
    if (bytes.length != BYTES) {
      throw new IllegalArgumentException(
          "A meaning (" + bytes.length + " bytes) must have " + BYTES + ".");
    }
    ByteBuffer in = ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN);
    float[] numbers = new float[DIMENSIONS];
    for (int i = 0; i < DIMENSIONS; i++) {
      numbers[i] = Float.float16ToFloat(in.getShort());
    }
    return of(numbers);
  }

  /** Its numbers in half precision (IEEE 754 binary16), little-endian: 768 bytes. */
  public byte[] toBytes() {
    ByteBuffer out = ByteBuffer.allocate(BYTES).order(ByteOrder.LITTLE_ENDIAN);
    for (float number : direction) {
      out.putShort(Float.floatToFloat16(number));
    }
    return out.array();
  }

  /** A copy of its numbers, of length 1 together. */
  public float[] direction() {
    return direction.clone();
  }

  /** The cosine of the angle between two: 1 the same, 0 nothing in common. */
  public double nearness(Meaning other) {
    double sum = 0;
    for (int i = 0; i < DIMENSIONS; i++) {
      sum += (double) direction[i] * other.direction[i];
    }
    return sum;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Meaning meaning && Arrays.equals(direction, meaning.direction);
  }

  @Override
  public int hashCode() {
    return Arrays.hashCode(direction);
  }
}
