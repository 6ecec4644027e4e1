package lampwright.search;

import java.io.Closeable;
import java.io.IOException;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.apache.lucene.document.Document;
import org.apache.lucene.index.CheckIndex;
import org.apache.lucene.index.DirectoryReader;
import org.apache.lucene.index.DocValues;
import org.apache.lucene.index.IndexReader;
import org.apache.lucene.index.IndexWriter;
import org.apache.lucene.index.IndexWriterConfig;
import org.apache.lucene.index.IndexWriterConfig.OpenMode;
import org.apache.lucene.index.LeafReaderContext;
import org.apache.lucene.index.NumericDocValues;
import org.apache.lucene.index.PostingsEnum;
import org.apache.lucene.index.SegmentInfos;
import org.apache.lucene.index.Term;
import org.apache.lucene.index.TieredMergePolicy;
import org.apache.lucene.search.DocIdSetIterator;
import org.apache.lucene.search.IndexSearcher;
import org.apache.lucene.search.LRUQueryCache;
import org.apache.lucene.search.QueryCache;
import org.apache.lucene.search.QueryCachingPolicy;
import org.apache.lucene.search.SearcherFactory;
import org.apache.lucene.search.SearcherManager;
import org.apache.lucene.search.Sort;
import org.apache.lucene.search.SortField;
import org.apache.lucene.store.Directory;
import org.apache.lucene.util.IOUtils;
import org.jspecify.annotations.Nullable;

/**
 * One Lucene index in one folder. Only one thread writes at a time; any may read.
 *
 * <p>Its last commit says whether it was ever complete: a rebuild that was cut short is not.
 */
final class Generation implements Closeable {

  private static final double RAM_MB = 32;

  /** Fewer than Lucene's own: each segment costs a search more than a merge costs the writer. */
  private static final int SEGMENTS_PER_TIER = 4;

  /**
   * Lucene's advice to start the JVM with an incubator module would be the first line of every
   * server's output. It speaks of vectors, and the module has a warning of its own. The logger is
   * held so that its level is not forgotten.
   */
  private static final Logger VECTOR_ADVICE =
      Logger.getLogger("org.apache.lucene.internal.vectorization");

  static {
    VECTOR_ADVICE.setLevel(Level.SEVERE);
  }

  private static final FixedScale SCALE = new FixedScale();

  /** Twelve kilobytes each for a segment of 100,000 setups. */
  private static final int MOST_KEPT_QUERIES = 1_000;

  private static final long MOST_KEPT_BYTES = 32L << 20;

  private final Path folder;
  private final Directory directory;
  private final IndexWriter writer;
  private final SearcherManager searchers;

  /** Revisions written since the last refresh, which no searcher sees yet. */
  private final Map<Term, Revision> unseen = new HashMap<>();

  private volatile CommitFacts committed;

  /** A setup's newest revision, and whether it is deleted. */
  record Revision(int number, boolean gone) {}

  private Generation(
      Path folder,
      Directory directory,
      IndexWriter writer,
      SearcherManager searchers,
      CommitFacts committed) {
    this.folder = folder;
    this.directory = directory;
    this.writer = writer;
    this.searchers = searchers;
    this.committed = committed;
  }

  /** Starts an empty one, with its first commit. */
  static Generation create(Path folder, Directory directory, Words words, CommitFacts facts)
      throws IOException {
    @Nullable IndexWriter writer = null;
    try {
      writer = new IndexWriter(directory, config(words, OpenMode.CREATE));
      writer.setLiveCommitData(facts.toUserData().entrySet());
      writer.commit();
      return new Generation(folder, directory, writer, searchers(writer), facts);
    } catch (IOException | RuntimeException e) {
      closeAfter(e, writer, directory);
      throw e;
    }
  }

  /** Opens what is there, at its last commit. */
  static Generation open(Path folder, Directory directory, Words words) throws IOException {
    @Nullable IndexWriter writer = null;
    try {
      CommitFacts facts = facts(directory);
      writer = new IndexWriter(directory, config(words, OpenMode.APPEND));
      return new Generation(folder, directory, writer, searchers(writer), facts);
    } catch (IOException | RuntimeException e) {
      closeAfter(e, writer, directory);
      throw e;
    }
  }

  /**
   * Why the files cannot be used, if so. Reads every byte once and compares the checksums.
   *
   * @throws org.apache.lucene.store.LockObtainFailedException where another process holds them
   */
  static Optional<String> findDamage(Directory directory) throws IOException {
    if (!DirectoryReader.indexExists(directory)) {
      return Optional.of("it is not there");
    }
    try (CheckIndex check = new CheckIndex(directory)) {
      check.setLevel(CheckIndex.Level.MIN_LEVEL_FOR_CHECKSUM_CHECKS);
      CheckIndex.Status status = check.checkIndex();
      return status.clean ? Optional.empty() : Optional.of("its checksums are wrong");
    }
  }

