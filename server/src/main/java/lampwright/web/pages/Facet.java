package lampwright.web.pages;

import java.util.List;

/** One way to narrow a search ("mood", "place"), with how many setups each choice leaves. */
public record Facet(String name, List<Choice> choices) {

  public Facet {
    choices = List.copyOf(choices);
  }

  /**
   * One choice.
   *
   * @param path the search with this choice added, or removed where it is active
   * @param active whether the search is narrowed by it now
   */
  public record Choice(String words, int count, String path, boolean active) {}
}
