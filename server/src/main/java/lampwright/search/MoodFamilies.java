package lampwright.search;

import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import lampwright.search.filter.Filter;

/** Which words of mood are neighbours, as they are written. */
public final class MoodFamilies {

  private final Map<String, Set<String>> neighbours = new HashMap<>();

  public MoodFamilies() {
    for (List<String> family : Thesaurus.families("mood-words.txt")) {
      for (String member : family) {
        Set<String> others =
            neighbours.computeIfAbsent(Filter.key(member), _ -> new LinkedHashSet<>());
        family.stream().filter(other -> !other.equals(member)).forEach(others::add);
      }
    }
  }

  /** The neighbours of a word of mood; none of any other word. */
  public Set<String> neighbours(String word) {
    return neighbours.getOrDefault(Filter.key(word), Set.of());
  }
}
