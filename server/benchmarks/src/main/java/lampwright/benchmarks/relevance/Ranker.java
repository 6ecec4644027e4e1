package lampwright.benchmarks.relevance;

import java.util.List;

/** A way to answer questions, with a name for the table. */
interface Ranker {

  String name();

  /** The setups' ids, best first, at most a hundred. */
  List<String> rank(String question);
}
