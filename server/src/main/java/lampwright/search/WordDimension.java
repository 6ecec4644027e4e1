package lampwright.search;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import lampwright.search.filter.Filter;
import lampwright.search.filter.Trait;
import org.apache.lucene.index.DocValues;
import org.apache.lucene.index.LeafReader;
import org.apache.lucene.index.SortedDocValues;
import org.apache.lucene.index.SortedSetDocValues;
import org.apache.lucene.util.BytesRef;

/** A trait with words. */
final class WordDimension implements Dimension {

  /** Values that a person can still look through. */
  private static final int MOST_VALUES = 100;

  private static final Comparator<FacetCount> LARGEST_FIRST =
      Comparator.comparingLong(FacetCount::count).reversed().thenComparing(FacetCount::value);

  private final Trait trait;
  private final List<Filter> filters;

  /** By how the words are compared, then by how they are written. */
  private final Map<String, Map<String, Long>> counts = new HashMap<>();

  private SortedSetDocValues values = DocValues.emptySortedSet();

  /** The same where no setup has more than one. */
  private Optional<SortedDocValues> single = Optional.empty();

  /** For each filter which values of this segment it names. */
  private List<boolean[]> named = List.of();

  private int[] countsHere = {};
  private int[] ofDocument = new int[8];
  private int size;

  WordDimension(Trait trait, List<Filter> filters) {
    this.trait = trait;
    this.filters = List.copyOf(filters);
  }

  @Override
  public Trait trait() {
    return trait;
  }

  @Override
  public void enter(LeafReader reader) throws IOException {
    leave();
    values = DocValues.getSortedSet(reader, EntryDocument.words(trait));
    single = Optional.ofNullable(DocValues.unwrapSingleton(values));
    int different = Math.toIntExact(values.getValueCount());
    countsHere = new int[different];
    List<boolean[]> all = new ArrayList<>();
    for (Filter filter : filters) {
      boolean[] here = new boolean[different];
      for (String word : wordsOf(filter)) {
        String key = Filter.key(word);
        int from = place(TraitValue.first(key));
        int to = place(TraitValue.last(key));
        for (int number = from; number < to; number++) {
          here[number] = true;
        }
      }
      all.add(here);
    }
    named = all;
  }

  private int place(BytesRef value) throws IOException {
    long number = values.getValueCount() == 0 ? -1 : values.lookupTerm(value);
    return (int) (number < 0 ? -number - 1 : number);
  }

  private static List<String> wordsOf(Filter filter) {
    return switch (filter) {
      case Filter.OneOf one -> one.words();
      case Filter.NoneOf none -> none.words();
      case Filter.Range _, Filter.Near _, Filter.Buildable _ ->
          throw new IllegalArgumentException("no words");
    };
  }

  @Override
  public boolean passes(int document) throws IOException {
    size = 0;
    if (values.advanceExact(document)) {
      int many = values.docValueCount();
      if (many > ofDocument.length) {
        ofDocument = new int[many * 2];
      }
      for (; size < many; size++) {
        ofDocument[size] = (int) values.nextOrd();
      }
    }
    for (int i = 0; i < named.size(); i++) {
      if (hasAny(named.get(i)) != filters.get(i) instanceof Filter.OneOf) {
        return false;
      }
    }
    return true;
  }

  @Override
  public void countEach(int[] documents, int many) throws IOException {
    if (single.isEmpty() || !filters.isEmpty()) {
      Dimension.super.countEach(documents, many);
      return;
    }
    SortedDocValues each = single.get();
    for (int i = 0; i < many; i++) {
      if (each.advanceExact(documents[i])) {
        countsHere[each.ordValue()]++;
      }
    }
  }

  private boolean hasAny(boolean[] wanted) {
    for (int i = 0; i < size; i++) {
      if (wanted[ofDocument[i]]) {
        return true;
      }
    }
    return false;
  }

  @Override
  public void count() {
    for (int i = 0; i < size; i++) {
      countsHere[ofDocument[i]]++;
    }
  }

  @Override
  public void leave() throws IOException {
    for (int number = 0; number < countsHere.length; number++) {
      if (countsHere[number] > 0) {
        TraitValue value = TraitValue.of(values.lookupOrd(number));
        counts
            .computeIfAbsent(value.key(), _ -> new TreeMap<>())
            .merge(value.written(), (long) countsHere[number], Long::sum);
      }
    }
    countsHere = new int[0];
  }

  @Override
  public List<FacetCount> counts() {
    return counts.values().stream()
        .map(this::count)
        .sorted(LARGEST_FIRST)
        .limit(MOST_VALUES)
        .sorted(order())
        .toList();
  }

  /** A setup has each key once only, so the ways to write it add up. */
  private FacetCount count(Map<String, Long> written) {
    String most = "";
    long all = 0;
    for (Map.Entry<String, Long> way : written.entrySet()) {
      if (most.isEmpty() || way.getValue() > written.getOrDefault(most, 0L)) {
        most = way.getKey();
      }
      all += way.getValue();
    }
    return new FacetCount(most, most, Filter.OneOf.of(trait, most), all);
  }

  private Comparator<FacetCount> order() {
    if (!trait.isNaturallyOrdered()) {
      return LARGEST_FIRST;
    }
    return Comparator.comparingInt(
            (FacetCount count) -> {
              int at = trait.vocabulary().indexOf(Filter.key(count.value()));
              return at < 0 ? trait.vocabulary().size() : at;
            })
        .thenComparing(LARGEST_FIRST);
  }
}
