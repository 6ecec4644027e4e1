package lampwright.benchmarks.relevance;

import java.util.List;
import java.util.Map;
import lampwright.search.IndexEntry;

/**
 * Setups, questions, and what people said of each pair.
 *
 * @param entries the setups as they are indexed, their meaning still missing
 * @param judgements by question and setup; what is not listed is 0
 */
record JudgedSet(
    String name,
    List<IndexEntry> entries,
    List<Asked> questions,
    Map<String, Map<String, Integer>> judgements) {

  /**
   * @param part "tune" or "held": what is held is never tuned on
   * @param kind what sort of question it is
   */
  record Asked(String id, String part, String kind, String text) {}

  /** The grades of a question's setups. */
  Map<String, Integer> grades(Asked asked) {
    return judgements.getOrDefault(asked.id(), Map.of());
  }
}
