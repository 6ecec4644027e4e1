package lampwright.search;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import lampwright.meaning.Meaning;
import org.apache.lucene.index.Term;
import org.apache.lucene.search.BooleanClause.Occur;
import org.apache.lucene.search.BooleanQuery;
import org.apache.lucene.search.FieldExistsQuery;
import org.apache.lucene.search.IndexSearcher;
import org.apache.lucene.search.MatchAllDocsQuery;
import org.apache.lucene.search.Query;
import org.apache.lucene.search.TermInSetQuery;
import org.apache.lucene.search.TermQuery;
import org.apache.lucene.util.BytesRef;

/**
 * What a question comes to in one view of the index.
 *
 * @param setups how many the asker may see
 * @param rarities one for each wish
 * @param near what lies near in meaning, where that could be told
 * @param words what its words match, or its meaning alone; everything where there are none
 * @param looked what is looked at at all, whatever is asked of it
 */
record Sought(
    int setups, List<QueryPlan.Rarity> rarities, NearInMeaning near, Query words, Chosen looked) {

  /**
   * Reads a question.
   *
   * @param meaning of its text, where that could be told
   * @param cursor keeps the numbers of the first page
   */
  static Sought of(
      IndexSearcher searcher,
      Question question,
      List<Wish> wishes,
      Optional<Meaning> meaning,
      Optional<Cursor> cursor)
      throws IOException {
    Query studio = seen(question);
    Chosen seen = Chosen.of(searcher, studio);
    int setups = cursor.isPresent() ? cursor.get().setups() : seen.count();
    List<QueryPlan.Rarity> rarities =
        cursor.isPresent() ? cursor.get().rarities() : QueryPlan.rarities(wishes, seen);
    NearInMeaning near =
        meaning.isPresent()
            ? NearInMeaning.find(searcher, studio, seen, meaning.get())
            : NearInMeaning.none();
    Query words =
        wishes.isEmpty()
            ? MatchAllDocsQuery.INSTANCE
            : either(wishes, QueryPlan.query(wishes, rarities, setups), near);
    return new Sought(setups, rarities, near, words, lookedAt(question, seen));
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

  private static Chosen lookedAt(Question question, Chosen seen) throws IOException {
    Chosen standing =
        seen.and(term(EntryDocument.ARCHIVED, Boolean.toString(question.standing().archived())));
    Chosen these =
        question.onlyThese().isPresent()
            ? standing.and(oneOf(question.onlyThese().get()))
            : standing;
    return question.like().isPresent() ? comparable(these, question.like().get()) : these;
  }

  private static Chosen comparable(Chosen these, Question.Like like) throws IOException {
    Chosen known = these.and(new FieldExistsQuery(EntryDocument.facts(like.by())));
    return like.setup().isPresent()
        ? known.without(term(EntryDocument.SETUP, like.setup().get()))
        : known;
  }

  private static Query term(String field, String value) {
    return new TermQuery(new Term(field, value));
  }

  private static Query oneOf(Set<String> setups) {
    return new TermInSetQuery(
        EntryDocument.SETUP, setups.stream().map(setup -> new BytesRef(setup)).toList());
  }
}