  static CommitFacts facts(Directory directory) throws IOException {
    return CommitFacts.ofUserData(SegmentInfos.readLatestCommit(directory).getUserData());
  }

  private static IndexWriterConfig config(Words words, OpenMode mode) {
    return new IndexWriterConfig(words)
        .setOpenMode(mode)
        .setSimilarity(SCALE)
        .setMergePolicy(new TieredMergePolicy().setSegmentsPerTier(SEGMENTS_PER_TIER))
        .setRAMBufferSizeMB(RAM_MB)
        // A search then goes through a stretch of each segment, however many studios there are.
        .setIndexSort(new Sort(new SortField(EntryDocument.STUDIO, SortField.Type.STRING)))
        // What was not committed is in the database; a half-known bookmark would be worse.
        .setCommitOnClose(false);
  }

  private static SearcherManager searchers(IndexWriter writer) throws IOException {
    QueryCache kept = new LRUQueryCache(MOST_KEPT_QUERIES, MOST_KEPT_BYTES);
    QueryCachingPolicy policy = new SeenCachingPolicy();
    return new SearcherManager(
        writer,
        new SearcherFactory() {
          @Override
          public IndexSearcher newSearcher(IndexReader reader, @Nullable IndexReader previous) {
            IndexSearcher searcher = new IndexSearcher(reader);
            searcher.setSimilarity(SCALE);
            searcher.setQueryCache(kept);
            searcher.setQueryCachingPolicy(policy);
            return searcher;
          }
        });
  }

  Path folder() {
    return folder;
  }

  CommitFacts committed() {
    return committed;
  }

  void put(IndexEntry entry) throws IOException {
    Term key = EntryDocument.key(entry.studio(), entry.setup());
    Optional<Revision> known = findRevision(key);
    boolean older =
        known
            .map(
                revision ->
                    revision.gone()
                        ? entry.revision() <= revision.number()
                        : entry.revision() < revision.number())
            .orElse(false);
    if (!older) {
      write(key, EntryDocument.of(entry), new Revision(entry.revision(), false));
    }
  }

  void delete(String studio, String setup, int revision) throws IOException {
    Term key = EntryDocument.key(studio, setup);
    Optional<Revision> known = findRevision(key);
    if (revision == Change.ERASED || known.isEmpty() || known.get().number() <= revision) {
      write(key, EntryDocument.gone(studio, setup, revision), new Revision(revision, true));
    }
  }

  private void write(Term key, Document document, Revision revision) throws IOException {
    writer.updateDocument(key, document);
    unseen.put(key, revision);
  }

  Optional<Revision> findRevision(Term key) throws IOException {
    Revision recent = unseen.get(key);
    return recent != null ? Optional.of(recent) : read(searcher -> findRevision(searcher, key));
  }

  static Optional<Revision> findRevision(IndexSearcher searcher, Term key) throws IOException {
    for (LeafReaderContext leaf : searcher.getIndexReader().leaves()) {
      PostingsEnum postings = leaf.reader().postings(key, PostingsEnum.NONE);
      if (postings == null) {
        continue;
      }
      for (int doc = postings.nextDoc();
          doc != DocIdSetIterator.NO_MORE_DOCS;
          doc = postings.nextDoc()) {
        if (leaf.reader().getLiveDocs() == null || leaf.reader().getLiveDocs().get(doc)) {
          NumericDocValues revisions = DocValues.getNumeric(leaf.reader(), EntryDocument.REVISION);
          NumericDocValues changes = DocValues.getNumeric(leaf.reader(), EntryDocument.CHANGED);
          if (revisions.advanceExact(doc)) {
            return Optional.of(
                new Revision(Math.toIntExact(revisions.longValue()), !changes.advanceExact(doc)));
          }
        }
      }
    }
    return Optional.empty();
  }

  void refresh() throws IOException {
    searchers.maybeRefreshBlocking();
    unseen.clear();
  }

  void commit(CommitFacts facts) throws IOException {
    writer.setLiveCommitData(facts.toUserData().entrySet());
    writer.commit();
    committed = facts;
  }

  <T> T read(Reading<T> reading) throws IOException {
    IndexSearcher searcher = searchers.acquire();
    try {
      return reading.of(searcher);
    } finally {
      searchers.release(searcher);
    }
  }

  /** Something read from one unchanging view of the index. */
  interface Reading<T> {
    T of(IndexSearcher searcher) throws IOException;
  }

  /** Gives up what was not committed. Searches go on. */
  void stopWriting() throws IOException {
    writer.rollback();
  }

  /** Lets go of the files at the last commit. Searches that are under way end in peace. */
  @Override
  public void close() throws IOException {
    IOUtils.close(searchers, writer::rollback, directory);
  }

  private static void closeAfter(
      Exception cause, @Nullable IndexWriter writer, Directory directory) {
    try {
      if (writer != null) {
        writer.rollback();
      }
      directory.close();
    } catch (IOException | RuntimeException e) {
      cause.addSuppressed(e);
    }
  }
}
