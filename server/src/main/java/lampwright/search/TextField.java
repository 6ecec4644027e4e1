package lampwright.search;

/** The parts of a setup's text, with what a word in each is worth. */
enum TextField {
  TITLE("title", 2),
  MOOD("mood", 2),
  INTENT("intent", 1),
  GENRE("genre", 1),
  PLACE("place", 1),
  WRITTEN("notes", 1),
  GEAR("gear", 1),
  ROLE("light", 1);

  /** Where Lucene keeps the words of all parts. */
  static final String WORDS = "words";

  /** How people read it in a reason. */
  final String label;

  /**
   * How often each of its words is counted. Words are counted over all parts together before they
   * saturate (S. Robertson, H. Zaragoza and M. Taylor, "Simple BM25 extension to multiple weighted
   * fields", 2004), so that a word in the title and in the text is not two words. The numbers are a
   * judgement, and measured: see benchmarks.md.
   */
  final int times;

  TextField(String label, int times) {
    this.label = label;
    this.times = times;
  }

  /** Where Lucene keeps the text itself. */
  String lucene() {
    return "text_" + label;
  }
}
