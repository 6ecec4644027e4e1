package lampwright.search;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;
import lampwright.search.filter.Filter;
import lampwright.search.filter.Trait;
import org.apache.lucene.index.LeafReaderContext;
import org.apache.lucene.index.PostingsEnum;
import org.apache.lucene.index.Term;
import org.apache.lucene.index.Terms;
import org.apache.lucene.index.TermsEnum;
import org.apache.lucene.search.BooleanClause.Occur;
import org.apache.lucene.search.BooleanQuery;
import org.apache.lucene.search.DocIdSetIterator;
import org.apache.lucene.search.IndexSearcher;
import org.apache.lucene.search.Query;
import org.apache.lucene.search.TermQuery;
import org.apache.lucene.util.BytesRef;
import org.apache.lucene.util.FixedBitSet;
import org.apache.lucene.util.StringHelper;

/**
 * What a beginning may become, of what setups really have. Setups that the asker does not see, and
 * those that are put by, neither count nor show any word of theirs.
 */
public final class Suggestions {

  /** Beginnings of one letter lead to more than this only in very large studios. */
  private static final int MOST_TERMS = 5_000;

  private static final int MOST_TITLES = 400;
  private static final int MOST_MISSPELT = 20_000;
  private static final int SHORTEST_MISSPELT = 4;

  private static final Comparator<Value> LARGEST_FIRST =
      Comparator.comparingLong(Value::count)
          .reversed()
          .thenComparing(value -> Filter.key(value.value()))
          .thenComparing(Value::trait);

  private final SetupIndex index;

  public Suggestions(SetupIndex index) {
    this.index = index;
  }

  /**
   * Who asks.
   *
   * @param onlyForAll whether they see only what all may see
   */
  public record Asker(String studio, boolean onlyForAll) {}

  /**
   * A word or name of setups.
   *
   * @param value as most of them write it
   * @param count how many of them the asker sees, at least 1
   */
  public record Value(Trait trait, String value, long count) {}

  /** A value that may be suggested: its terms of each segment, and how many it has at the most. */
  private static final class Candidate {
    private final Trait trait;
    private final String key;
    private final List<Posting> postings = new ArrayList<>();
    private long most;

    Candidate(Trait trait, String key) {
      this.trait = trait;
      this.key = key;
    }
  }

  private record Posting(int leaf, BytesRef term, String written) {}

  /**
   * Values of which a word begins so, those of most setups first. Where none does, those that begin
   * so but for one slip of the pen.
   *
   * @param prefix not empty
   * @param traits of which
   */
  public List<Value> values(Asker asker, String prefix, Predicate<Trait> traits, int limit) {
    String key = Filter.key(prefix);
    if (key.isEmpty()) {
      return List.of();
    }
    return index.read(
        searcher -> {
          Seen seen = new Seen(searcher, asker);
          List<Value> found =
              seen.largest(
                  seen.candidates(key, MOST_TERMS, value -> traits.test(value.trait())), limit);
          if (!found.isEmpty() || key.length() < SHORTEST_MISSPELT) {
            return beginningFirst(found, key);
          }
          String start = key.substring(0, key.offsetByCodePoints(0, 1));
          return seen.largest(
              seen.candidates(
                  start,
                  MOST_MISSPELT,
                  value -> traits.test(value.trait()) && isSlip(key, value.beginning())),
              limit);
        });
  }

  /** What begins so itself comes before what only has a word that does. */
  private static List<Value> beginningFirst(List<Value> found, String key) {
    return found.stream()
        .sorted(Comparator.comparing(value -> !Filter.key(value.value()).startsWith(key)))
        .toList();
  }

  /** One value, where the asker sees a setup that has it. */
  public List<Value> exactly(Asker asker, Trait trait, String value) {
    String key = Filter.key(value);
    return index.read(
        searcher -> {
          Seen seen = new Seen(searcher, asker);
          return seen.largest(
              seen.candidates(
                  key, MOST_TERMS, one -> one.trait() == trait && one.key().equals(key)),
              1);
        });
  }

  /** The ids of setups of whose title a word begins so, in the order of the words. */
  public List<String> titles(Asker asker, String prefix, int limit) {
    String key = Filter.key(prefix);
    if (key.isEmpty()) {
      return List.of();
    }
    return index.read(searcher -> new Seen(searcher, asker).titles(key, limit));
  }

  /** How many setups the asker sees that pass a filter. */
  public long count(Asker asker, Filter filter) {
    return index.read(
        searcher ->
            (long)
                searcher.count(
                    new BooleanQuery.Builder()
                        .add(seenBy(asker), Occur.FILTER)
                        .add(Narrowing.clause(filter), Occur.FILTER)
                        .build()));
  }

  private static boolean isSlip(String typed, String word) {
    for (int length = typed.length() - 1; length <= typed.length() + 1; length++) {
      if (length <= word.length() && Slip.isOneApart(word.substring(0, length), typed)) {
        return true;
      }
    }
    return false;
  }

