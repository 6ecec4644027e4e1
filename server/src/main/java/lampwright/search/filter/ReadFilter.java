package lampwright.search.filter;

import lampwright.language.Said;

/** What a bracket came to. */
public sealed interface ReadFilter {

  /** A filter. */
  record Understood(Filter filter) implements ReadFilter {}

  /**
   * Nothing that is known.
   *
   * @param line what is wrong and what may have been meant, in one line
   */
  record Unclear(Said line) implements ReadFilter {}
}
