package lampwright.search;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import lampwright.meaning.Meaning;
import lampwright.meaning.Meanings;
import org.apache.lucene.document.Document;
import org.apache.lucene.search.IndexSearcher;
import org.apache.lucene.search.Query;

/**
 * Finds setups of one studio.
 *
 * <p>Words are joined by "or"; {@link QueryPlan#least} of them must match, or the text as a whole
 * must lie near in meaning. A word that means the same or nearly the same counts below the word
 * itself. Phrases in quotes must occur. A text without any word that is kept ("the", punctuation)
 * asks for nothing, and lists everything like a blank one. Where setups should be like something,
 * that alone puts them in order, and the words must match.
 */
public final class Search {

  private final SetupIndex index;
  private final Understanding understanding;
  private final Reasons reasons;
  private final Meanings meanings;

  /**
   * @param meanings what questions mean
   */
  public Search(SetupIndex index, Meanings meanings) {
    this.index = index;
    this.meanings = meanings;
    this.understanding = new Understanding(index.words(), Thesaurus.load(index.words()));
    this.reasons = new Reasons(index.words());
  }

  /**
   * Answers from the newest state that the index shows.
   *
   * @throws IndexFailure where the index is closed or found broken; the follower then mends it
   */
  public SearchResult search(Question question) {
    List<Wish> wishes = understanding.of(question.text());
    Optional<Cursor> cursor =
        question.cursor().flatMap(text -> Cursor.find(text, question, wishes.size()));
    if (question.cursor().isPresent() && cursor.isEmpty()) {
      return new SearchResult.UnreadableCursor();
    }
    Optional<Meaning> asked =
        wishes.isEmpty() || question.like().isPresent()
            ? Optional.empty()
            : meanings.find(question.text());
    return index.read(searcher -> answer(searcher, question, wishes, asked, cursor));
  }

  /**
   * All that matches a question, whatever its order, page and counts.
   *
   * @param most how many are named; of more only the number is told
   * @throws IndexFailure where the index is closed or found broken; the follower then mends it
   */
  public Matching matching(Question question, int most) {
    Question bare = question.withFacets(Set.of()).withOrder(Question.Order.BEST);
    List<Wish> wishes = understanding.of(bare.text());
    boolean isLoading = meanings.isLoading();
    Optional<Meaning> asked = wishes.isEmpty() ? Optional.empty() : meanings.find(bare.text());
    boolean isTold = wishes.isEmpty() || asked.isPresent() || !isLoading;
    boolean isSettled = isTold && index.isComplete();
    return index.read(
        searcher -> {
          Sought sought = Sought.of(searcher, bare, wishes, asked, Optional.empty());
          MatchCollector found = new MatchCollector(most);
          Narrowing.of(bare).of(sought.looked()).collect(sought.words(), found);
          return found.matching(isSettled);
        });
  }

  /** Differs from what it was whenever a search of the studio may find something else. */
  public String shown(String studio) {
    return index.shown(studio);
  }

  private SearchResult answer(
      IndexSearcher searcher,
      Question question,
      List<Wish> wishes,
      Optional<Meaning> asked,
      Optional<Cursor> cursor)
      throws IOException {
    Sought sought = Sought.of(searcher, question, wishes, asked, cursor);
    NearInMeaning near = sought.near();
    Narrowing narrowing = Narrowing.of(question);
    boolean byLikeness = question.like().isPresent();

    Optional<Place> after = cursor.map(at -> new Place(at.rank(), at.setup(), 0));
    Optional<Fusion> fusion =
        (wishes.isEmpty() && !byLikeness) || question.order() != Question.Order.BEST
            ? Optional.empty()
            : Optional.of(new Fusion());
    PageCollector found =
        new PageCollector(
            narrowing.traversal(), fusion, narrowing.ranking(), question.limit() + 1, after);
    Chosen passing = narrowing.of(sought.looked());
    if (byLikeness) {
      passing.and(sought.words()).collect(resembling(question.like().get()), found);
    } else {
      passing.collect(sought.words(), found);
    }

    if (fusion.isPresent() && asked.isPresent()) {
      near = near.and(searcher, fusion.get().bestByWords(), asked.get());
    }
    Fusion.Scale scale =
        cursor.isPresent()
            ? cursor.get().scale()
            : new Fusion.Scale(
                byLikeness ? 1 : fusion.map(Fusion::best).orElse(0.0),
                near.nearest(),
                Fusion.share(wishes, sought.rarities()));
    int wanted = question.limit() + 1;
    List<Place> places =
        fusion.isPresent() ? fusion.get().page(searcher, scale, near, wanted, after) : found.page();
    boolean more = places.size() > question.limit();
    List<Place> page = more ? places.subList(0, question.limit()) : places;
    Optional<String> next = Optional.empty();
    if (more) {
      Place last = page.getLast();
      long checksum = Cursor.checksum(question);
      next =
          Optional.of(
              new Cursor(
                      checksum,
                      sought.setups(),
                      sought.rarities(),
                      scale,
                      last.rank(),
                      last.setup())
                  .write());
    }
    List<SearchResult.Hit> hits = new ArrayList<>();
    for (Place place : page) {
      double score = fusion.isPresent() ? place.score() : 0;
      hits.add(hit(searcher, wishes, sought.rarities(), place, score));
    }
    List<Instead> instead =
        found.total() > 0
            ? List.of()
            : new Loosening(question, sought.looked(), sought.words()).list();
    return new SearchResult.Answer(
        hits,
        found.total(),
        found.facets(),
        next,
        !wishes.isEmpty() && asked.isEmpty() && !byLikeness,
        instead);
  }

  private static Query resembling(Question.Like like) {
    return new Resembling(EntryDocument.facts(like.by()), like.measure());
  }

  private SearchResult.Hit hit(
      IndexSearcher searcher,
      List<Wish> wishes,
      List<QueryPlan.Rarity> rarities,
      Place place,
      double score)
      throws IOException {
    Document setup = searcher.storedFields().document(place.document());
    Reasons.Why why = why(wishes, rarities, setup);
    return new SearchResult.Hit(
        place.setup(), EntryDocument.revision(setup), score, why.reasons(), why.why());
  }

  private Reasons.Why why(List<Wish> wishes, List<QueryPlan.Rarity> rarities, Document setup) {
    if (wishes.isEmpty()) {
      return new Reasons.Why(List.of(), List.of());
    }
    Reasons.Why words = reasons.of(wishes, rarities, setup);
    return words.reasons().isEmpty()
        ? new Reasons.Why(List.of(Reasons.nearInMeaning(setup)), List.of())
        : words;
  }
}
