package lampwright.store;

/**
 * A place in the change log, in the order in which changes become visible for good.
 *
 * @param transactionId the transaction that wrote the line
 * @param seq the line's number
 */
public record Bookmark(long transactionId, long seq) {

  /** Before the first change. */
  public static final Bookmark START = new Bookmark(0, 0);
}
