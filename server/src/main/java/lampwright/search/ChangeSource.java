package lampwright.search;

import java.util.List;
import java.util.stream.Stream;

/**
 * The truth that the index follows. Both calls may throw any unchecked exception, which the
 * follower takes as "not now" and tries again: so one document that cannot be read is for the
 * source to leave out, or nothing behind it is ever found.
 */
public interface ChangeSource {

  /**
   * The changes after the bookmark, oldest first, at most so many. A change may be listed only when
   * nothing before it can still appear.
   *
   * @throws LogGap where the log does not reach back to the bookmark, or never reached it
   */
  List<Change> after(Bookmark bookmark, int limit);

  /** Every setup as of one moment; closed by the follower. */
  Everything everything();

  /**
   * All setups.
   *
   * @param asOf the newest change that is surely contained; later ones may be contained too
   * @param total about how many entries come, for the progress that people see
   * @param entries the setups; closing it frees what it was read from
   */
  record Everything(Bookmark asOf, long total, Stream<IndexEntry> entries)
      implements AutoCloseable {
    @Override
    public void close() {
      entries.close();
    }
  }

  /** The log cannot lead from the index's bookmark to now: only a rebuild can. */
  final class LogGap extends RuntimeException {
    private static final long serialVersionUID = 1;

    public LogGap(String message) {
      super(message);
    }
  }
}
