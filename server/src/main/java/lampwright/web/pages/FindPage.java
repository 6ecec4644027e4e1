package lampwright.web.pages;

import java.util.List;
import java.util.Optional;

/**
 * The studio's setups: all of them, or what a search found.
 *
 * @param action where the search box asks, with {@code q}
 * @param query what stands in the box: words, and brackets that could not be read
 * @param kept other parts of the search that the box must send along (filters)
 * @param faults what is wrong with the search, a line each
 * @param marks the filters that hold now, each with the search without it
 * @param facets the most telling ways to narrow the list
 * @param moreFacets the others
 * @param total how many there are, in words ("41 setups")
 * @param clearPath all setups again
 * @param orders the other orders, where there are any
 * @param next the following page of the list
 * @param remark what is to be known of how it was searched
 * @param instead searches that would find something, where this one found nothing
 * @param examples searches with brackets that find something
 * @param tolerances how far off setups may be, where a kit is asked for
 * @param kits what may be asked for by what a kit makes; none where such a filter holds already
 * @param showing where a picture is shown to
 * @param keeping how the search is kept; none where nothing is asked, or not all of it is
 *     understood
 */
public record FindPage(
    Layout layout,
    String action,
    String query,
    List<Kept> kept,
    List<String> faults,
    List<Link> marks,
    List<Facet> facets,
    List<Facet> moreFacets,
    List<Hit> hits,
    String total,
    String clearPath,
    List<Link> orders,
    Optional<String> next,
    Optional<String> remark,
    List<Lack> instead,
    List<Example> examples,
    List<Tolerance> tolerances,
    List<KitChoice> kits,
    Showing showing,
    Optional<Keeping> keeping) {

  public FindPage {
    orders = List.copyOf(orders);
    tolerances = List.copyOf(tolerances);
    kept = List.copyOf(kept);
    faults = List.copyOf(faults);
    marks = List.copyOf(marks);
    facets = List.copyOf(facets);
    moreFacets = List.copyOf(moreFacets);
    hits = List.copyOf(hits);
    instead = List.copyOf(instead);
    examples = List.copyOf(examples);
    kits = List.copyOf(kits);
  }

  /** Where a picture is shown to, to find what looks like it. */
  public record Showing(String action, String csrfToken) {}

  /** A part of the search that stays while the words change. */
  public record Kept(String name, String value) {}

  /**
   * How far off a setup may be that a kit makes.
   *
   * @param isNow whether it is what holds now
   */
  public record Tolerance(String words, String path, boolean isNow) {}

  /**
   * How the search is kept.
   *
   * @param action where the form is sent
   * @param question the search as it stands in the address
   * @param name what it may be called
   */
  public record Keeping(String action, String csrfToken, String question, String name) {}

  /** A kit and the filter by what it makes. */
  public record KitChoice(String name, String filter) {}

  /**
   * What there is none of, and what there is for it.
   *
   * @param words {@code No setup with 2 lights}
   */
  public record Lack(String words, List<Offer> offers) {
    public Lack {
      offers = List.copyOf(offers);
    }
  }

  /** Another search and how many it finds. */
  public record Offer(String words, long count, String path) {}

  /**
   * A search to learn from.
   *
   * @param typed as it would be typed, with its bracket
   * @param words what it means
   */
  public record Example(String typed, String words, String path) {}

  /** Whether anything was asked at all. */
  public boolean isSearch() {
    return !query.isEmpty() || !marks.isEmpty();
  }

  /** Whether a filter that holds is among those behind "more". */
  public boolean isMoreInUse() {
    return moreFacets.stream().flatMap(f -> f.choices().stream()).anyMatch(Facet.Choice::active);
  }
}
