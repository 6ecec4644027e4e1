package lampwright.benchmarks.relevance;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import lampwright.meaning.Meaning;
import lampwright.meaning.Meanings;

/** Nothing but the nearness of meanings, each setup looked at. */
record ByMeaningAlone(Map<String, Meaning> setups, Meanings meanings) implements Ranker {

  @Override
  public String name() {
    return "meaning alone";
  }

  @Override
  public List<String> rank(String question) {
    return meanings.find(question).map(this::nearest).orElse(List.of());
  }

  private List<String> nearest(Meaning asked) {
    List<String> ids = new ArrayList<>(setups.keySet());
    ids.sort(Comparator.comparingDouble((String id) -> -setups.get(id).nearness(asked)));
    return ids.subList(0, Math.min(100, ids.size()));
  }
}
