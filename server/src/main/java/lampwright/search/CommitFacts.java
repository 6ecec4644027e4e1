package lampwright.search;

import java.util.Map;

/**
 * What a commit says of itself.
 *
 * @param identity the database that the index is a copy of
 * @param layout {@link EntryDocument#VERSION}
 * @param analysis {@link Words#VERSION}
 * @param complete whether the index has ever held everything up to its bookmark
 * @param bookmark where it stands in the change log
 */
record CommitFacts(String identity, int layout, int analysis, boolean complete, Bookmark bookmark) {

  static CommitFacts of(String identity, boolean complete, Bookmark bookmark) {
    return new CommitFacts(identity, EntryDocument.VERSION, Words.VERSION, complete, bookmark);
  }

  /**
   * Reads what {@link #toUserData} wrote.
   *
   * @throws IllegalArgumentException where something is missing or no number
   */
  static CommitFacts ofUserData(Map<String, String> data) {
    return new CommitFacts(
        text(data, "identity"),
        Integer.parseInt(text(data, "layout")),
        Integer.parseInt(text(data, "analysis")),
        Boolean.parseBoolean(text(data, "complete")),
        new Bookmark(
            Long.parseLong(text(data, "transaction_id")), Long.parseLong(text(data, "seq"))));
  }

  Map<String, String> toUserData() {
    return Map.of(
        "identity", identity,
        "layout", Integer.toString(layout),
        "analysis", Integer.toString(analysis),
        "complete", Boolean.toString(complete),
        "transaction_id", Long.toString(bookmark.transactionId()),
        "seq", Long.toString(bookmark.seq()));
  }

  CommitFacts completeAt(Bookmark place) {
    return new CommitFacts(identity, layout, analysis, true, place);
  }

  CommitFacts at(Bookmark place) {
    return new CommitFacts(identity, layout, analysis, complete, place);
  }

  private static String text(Map<String, String> data, String key) {
    String value = data.get(key);
    if (value == null) {
      throw new IllegalArgumentException("The commit does not say its " + key + ".");
    }
    return value;
  }
}
