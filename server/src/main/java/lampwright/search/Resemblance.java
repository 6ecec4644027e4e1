package lampwright.search;

/**
 * How alike setups are to something that is asked for. The index knows no measure of its own: it
 * keeps {@link Packed} facts of each setup and hands them to the asker's.
 */
@FunctionalInterface
public interface Resemblance {

  /**
   * How alike one setup is, 0 to 1 (the same).
   *
   * @param bytes the setup's packed facts are a part of them; only to be read, and not to be kept
   * @param offset of the first byte
   * @param length how many there are
   */
  double of(byte[] bytes, int offset, int length);
}
