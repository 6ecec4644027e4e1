package lampwright.search;

import java.io.IOException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import org.apache.lucene.index.BinaryDocValues;
import org.apache.lucene.index.DocValues;
import org.apache.lucene.index.LeafReader;
import org.apache.lucene.index.LeafReaderContext;
import org.apache.lucene.index.PostingsEnum;
import org.apache.lucene.index.Terms;
import org.apache.lucene.index.TermsEnum;
import org.apache.lucene.search.DocIdSetIterator;
import org.apache.lucene.search.IndexSearcher;
import org.apache.lucene.util.Bits;

/**
 * Whether an index says of every setup what the database says. Each entry of the database is made
 * anew and held against what the index was given, by {@link Fingerprint}.
 *
 * @param equal how many setups are the same in both
 * @param missing setups that the index lacks, as {@code studio/setup}
 * @param different setups of which it says something else
 * @param surplus setups that it has and the database has not
 */
public record IndexComparison(
    long equal, List<String> missing, List<String> different, List<String> surplus) {

  public IndexComparison {
    missing = List.copyOf(missing);
    different = List.copyOf(different);
    surplus = List.copyOf(surplus);
  }

  /** Whether the index is a true copy. */
  public boolean isEqual() {
    return missing.isEmpty() && different.isEmpty() && surplus.isEmpty();
  }

  /**
   * Compares, once the index has come as far as the database is now. What is written meanwhile may
   * appear as a difference: compare again then.
   *
   * @throws IllegalStateException where the index does not come so far in time
   */
  public static IndexComparison of(
      SetupIndex index, Follower follower, ChangeSource source, Duration patience)
      throws InterruptedException {
    try (ChangeSource.Everything everything = source.everything()) {
      if (!follower.await(everything.asOf(), patience)) {
        throw new IllegalStateException(
            "The index did not come level with the database: " + follower.state());
      }
      return of(index, everything.entries().iterator());
    }
  }

  private static IndexComparison of(SetupIndex index, Iterator<IndexEntry> database) {
    Map<String, String> indexed = index.read(IndexComparison::fingerprints);
    List<String> missing = new ArrayList<>();
    List<String> different = new ArrayList<>();
    long equal = 0;
    while (database.hasNext()) {
      IndexEntry entry = database.next();
      String name = entry.studio() + '/' + entry.setup();
      String found = indexed.remove(EntryDocument.key(entry.studio(), entry.setup()).text());
      if (found == null) {
        missing.add(name);
      } else if (found.equals(Fingerprint.of(entry))) {
        equal++;
      } else {
        different.add(name);
      }
    }
    List<String> surplus =
        indexed.keySet().stream().map(key -> key.replace('\0', '/')).sorted().toList();
    return new IndexComparison(equal, missing, different, surplus);
  }

  /** Of every setup that searches may find, by its key. */
  private static Map<String, String> fingerprints(IndexSearcher searcher) throws IOException {
    Map<String, String> all = new HashMap<>();
    for (LeafReaderContext leaf : searcher.getIndexReader().leaves()) {
      addFingerprints(leaf.reader(), all);
    }
    return all;
  }

  private static void addFingerprints(LeafReader reader, Map<String, String> all)
      throws IOException {
    String[] ofDocument = new String[reader.maxDoc()];
    BinaryDocValues values = DocValues.getBinary(reader, EntryDocument.FINGERPRINT);
    for (int document = values.nextDoc();
        document != DocIdSetIterator.NO_MORE_DOCS;
        document = values.nextDoc()) {
      ofDocument[document] = values.binaryValue().utf8ToString();
    }
    Terms terms = reader.terms(EntryDocument.KEY);
    if (terms == null) {
      return;
    }
    Bits living = reader.getLiveDocs();
    TermsEnum keys = terms.iterator();
    while (keys.next() != null) {
      PostingsEnum documents = keys.postings(null, PostingsEnum.NONE);
      for (int document = documents.nextDoc();
          document != DocIdSetIterator.NO_MORE_DOCS;
          document = documents.nextDoc()) {
        boolean lives = living == null || living.get(document);
        // What remains of a deleted setup has no fingerprint.
        if (lives && ofDocument[document] != null) {
          all.put(keys.term().utf8ToString(), ofDocument[document]);
        }
      }
    }
  }
}
