package lampwright.benchmarks.relevance;

import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * How good a ranking is. Gain is the grade itself (K. Järvelin and J. Kekäläinen, "Cumulated
 * gain-based evaluation of IR techniques", 2002).
 */
final class Measures {

  private Measures() {}

  /** Discounted gain of the first so many, as a share of the best possible. */
  static double ndcg(List<String> ranking, Map<String, Integer> grades, int depth) {
    double gain = 0;
    for (int i = 0; i < Math.min(depth, ranking.size()); i++) {
      gain += Math.max(0, grades.getOrDefault(ranking.get(i), 0)) / discount(i);
    }
    List<Integer> best =
        grades.values().stream()
            .filter(grade -> grade > 0)
            .sorted(Comparator.reverseOrder())
            .limit(depth)
            .toList();
    double most = 0;
    for (int i = 0; i < best.size(); i++) {
      most += best.get(i) / discount(i);
    }
    return most == 0 ? Double.NaN : gain / most;
  }

  private static double discount(int place) {
    return Math.log(place + 2.0) / Math.log(2);
  }

  /** Which share of what is right stands among the first so many. */
  static double recall(
      List<String> ranking, Map<String, Integer> grades, int leastGrade, int depth) {
    Set<String> right = new HashSet<>();
    grades.forEach(
        (setup, grade) -> {
          if (grade >= leastGrade) {
            right.add(setup);
          }
        });
    int all = right.size();
    right.retainAll(ranking.subList(0, Math.min(depth, ranking.size())));
    return all == 0 ? Double.NaN : (double) right.size() / all;
  }
}