  private static Query seenBy(Asker asker) {
    BooleanQuery.Builder seen = new BooleanQuery.Builder();
    seen.add(new TermQuery(new Term(EntryDocument.STUDIO, asker.studio())), Occur.FILTER);
    seen.add(new TermQuery(new Term(EntryDocument.ARCHIVED, "false")), Occur.FILTER);
    if (asker.onlyForAll()) {
      seen.add(new TermQuery(new Term(EntryDocument.FOR_ALL, "true")), Occur.FILTER);
    }
    return seen.build();
  }

  /** One view of the index as one asker sees it. */
  private static final class Seen {
    private final List<LeafReaderContext> leaves;
    private final Chosen seen;
    private final String studio;

    Seen(IndexSearcher searcher, Asker asker) throws IOException {
      this.leaves = searcher.getIndexReader().leaves();
      this.studio = asker.studio();
      this.seen = Chosen.of(searcher, seenBy(asker));
    }

    List<Candidate> candidates(String prefix, int most, Predicate<SuggestionTerms.Value> wanted)
        throws IOException {
      Map<String, Candidate> found = new LinkedHashMap<>();
      for (int leaf = 0; leaf < leaves.size(); leaf++) {
        Set<SuggestionTerms.Value> here = new LinkedHashSet<>();
        TermsEnum terms = terms(leaf, SuggestionTerms.VALUES);
        BytesRef start = SuggestionTerms.from(studio, prefix);
        boolean more = terms.seekCeil(start) != TermsEnum.SeekStatus.END;
        for (int i = 0; more && i < most && StringHelper.startsWith(terms.term(), start); i++) {
          Optional<SuggestionTerms.Value> value =
              SuggestionTerms.value(terms.term()).filter(wanted);
          // Two words of one name may begin so: each of its terms has the same setups.
          if (value.isPresent() && here.add(value.get().anywhere())) {
            Candidate candidate =
                found.computeIfAbsent(
                    value.get().trait() + "\0" + value.get().key(),
                    _ -> new Candidate(value.get().trait(), value.get().key()));
            candidate.most += terms.docFreq();
            candidate.postings.add(
                new Posting(leaf, BytesRef.deepCopyOf(terms.term()), value.get().written()));
          }
          more = terms.next() != null;
        }
      }
      return new ArrayList<>(found.values());
    }

    /** Counts those first that may have most, and ends where no other can have as many. */
    List<Value> largest(List<Candidate> candidates, int limit) throws IOException {
      candidates.sort(
          Comparator.comparingLong((Candidate candidate) -> candidate.most)
              .reversed()
              .thenComparing(candidate -> candidate.key)
              .thenComparing(candidate -> candidate.trait));
      List<Value> largest = new ArrayList<>();
      for (Candidate candidate : candidates) {
        if (largest.size() >= limit && largest.get(limit - 1).count() > candidate.most) {
          break;
        }
        Value value = counted(candidate);
        if (value.count() > 0) {
          largest.add(value);
          largest.sort(LARGEST_FIRST);
        }
      }
      return List.copyOf(largest.subList(0, Math.min(limit, largest.size())));
    }

    private Value counted(Candidate candidate) throws IOException {
      Map<String, Long> written = new TreeMap<>();
      for (Posting posting : candidate.postings) {
        TermsEnum terms = terms(posting.leaf(), SuggestionTerms.VALUES);
        if (terms.seekExact(posting.term())) {
          long count = countSeen(posting.leaf(), terms);
          written.merge(posting.written(), count, Long::sum);
        }
      }
      String most = candidate.key;
      long largest = 0;
      long all = 0;
      for (Map.Entry<String, Long> way : written.entrySet()) {
        all += way.getValue();
        if (way.getValue() > largest) {
          largest = way.getValue();
          most = way.getKey();
        }
      }
      return new Value(candidate.trait, most, all);
    }

    private long countSeen(int leaf, TermsEnum terms) throws IOException {
      FixedBitSet here = seen.in(leaves.get(leaf));
      PostingsEnum postings = terms.postings(null, PostingsEnum.NONE);
      long count = 0;
      for (int document = postings.nextDoc();
          document != DocIdSetIterator.NO_MORE_DOCS;
          document = postings.nextDoc()) {
        count += here.get(document) ? 1 : 0;
      }
      return count;
    }

    List<String> titles(String prefix, int limit) throws IOException {
      Map<String, String> found = new TreeMap<>();
      BytesRef start = SuggestionTerms.from(studio, prefix);
      for (int leaf = 0; leaf < leaves.size(); leaf++) {
        TermsEnum terms = terms(leaf, SuggestionTerms.TITLES);
        boolean more = terms.seekCeil(start) != TermsEnum.SeekStatus.END;
        for (int i = 0;
            more && i < MOST_TITLES && StringHelper.startsWith(terms.term(), start);
            i++) {
          Optional<SuggestionTerms.Title> title = SuggestionTerms.title(terms.term());
          if (title.isPresent() && countSeen(leaf, terms) > 0) {
            found.put(title.get().beginning() + "\0" + title.get().setup(), title.get().setup());
          }
          more = terms.next() != null;
        }
      }
      return found.values().stream().distinct().limit(limit).toList();
    }

    private TermsEnum terms(int leaf, String field) throws IOException {
      Terms terms = leaves.get(leaf).reader().terms(field);
      return terms == null ? TermsEnum.EMPTY : terms.iterator();
    }
  }
}
