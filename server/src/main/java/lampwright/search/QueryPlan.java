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
import org.apache.lucene.search.PhraseQuery;
import org.apache.lucene.search.Query;
import org.apache.lucene.search.SynonymQuery;
import org.apache.lucene.search.TermQuery;

/** Turns wishes into one Lucene query, each wish weighed by how rare it is in the studio. */
final class QueryPlan {

  /** To grant a wish in a second way adds a little. */
  private static final float SECOND_WAY = 0.1f;

  private static final float WORDS_APART = 0.05f;
  private static final float ONE_SLIP = 0.6f;
  private static final int MOST_SPELLINGS = 20;

  /** Of one word's weight. Measured, see benchmarks.md. */
  private static final float PAIR = 0.3f;

  private static final int BETWEEN_PAIR = 1;
  private static final int MOST_PAIRS = 30;
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

  /** Counts each wish among the setups that the asker sees. */
  static List<Rarity> rarities(List<Wish> wishes, Chosen seen) throws IOException {
    List<Rarity> rarities = new ArrayList<>();
    for (Wish wish : wishes) {
      int asTyped = seen.count(granting(wish, false));
      if (asTyped == 0 && wish.mayBeMisspelt()) {
        rarities.add(new Rarity(seen.count(granting(wish, true)), true));
      } else {
        rarities.add(new Rarity(asTyped, false));
      }
    }
    return rarities;
  }

  /**
   * The query for the wishes.
   *
   * @param setups how many setups the studio has
   */
  static Query query(List<Wish> wishes, List<Rarity> rarities, int setups) {
    boolean quoted = wishes.stream().anyMatch(Wish::required);
    BooleanQuery.Builder all = new BooleanQuery.Builder();
    // Where nothing is quoted there is one level only: Lucene goes fastest through a plain sum.
    BooleanQuery.Builder some = quoted ? new BooleanQuery.Builder() : all;
    int clauses = 0;
    int optional = 0;
    for (int i = 0; i < wishes.size(); i++) {
      Wish wish = wishes.get(i);
      clauses += cost(wish);
      if (clauses > MOST_CLAUSES) {
        break;
      }
      Query granting = granting(wish, rarities.get(i).misspelt());
      Query weighed = new BoostQuery(granting, weight(rarities.get(i), setups) * wish.times());
      if (wish.required()) {
        all.add(weighed, Occur.MUST);
      } else {
        some.add(weighed, Occur.SHOULD);
        optional++;
      }
    }
    if (quoted && optional > 0) {
      // What is quoted selects already; the rest only ranks.
      all.add(some.build(), Occur.SHOULD);
    } else if (!quoted) {
      // A pair counts here as well, but where it stands both of its words do.
      all.setMinimumNumberShouldMatch(least(optional));
    }
    addPairs(all, wishes, rarities, setups);
    return all.build();
  }

  /** What is rare says more. */
  private static float weight(Rarity rarity, int setups) {
    double n = Math.min(rarity.setups(), setups);
    return (float) Math.log1p((setups - n + 0.5) / (n + 0.5));
  }

  /**
   * Two words that stand beside each other in the question count for more where they do so in a
   * setup (D. Metzler and B. Croft, "A Markov random field model for term dependencies", 2005).
   */
  private static void addPairs(
      BooleanQuery.Builder all, List<Wish> wishes, List<Rarity> rarities, int setups) {
    for (int i = 1; i < Math.min(wishes.size(), MOST_PAIRS); i++) {
      Wish one = wishes.get(i - 1);
      Wish next = wishes.get(i);
      if (one.isPlainWord() && next.isPlainWord()) {
        float both = weight(rarities.get(i - 1), setups) + weight(rarities.get(i), setups);
        Query pair =
            new PhraseQuery(
                BETWEEN_PAIR,
                TextField.WORDS,
                one.literal().terms().getFirst(),
                next.literal().terms().getFirst());
        all.add(new BoostQuery(pair, PAIR * both / 2), Occur.SHOULD);
      }
    }
  }

  /** Of up to three words one is enough, of more two: the order tells the rest. */
  static int least(int wishes) {
    return wishes <= 3 ? 1 : 2;
  }

  private static int cost(Wish wish) {
    long phrases =
        Stream.concat(wish.alternatives().keySet().stream(), wish.guesses().keySet().stream())
            .filter(phrase -> !phrase.isOneWord())
            .count();
    int words = wish.literal().isOneWord() ? 0 : wish.literal().terms().size();
    return (int) (1 + wish.alternatives().size() + wish.guesses().size() + phrases + words);
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
    ways.add(phrase(wish.literal()));
    addOthers(ways, others(wish, misspelt));
    if (misspelt) {
      FuzzyQuery near =
          new FuzzyQuery(
              word(wish.literal().terms().getFirst()), 1, SHARED_START, MOST_SPELLINGS, true);
      ways.add(new BoostQuery(near, ONE_SLIP));
    }
    if (!wish.literal().isOneWord() && !wish.required()) {
      ways.add(new BoostQuery(wordsApart(wish.literal()), WORDS_APART));
    }
    return ways.size() == 1 ? ways.getFirst() : new DisjunctionMaxQuery(ways, SECOND_WAY);
  }

  /** What stands for a wish counts like the wish itself, but only so much of it. */
  private static void addOthers(List<Query> ways, Map<Phrase, Float> others) {
    Map<Float, SynonymQuery.Builder> words = new LinkedHashMap<>();
    for (Map.Entry<Phrase, Float> other : others.entrySet()) {
      Phrase phrase = other.getKey();
      float part = FixedScale.part(other.getValue());
      if (phrase.isOneWord()) {
        words
            .computeIfAbsent(part, _ -> new SynonymQuery.Builder(TextField.WORDS))
            .addTerm(word(phrase.terms().getFirst()));
      } else {
        ways.add(new BoostQuery(phrase(phrase), part));
      }
    }
    words.forEach((part, query) -> ways.add(new BoostQuery(query.build(), part)));
  }

  private static Query phrase(Phrase phrase) {
    if (phrase.isOneWord()) {
      return new TermQuery(word(phrase.terms().getFirst()));
    }
    PhraseQuery.Builder builder = new PhraseQuery.Builder();
    for (int i = 0; i < phrase.terms().size(); i++) {
      builder.add(word(phrase.terms().get(i)), phrase.positions().get(i));
    }
    return builder.build();
  }

  /** All words of a phrase, anywhere. */
  private static Query wordsApart(Phrase phrase) {
    BooleanQuery.Builder each = new BooleanQuery.Builder();
    for (String term : phrase.terms()) {
      each.add(new TermQuery(word(term)), Occur.MUST);
    }
    return each.build();
  }

  private static Term word(String term) {
    return new Term(TextField.WORDS, term);
  }
}
