package lampwright.tasks;

import java.util.List;
import java.util.function.Function;
import lampwright.people.StudioId;
import lampwright.search.Question;
import lampwright.search.filter.Filter;
import lampwright.search.filter.ReadFilter;

/**
 * Reads a question that was kept as it stands in an address; how addresses are read is the web's.
 */
@FunctionalInterface
public interface QuestionReader {

  /**
   * Reads it.
   *
   * @param locate looks up the places and kits of filters, one answer for each
   * @throws Refused Invalid at {@code /question} where it says something that is not understood, or
   *     not any more
   */
  Question read(StudioId studio, String question, Function<List<Filter>, List<ReadFilter>> locate);
}
