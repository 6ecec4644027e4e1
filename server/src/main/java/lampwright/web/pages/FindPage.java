package lampwright.web.pages;

import java.util.List;
import java.util.Optional;

/**
 * The studio's setups: all of them, or what a search found.
 *
 * @param action where the search box asks, with {@code q}
 * @param query what was asked; empty for all
 * @param kept other parts of the search that the box must send along (active facets)
 * @param total how many there are, in words ("41 setups")
 * @param clearPath all setups again
 * @param next the following page of the list
 * @param suggestions searches that would find something, where this one found nothing
 */
public record FindPage(
    Layout layout,
    String action,
    String query,
    List<Kept> kept,
    List<Facet> facets,
    List<Hit> hits,
    String total,
    String clearPath,
    Optional<String> next,
    List<Link> suggestions) {

  public FindPage {
    kept = List.copyOf(kept);
    facets = List.copyOf(facets);
    hits = List.copyOf(hits);
    suggestions = List.copyOf(suggestions);
  }

  /** A part of the search that stays while the words change. */
  public record Kept(String name, String value) {}

  /** The facet choices that narrow the search now. */
  public List<Facet.Choice> active() {
    return facets.stream().flatMap(f -> f.choices().stream()).filter(Facet.Choice::active).toList();
  }

  /** Whether anything was asked at all. */
  public boolean isSearch() {
    return !query.isEmpty() || !active().isEmpty();
  }
}
