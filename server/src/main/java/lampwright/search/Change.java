package lampwright.search;

/** One line of the database's change log. */
public sealed interface Change {

  /** Where the line stands in the log. */
  Bookmark at();

  /** A setup as it is now. */
  record Kept(Bookmark at, IndexEntry entry) implements Change {}

  /** A setup that is no more, with the last revision that it had. */
  record Gone(Bookmark at, String studio, String setup, int revision) implements Change {}
}
