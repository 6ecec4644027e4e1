package lampwright.search;

/** The analysed fields, with what a word in each is worth. */
enum TextField {
  TITLE("title", 4),
  MOOD("mood", 3),
  INTENT("intent", 2),
  GENRE("genre", 1.5f),
  PLACE("place", 1.5f),
  WRITTEN("notes", 1),
  GEAR("gear", 1),
  ROLE("light", 1);

  /** How people read it in a reason. */
  final String label;

  /** What a word here counts against the others. A judgement: no source. */
  final float weight;

  TextField(String label, float weight) {
    this.label = label;
    this.weight = weight;
  }

  /** The field's name in Lucene. */
  String lucene() {
    return "text_" + label;
  }
}
