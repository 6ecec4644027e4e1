package lampwright.search;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.apache.lucene.index.Term;
import org.apache.lucene.search.BooleanClause.Occur;
import org.apache.lucene.search.BooleanQuery;
import org.apache.lucene.search.BoostQuery;
import org.apache.lucene.search.DisjunctionMaxQuery;
import org.apache.lucene.search.FuzzyQuery;
import org.apache.lucene.search.IndexSearcher;
import org.apache.lucene.search.PhraseQuery;
import org.apache.lucene.search.Query;
import org.apache.lucene.search.SynonymQuery;
import org.apache.lucene.search.TermQuery;
import org.apache.lucene.util.BytesRef;

/** Turns wishes into one Lucene query, each wish weighed by how rare it is in the studio. */
final class QueryPlan {

  /** A word in a second field adds a little, so that title and text together win over the title. */
  private static final float SECOND_FIELD = 0.1f;

  private static final float WORDS_APART = 0.05f;
  private static final float ONE_SLIP = 0.6f;
  private static final int MOST_SPELLINGS = 20;
  private static final int SHARED_START = 1;

  /** Fewer clauses than Lucene's own bound (1024), with room for the filters. */
  private static final int MOST_CLAUSES = 800;

  /**
   * How rare a wish was when the first page was made. A cursor carries it, so that later pages rank
   * alike whatever is written in between.
   *
   * @param setups how many of the studio's setups grant the wish
   * @param misspelt whether none did as typed, so that one slip was forgiven
   */
  record Rarity(int setups, boolean misspelt) {}

  private QueryPlan() {}

  /** Counts each wish among the setups that the filter lets through. */
  static List<Rarity> rarities(IndexSearcher searcher, List<Wish> wishes, Query studio)
      throws IOException {
    List<Rarity> rarities = new ArrayList<>();
    for (Wish wish : wishes) {
      int asTyped = count(searcher, granting(wish, false), studio);
      if (asTyped == 0 && wish.mayBeMisspelt()) {
        rarities.add(new Rarity(count(searcher, granting(wish, true), studio), true));
      } else {
        rarities.add(new Rarity(asTyped, false));
      }
    }
    return rarities;
  }

  private static int count(IndexSearcher searcher, Query query, Query filter) throws IOException {
    return searcher.count(
        new BooleanQuery.Builder().add(query, Occur.FILTER).add(filter, Occur.FILTER).build());
  }

  /**
   * The query for the wishes.
   *
   * @param setups how many setups the studio has
   */
  static Query query(List<Wish> wishes, List<Rarity> rarities, int setups) {
    BooleanQuery.Builder all = new BooleanQuery.Builder();
    BooleanQuery.Builder some = new BooleanQuery.Builder();
    int clauses = 0;
    int optional = 0;
    for (int i = 0; i < wishes.size(); i++) {
      Wish wish = wishes.get(i);
      Rarity rarity = rarities.get(i);
      clauses += cost(wish);
      if (clauses > MOST_CLAUSES) {
        break;
      }
      double n = Math.min(rarity.setups(), setups);
      float weight = (float) Math.log1p((setups - n + 0.5) / (n + 0.5));
      Query weighed = new BoostQuery(granting(wish, rarity.misspelt()), weight);
      if (wish.required()) {
        all.add(weighed, Occur.MUST);
      } else {
        some.add(weighed, Occur.SHOULD);
        optional++;
      }
    }
    if (optional > 0 && optional < wishes.size()) {
      // What is quoted selects already; the rest only ranks.
      all.add(some.build(), Occur.SHOULD);
    } else if (optional > 0) {
      all.add(some.setMinimumNumberShouldMatch(least(optional)).build(), Occur.MUST);
    }
    return all.build();
  }

  /**
   * Of up to three words one is enough, of five two, of more two in five: the order tells the rest.
   */
  static int least(int wishes) {
    return wishes <= 3 ? 1 : Math.max(2, (int) Math.ceil(wishes * 0.4));
  }

  private static int cost(Wish wish) {
    long phrases =
        Stream.concat(wish.alternatives().keySet().stream(), wish.guesses().keySet().stream())
            .filter(phrase -> !phrase.isOneWord())
            .count();
    int words = wish.literal().isOneWord() ? 0 : wish.literal().terms().size();
    return (int) (TextField.values().length * (2 + phrases + words));
  }

  static Map<Phrase, Float> others(Wish wish, boolean misspelt) {
    if (!misspelt) {
      return wish.alternatives();
    }
    Map<Phrase, Float> others = new LinkedHashMap<>(wish.guesses());
    others.putAll(wish.alternatives());
    return others;
  }

  private static Query granting(Wish wish, boolean misspelt) {
    List<Query> ways = new ArrayList<>();
    Map<Phrase, Float> others = others(wish, misspelt);
    for (TextField field : TextField.values()) {
      addWords(ways, wish, others, field);
      addPhrases(ways, wish, others, field);
      if (misspelt) {
        FuzzyQuery near =
            new FuzzyQuery(
                new Term(field.lucene(), wish.literal().terms().getFirst()),
                1,
                SHARED_START,
                MOST_SPELLINGS,
                true);
        ways.add(new BoostQuery(near, field.weight * ONE_SLIP));
      }
    }
    if (!wish.literal().isOneWord() && !wish.required()) {
      ways.add(new BoostQuery(wordsApart(wish.literal()), WORDS_APART));
    }
    return new DisjunctionMaxQuery(ways, SECOND_FIELD);
  }

  private static void addWords(
      List<Query> ways, Wish wish, Map<Phrase, Float> others, TextField field) {
    SynonymQuery.Builder words = new SynonymQuery.Builder(field.lucene());
    boolean any = false;
    if (wish.literal().isOneWord()) {
      words.addTerm(new BytesRef(wish.literal().terms().getFirst()), 1f);
      any = true;
    }
    for (Map.Entry<Phrase, Float> other : others.entrySet()) {
      if (other.getKey().isOneWord()) {
        words.addTerm(new BytesRef(other.getKey().terms().getFirst()), other.getValue());
        any = true;
      }
    }
    if (any) {
      ways.add(new BoostQuery(words.build(), field.weight));
    }
  }

  private static void addPhrases(
      List<Query> ways, Wish wish, Map<Phrase, Float> others, TextField field) {
    if (!wish.literal().isOneWord()) {
      ways.add(new BoostQuery(phrase(wish.literal(), field), field.weight));
    }
    for (Map.Entry<Phrase, Float> other : others.entrySet()) {
      if (!other.getKey().isOneWord()) {
        Query near = phrase(other.getKey(), field);
        ways.add(new BoostQuery(near, field.weight * FixedScale.part(other.getValue())));
      }
    }
  }

  private static Query phrase(Phrase phrase, TextField field) {
    PhraseQuery.Builder builder = new PhraseQuery.Builder();
    for (int i = 0; i < phrase.terms().size(); i++) {
      builder.add(new Term(field.lucene(), phrase.terms().get(i)), phrase.positions().get(i));
    }
    return builder.build();
  }

  /** All words of a phrase, anywhere. */
  private static Query wordsApart(Phrase phrase) {
    BooleanQuery.Builder each = new BooleanQuery.Builder();
    for (String term : phrase.terms()) {
      List<Query> anywhere = new ArrayList<>();
      for (TextField field : TextField.values()) {
        anywhere.add(new TermQuery(new Term(field.lucene(), term)));
      }
      each.add(new DisjunctionMaxQuery(anywhere, 0), Occur.MUST);
    }
    return each.build();
  }
}
