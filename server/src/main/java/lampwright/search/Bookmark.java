package lampwright.search;

import java.util.Comparator;

/**
 * A place in the database's change log, in the order in which changes became visible.
 *
 * @param transactionId the transaction that wrote the change, not negative
 * @param seq the change's number in the log, not negative
 */
public record Bookmark(long transactionId, long seq) implements Comparable<Bookmark> {

  /** Before the first change. */
  public static final Bookmark START = new Bookmark(0, 0);

  private static final Comparator<Bookmark> ORDER =
      Comparator.comparingLong(Bookmark::transactionId).thenComparingLong(Bookmark::seq);

  public Bookmark {
    if (transactionId < 0 || seq < 0) {
      throw new IllegalArgumentException(
          "Bookmark (" + transactionId + ", " + seq + ") must not be negative.");
    }
  }

  @Override
  public int compareTo(Bookmark other) {
    return ORDER.compare(this, other);
  }
}
