package lampwright.tasks;

import lampwright.search.filter.Trait;

/** Which marks a bracket may begin with. */
final class SuggestedMarks {

  private SuggestedMarks() {}

  /**
   * Whether a word of the mark's name begins so, or its name does; the whole name is no beginning.
   */
  static boolean begins(Trait trait, String key) {
    return !trait.word().equals(key)
        && (trait.word().startsWith(key) || trait.word().contains(" " + key));
  }
}
