package lampwright.search;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.apache.lucene.document.Document;
import org.apache.lucene.index.Term;
import org.apache.lucene.search.BooleanClause.Occur;
import org.apache.lucene.search.BooleanQuery;
import org.apache.lucene.search.CollectorManager;
import org.apache.lucene.search.IndexSearcher;
import org.apache.lucene.search.Query;
import org.apache.lucene.search.TermInSetQuery;
import org.apache.lucene.search.TermQuery;
import org.apache.lucene.util.BytesRef;

/**
 * Finds setups of one studio.
 *
 * <p>Words are joined by "or"; {@link QueryPlan#least} of them must match. A word that means the
 * same or nearly the same counts below the word itself. Phrases in quotes must occur. A text
 * without any word that is kept ("the", punctuation) asks for nothing, and lists everything like a
 * blank one.
 */
public final class Search {

  private final SetupIndex index;
  private final Understanding understanding;
  private final Reasons reasons;

  public Search(SetupIndex index) {
    this.index = index;
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
    return index.read(searcher -> answer(searcher, question, wishes, cursor));
  }

  private SearchResult answer(
      IndexSearcher searcher, Question question, List<Wish> wishes, Optional<Cursor> cursor)
      throws IOException {
    Query studio = seen(question);
    int setups = cursor.isPresent() ? cursor.get().setups() : searcher.count(studio);
    List<QueryPlan.Rarity> rarities =
        cursor.isPresent() ? cursor.get().rarities() : QueryPlan.rarities(searcher, wishes, studio);
    BooleanQuery.Builder query = new BooleanQuery.Builder().add(studio, Occur.FILTER);
    query.add(
        term(EntryDocument.ARCHIVED, Boolean.toString(question.standing().archived())),
        Occur.FILTER);
    question.onlyThese().ifPresent(these -> query.add(oneOf(these), Occur.FILTER));
    if (!wishes.isEmpty()) {
      query.add(QueryPlan.query(wishes, rarities, setups), Occur.MUST);
    }

    Optional<PageCollector.Place> after =
        cursor.map(at -> new PageCollector.Place(at.rank(), at.setup(), 0));
    PageCollector found =
        searcher.search(
            query.build(),
            new OneCollector(
                new PageCollector(
                    new Dimension(EntryDocument.MOOD_VALUE, question.moods()),
                    new Dimension(EntryDocument.PLACE_VALUE, set(question.place())),
                    new Dimension(EntryDocument.KIND_VALUE, set(question.placeKind())),
                    new Dimension(EntryDocument.STATE_VALUE, set(question.standing().state())),
                    !wishes.isEmpty(),
                    question.limit() + 1,
                    after)));

    List<PageCollector.Place> places = found.page();
    boolean more = places.size() > question.limit();
    List<PageCollector.Place> page = more ? places.subList(0, question.limit()) : places;
    Optional<String> next = Optional.empty();
    if (more) {
      PageCollector.Place last = page.getLast();
      long checksum = Cursor.checksum(question);
      next = Optional.of(new Cursor(checksum, setups, rarities, last.rank(), last.setup()).write());
    }
    List<SearchResult.Hit> hits = new ArrayList<>();
    for (PageCollector.Place place : page) {
      hits.add(hit(searcher, wishes, rarities, place));
    }
    return new SearchResult.Answer(hits, found.total(), found.facets(), next);
  }

  private SearchResult.Hit hit(
      IndexSearcher searcher,
      List<Wish> wishes,
      List<QueryPlan.Rarity> rarities,
      PageCollector.Place place)
      throws IOException {
    Document setup = searcher.storedFields().document(place.document());
    return new SearchResult.Hit(
        place.setup(),
        EntryDocument.revision(setup),
        wishes.isEmpty() ? 0 : place.score(),
        wishes.isEmpty() ? List.of() : reasons.of(wishes, rarities, setup));
  }

  /** What the asker may see of the studio: nothing else has a part in any count or score. */
  private static Query seen(Question question) {
    Query studio = term(EntryDocument.STUDIO, question.studio());
    return question.standing().onlyForAll()
        ? new BooleanQuery.Builder()
            .add(studio, Occur.FILTER)
            .add(term(EntryDocument.FOR_ALL, "true"), Occur.FILTER)
            .build()
        : studio;
  }

  private static Query term(String field, String value) {
    return new TermQuery(new Term(field, value));
  }

  private static Query oneOf(Set<String> setups) {
    return new TermInSetQuery(
        EntryDocument.SETUP, setups.stream().map(setup -> new BytesRef(setup)).toList());
  }

  private static Set<String> set(Optional<String> value) {
    return value.map(Set::of).orElse(Set.of());
  }

  /** Hands Lucene our collector: the searcher has no threads of its own, so there is just one. */
  private record OneCollector(PageCollector collector)
      implements CollectorManager<PageCollector, PageCollector> {

    @Override
    public PageCollector newCollector() {
      return collector;
    }

    @Override
    public PageCollector reduce(Collection<PageCollector> collectors) {
      return collector;
    }
  }
}
