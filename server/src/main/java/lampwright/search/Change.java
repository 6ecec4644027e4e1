package lampwright.search;

/** One line of the database's change log. */
public sealed interface Change {

  /** Where the line stands in the log. */
  Bookmark at();

  /** A setup as it is now. */
  record Kept(Bookmark at, IndexEntry entry) implements Change {}

  /** The revision of a setup that is gone with its history: what comes later begins anew. */
  int ERASED = 0;

  /** A setup that is no more, with the last revision that it had, or {@link #ERASED}. */
  record Gone(Bookmark at, String studio, String setup, int revision) implements Change {}
}
