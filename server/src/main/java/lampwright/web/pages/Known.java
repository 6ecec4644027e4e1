package lampwright.web.pages;

/** How a figure is known: the quiet word beside it. */
public enum Known {
  METERED("metered", "read off a meter on the day"),
  SET("set", "dialled in on the gear"),
  ESTIMATED("estimated", "somebody's judgement"),
  COMPUTED("computed", "worked out from the rest; the meter decides");

  private final String word;
  private final String meaning;

  Known(String word, String meaning) {
    this.word = word;
    this.meaning = meaning;
  }

  public String word() {
    return word;
  }

  public String meaning() {
    return meaning;
  }
}
