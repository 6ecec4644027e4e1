package lampwright.archive;

/**
 * How much of an archive is read at most.
 *
 * @param bytes of the file as it is sent
 * @param entries files in it
 * @param unpackedBytes of all that it unpacks to
 * @param lineBytes of one line
 * @param lines in all its files
 */
public record Limits(long bytes, int entries, long unpackedBytes, int lineBytes, int lines) {

  /** What is taken where nothing else is said: 20 GiB, 100,000 files, a million lines. */
  public static final Limits USUAL = new Limits(20L << 30, 100_000, 40L << 30, 4 << 20, 1_000_000);

  /**
   * By how much more than its size a file may unpack beyond {@link #ALWAYS_UNPACKED}; revisions
   * that hardly differ pack down to a fiftieth.
   */
  static final int MOST_TIMES = 200;

  /** What any archive may unpack to, however small it is. */
  static final long ALWAYS_UNPACKED = 64L << 20;

  /** What an archive of a size may unpack to. */
  long unpackedOf(long size) {
    return Math.min(unpackedBytes, ALWAYS_UNPACKED + MOST_TIMES * size);
  }
}
