package lampwright.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import lampwright.search.filter.Filter;
import lampwright.search.filter.Trait;

/**
 * What somebody wants to find.
 *
 * @param studio the studio that is searched; always applied
 * @param text words and "phrases in quotes", without brackets; blank lists everything
 * @param filters all of which a setup must pass; places in them are looked up already
 * @param facets which traits to count
 * @param order of what is found
 * @param limit 1 to 100 hits a page
 * @param cursor where the page starts: {@link SearchResult.Answer#next} of the page before
 * @param onlyThese only setups with these ids, for what was decided elsewhere
 * @param standing which setups are looked at at all
 * @param offs for {@link Order#OFF}, decided elsewhere: how far off each setup is, in hundredths of
 *     a stop; a setup that is not told of comes last
 * @param like what they should be like; then that is their order, and the text must be in them
 */
public record Question(
    String studio,
    String text,
    List<Filter> filters,
    Set<Trait> facets,
    Order order,
    int limit,
    Optional<String> cursor,
    Optional<Set<String>> onlyThese,
    StandingWanted standing,
    Map<String, Integer> offs,
    Optional<Like> like) {

  /** The longest page. */
  public static final int LARGEST_LIMIT = 100;

  /** More filters than anybody sets. */
  public static final int MOST_FILTERS = 40;

  /** What is counted where nobody says what. */
  public static final Set<Trait> USUAL_FACETS =
      Set.of(Trait.MOOD, Trait.PLACE, Trait.PLACE_KIND, Trait.STATE);

  /** Characters that are read; more says nothing about what is wanted. */
  private static final int LONGEST_TEXT = 2_000;

  /** How what is found is put in order. */
  public enum Order {
    /** What fits the words best; without words what is proven first, then the newest change. */
    BEST,
    /** The nearest to the place of the first distance first. */
    NEAR,
    /** What a kit makes most nearly first; equals as a list without words stands. */
    OFF
  }

  /**
   * By where setups stand.
   *
   * @param archived only those that are put by, or only those that are not
   * @param onlyForAll only those that everybody may see: others are not even counted, and no word
   *     of theirs counts in a score
   */
  public record StandingWanted(boolean archived, boolean onlyForAll) {

    /** Whatever is not put by. */
    public static final StandingWanted ANY = new StandingWanted(false, false);
  }

  /** What setups are compared by. Those of which it is not kept are not found. */
  public enum Facts {
    LIGHT,
    /** Of the finished picture. */
    PICTURE
  }

  /**
   * What setups should be like.
   *
   * @param setup the one that is asked with, where one is; it is not among what is found
   * @param by what they are compared by
   * @param asked what the measure compares with, which decides whether pages belong together
   */
  public record Like(Optional<String> setup, Facts by, Packed asked, Resemblance measure) {}

  public Question {
    IndexEntry.requireId("Studio", studio);
    if (limit < 1 || limit > LARGEST_LIMIT) {
      throw new IllegalArgumentException(
          "Limit (" + limit + ") must be 1 to " + LARGEST_LIMIT + ". Maybe 20?");
    }
    if (filters.size() > MOST_FILTERS) {
      throw new IllegalArgumentException(
          "Filters (" + filters.size() + ") must be at most " + MOST_FILTERS + ".");
    }
    if (!facets.stream().allMatch(Trait::isCounted)) {
      throw new IllegalArgumentException("Distances and kits are not counted.");
    }
    if (order == Order.NEAR && filters.stream().noneMatch(Filter.Near.class::isInstance)) {
      throw new IllegalArgumentException("To put the nearest first there must be a place.");
    }
    if (order != Order.BEST && like.isPresent()) {
      throw new IllegalArgumentException("What is most alike comes first, and no other order.");
    }
    text = IndexEntry.cut(text, LONGEST_TEXT);
    filters = List.copyOf(filters);
    facets = Set.copyOf(facets);
    onlyThese = onlyThese.map(Set::copyOf);
    offs = Map.copyOf(offs);
  }

  /** A question that asks for nothing alike and no kit. */
  public Question(
      String studio,
      String text,
      List<Filter> filters,
      Set<Trait> facets,
      Order order,
      int limit,
      Optional<String> cursor,
      Optional<Set<String>> onlyThese,
      StandingWanted standing) {
    this(
        studio,
        text,
        filters,
        facets,
        order,
        limit,
        cursor,
        onlyThese,
        standing,
        Map.of(),
        Optional.empty());
  }

  /** A question with nothing but a text, for a first page of 20. */
  public static Question of(String studio, String text) {
    return new Question(
        studio,
        text,
        List.of(),
        USUAL_FACETS,
        Order.BEST,
        20,
        Optional.empty(),
        Optional.empty(),
        StandingWanted.ANY);
  }

  /** The same question with these filters only. */
  public Question withFilters(List<Filter> others) {
    return new Question(
        studio, text, others, facets, order, limit, cursor, onlyThese, standing, offs, like);
  }

  /** The same question with filters more. */
  public Question and(Filter... more) {
    List<Filter> all = new ArrayList<>(filters);
    all.addAll(Arrays.asList(more));
    return withFilters(all);
  }

  public Question withFacets(Set<Trait> counted) {
    return new Question(
        studio, text, filters, counted, order, limit, cursor, onlyThese, standing, offs, like);
  }

  public Question withOrder(Order wanted) {
    return new Question(
        studio, text, filters, facets, wanted, limit, cursor, onlyThese, standing, offs, like);
  }

  public Question withLimit(int hits) {
    return new Question(
        studio, text, filters, facets, order, hits, cursor, onlyThese, standing, offs, like);
  }

  public Question withCursor(String start) {
    return new Question(
        studio,
        text,
        filters,
        facets,
        order,
        limit,
        Optional.of(start),
        onlyThese,
        standing,
        offs,
        like);
  }

  public Question withOnlyThese(Set<String> setups) {
    return new Question(
        studio,
        text,
        filters,
        facets,
        order,
        limit,
        cursor,
        Optional.of(setups),
        standing,
        offs,
        like);
  }

  /** The same question with how far off setups are, in hundredths of a stop. */
  public Question withOffs(Map<String, Integer> hundredths) {
    return new Question(
        studio, text, filters, facets, order, limit, cursor, onlyThese, standing, hundredths, like);
  }

  public Question withStanding(StandingWanted wanted) {
    return new Question(
        studio, text, filters, facets, order, limit, cursor, onlyThese, wanted, offs, like);
  }

  /** The same question with what is most alike first. */
  public Question withLike(Like wanted) {
    return new Question(
        studio,
        text,
        filters,
        facets,
        order,
        limit,
        cursor,
        onlyThese,
        standing,
        offs,
        Optional.of(wanted));
  }

  /** The same question by somebody who sees only what all may see. */
  public Question onlyForAll() {
    return withStanding(new StandingWanted(standing.archived(), true));
  }
}
