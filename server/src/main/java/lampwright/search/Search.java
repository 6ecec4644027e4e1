package lampwright.search;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import lampwright.meaning.Meaning;
import lampwright.meaning.Meanings;
import org.apache.lucene.document.Document;
import org.apache.lucene.index.Term;
import org.apache.lucene.search.BooleanClause.Occur;
import org.apache.lucene.search.BooleanQuery;
import org.apache.lucene.search.CollectorManager;
import org.apache.lucene.search.IndexSearcher;
import org.apache.lucene.search.MatchAllDocsQuery;
import org.apache.lucene.search.Query;
import org.apache.lucene.search.TermInSetQuery;
import org.apache.lucene.search.TermQuery;
import org.apache.lucene.util.BytesRef;

/**
 * Finds setups of one studio.
 *
 * <p>Words are joined by "or"; {@link QueryPlan#least} of them must match, or the text as a whole
 * must lie near in meaning. A word that means the same or nearly the same counts below the word
 * itself. Phrases in quotes must occur. A text without any word that is kept ("the", punctuation)
 * asks for nothing, and lists everything like a blank one.
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
    Optional<Meaning> asked = wishes.isEmpty() ? Optional.empty() : meanings.find(question.text());
    return index.read(searcher -> answer(searcher, question, wishes, asked, cursor));
  }

  private SearchResult answer(
      IndexSearcher searcher,
      Question question,
      List<Wish> wishes,
      Optional<Meaning> asked,
      Optional<Cursor> cursor)
      throws IOException {
    Query studio = seen(question);
    int seen = searcher.count(studio);
    int setups = cursor.isPresent() ? cursor.get().setups() : seen;
    List<QueryPlan.Rarity> rarities =
        cursor.isPresent() ? cursor.get().rarities() : QueryPlan.rarities(searcher, wishes, studio);
    Query base = base(question, studio);
    NearInMeaning near =
        asked.isPresent()
            ? NearInMeaning.find(searcher, studio, seen, asked.get())
            : NearInMeaning.none();
    Query words =
        wishes.isEmpty()
            ? MatchAllDocsQuery.INSTANCE
            : either(wishes, QueryPlan.query(wishes, rarities, setups), near);
    Narrowing narrowing = Narrowing.of(question);
    Query query =
        new BooleanQuery.Builder()
            .add(base, Occur.FILTER)
            .add(narrowing.query(), Occur.FILTER)
            .add(words, wishes.isEmpty() ? Occur.FILTER : Occur.MUST)
            .build();

    Optional<Place> after = cursor.map(at -> new Place(at.rank(), at.setup(), 0));
    Optional<Fusion> fusion =
        wishes.isEmpty() || narrowing.nearestFirst().isPresent()
            ? Optional.empty()
            : Optional.of(new Fusion());
    PageCollector found =
        searcher.search(
            query,
            new OneCollector(
                new PageCollector(
                    narrowing.traversal(),
                    fusion,
                    narrowing.nearestFirst(),
                    question.limit() + 1,
                    after)));

    if (fusion.isPresent() && asked.isPresent()) {
      near = near.and(searcher, fusion.get().bestByWords(), asked.get());
    }
    Fusion.Scale scale =
        cursor.isPresent()
            ? cursor.get().scale()
            : new Fusion.Scale(
                fusion.map(Fusion::best).orElse(0.0),
                near.nearest(),
                Fusion.share(wishes, rarities));
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
              new Cursor(checksum, setups, rarities, scale, last.rank(), last.setup()).write());
    }
    List<SearchResult.Hit> hits = new ArrayList<>();
    for (Place place : page) {
      double score = fusion.isPresent() ? place.score() : 0;
      hits.add(hit(searcher, wishes, rarities, place, score));
    }
    List<Instead> instead =
        found.total() > 0 ? List.of() : new Loosening(searcher, question, base, words).list();
    return new SearchResult.Answer(
        hits, found.total(), found.facets(), next, !wishes.isEmpty() && asked.isEmpty(), instead);
  }

  /** What matches by words, or by meaning alone where nothing is required. */
  private static Query either(List<Wish> wishes, Query words, NearInMeaning near) {
    return wishes.stream().anyMatch(Wish::required)
        ? words
        : new BooleanQuery.Builder()
            .add(words, Occur.SHOULD)
            .add(near.query(), Occur.SHOULD)
            .setMinimumNumberShouldMatch(1)
            .build();
  }

  /** What is looked at at all, whatever is asked of it. */
  private static Query base(Question question, Query studio) {
    BooleanQuery.Builder base = new BooleanQuery.Builder().add(studio, Occur.FILTER);
    base.add(
        term(EntryDocument.ARCHIVED, Boolean.toString(question.standing().archived())),
        Occur.FILTER);
    question.onlyThese().ifPresent(these -> base.add(oneOf(these), Occur.FILTER));
    return base.build();
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

  /** Hands Lucene our collector: the searcher has no threads of its own, so there is just one. */
  record OneCollector(PageCollector collector)
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
