package lampwright.document;

import java.util.List;

/**
 * What became of reading a document: the value, or every problem that was found.
 *
 * @param <T> what was read
 */
public sealed interface Reading<T> {

  /** The document is right. */
  record Sound<T>(T value) implements Reading<T> {}

  /**
   * The document is wrong.
   *
   * @param problems at least one
   */
  record Faulty<T>(List<Problem> problems) implements Reading<T> {
    public Faulty {
      problems = List.copyOf(problems);
    }
  }
}
