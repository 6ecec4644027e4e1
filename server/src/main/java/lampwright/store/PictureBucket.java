package lampwright.store;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.Semaphore;

/**
 * The files of pictures in a bucket of an object store. What comes in lies on this machine until it
 * is complete, and is put whole with its checksum: an object is there entirely or not at all
 * (Amazon S3 API Reference, PutObject), and who asks after it was put finds it.
 */
public final class PictureBucket implements PictureFiles {

  /** So long what was found may be taken for there; rows name it, so it does not go. */
  private static final Duration RECALL = Duration.ofMinutes(10);

  private static final int MOST_RECALLED = 50_000;
  private static final int QUESTIONS_AT_ONCE = 16;

  private final ObjectStore store;
  private final String prefix;
  private final ArrivingFolder arriving;
  private final Cache<String, Long> recalled =
      Caffeine.newBuilder().expireAfterWrite(RECALL).maximumSize(MOST_RECALLED).build();

  private PictureBucket(ObjectStore store, String prefix, ArrivingFolder arriving) {
    this.store = store;
    this.prefix = prefix;
    this.arriving = arriving;
  }

  static PictureBucket open(PicturePlace.Bucket place) {
    ObjectStore store = ObjectStore.open(place);
    try {
      return new PictureBucket(store, place.prefix(), ArrivingFolder.open(place.arriving()));
    } catch (IOException e) {
      store.close();
      throw new UncheckedIOException(e);
    }
  }

  /** For who only reads. */
  static PictureSource read(PicturePlace.Bucket place) {
    ObjectStore store = ObjectStore.open(place);
    return new PictureSource() {
      @Override
      public List<KeptFile> versions(String sha256) {
        return versionsIn(store, place.prefix(), sha256);
      }

      @Override
      public void close() {
        store.close();
      }
    };
  }

  @Override
  public void close() {
    store.close();
    arriving.close();
  }

  @Override
  public Optional<Arrival> receive(InputStream in, long mostBytes) throws IOException {
    return arriving.receive(in, mostBytes);
  }

  @Override
  public void put(Arrival arrival, String sha256, String name) {
    store.put(key(sha256, name), arrival.file(), arrival.bytes(), arrival.sha256());
  }

  @Override
  public void put(String sha256, String name, byte[] bytes) {
    store.put(
        key(sha256, name), bytes, HexFormat.of().formatHex(ArrivingFolder.sha256().digest(bytes)));
  }

  @Override
  public boolean isDistant() {
    return true;
  }

  @Override
  public Optional<String> trouble() {
    try {
      store.check(prefix);
      return Optional.empty();
    } catch (PicturesUnavailable e) {
      return Optional.of(String.valueOf(e.getMessage()));
    }
  }

  @Override
  public Optional<KeptFile> find(String sha256, String name) {
    String key = key(sha256, name);
    OptionalLong bytes = store.size(key);
    if (bytes.isEmpty()) {
      recalled.invalidate(key);
      return Optional.empty();
    }
    recalled.put(key, bytes.getAsLong());
    return Optional.of(new FileThere(store, name, key, bytes.getAsLong()));
  }

  @Override
  public Optional<KeptFile> recall(String sha256, String name) {
    String key = key(sha256, name);
    Long known = recalled.getIfPresent(key);
    return known == null
        ? find(sha256, name)
        : Optional.of(new FileThere(store, name, key, known.longValue()));
  }

  @Override
  public Map<String, KeptFile> originals(Set<String> hashes) {
    Map<String, KeptFile> found = new ConcurrentHashMap<>();
    Semaphore questions = new Semaphore(QUESTIONS_AT_ONCE);
    List<Future<?>> asked = new ArrayList<>();
    try (ExecutorService threads = Executors.newVirtualThreadPerTaskExecutor()) {
      for (String hash : hashes) {
        asked.add(
            threads.submit(
                () -> {
                  questions.acquireUninterruptibly();
                  try {
                    find(hash, ORIGINAL).ifPresent(original -> found.put(hash, original));
                  } finally {
                    questions.release();
                  }
                }));
      }
    }
    asked.forEach(PictureBucket::mustHaveAnswered);
    return found;
  }

  private static void mustHaveAnswered(Future<?> question) {
    if (question.state() == Future.State.FAILED) {
      throw question.exceptionNow() instanceof RuntimeException e
          ? e
          : new IllegalStateException(question.exceptionNow());
    }
  }

  @Override
  public List<KeptFile> versions(String sha256) {
    return versionsIn(store, prefix, sha256);
  }

  private static List<KeptFile> versionsIn(ObjectStore store, String prefix, String sha256) {
    List<KeptFile> found = new ArrayList<>();
    store.list(
        prefix + PictureNames.allOf(sha256),
        entry ->
            found.add(
                new FileThere(
                    store,
                    PictureNames.version(lastPart(entry.key())),
                    entry.key(),
                    entry.bytes())));
    found.sort(KeptFile.ORIGINAL_LAST);
    return found;
  }

  @Override
  public void delete(String sha256) {
    remove(key(sha256, ORIGINAL));
    List<String> others = new ArrayList<>();
    store.list(prefix + PictureNames.allOf(sha256), entry -> others.add(entry.key()));
    others.forEach(this::remove);
  }

  private void remove(String key) {
    recalled.invalidate(key);
    store.delete(key);
  }

  @Override
  public Listing list() {
    Set<String> hashes = new HashSet<>();
    Set<String> complete = new HashSet<>();
    store.list(
        prefix,
        entry -> {
          String hash = PictureNames.hash(lastPart(entry.key()));
          // What is no file of a picture is not ours to judge.
          if (entry.key().startsWith(prefix) && hash.matches("[0-9a-f]{64}")) {
            hashes.add(hash);
            if (entry.key().endsWith("." + ORIGINAL)) {
              complete.add(hash);
            }
          }
        });
    return new Listing(hashes, complete);
  }

  @Override
  public void deleteAll() {
    List<String> all = new ArrayList<>();
    store.list(prefix, entry -> all.add(entry.key()));
    all.forEach(this::remove);
  }

  private String key(String sha256, String name) {
    return prefix + PictureNames.of(sha256, name);
  }

  private static String lastPart(String key) {
    return key.substring(key.lastIndexOf('/') + 1);
  }

  /** An object in the bucket. */
  private record FileThere(ObjectStore store, String name, String key, long bytes)
      implements KeptFile {

    @Override
    public InputStream open(long first, long count) throws IOException {
      if (count == 0) {
        return InputStream.nullInputStream();
      }
      // The store's checksum is of all of it, and is looked at when all of it is asked for.
      boolean isWhole = first == 0 && count == bytes;
      return store.open(
          key,
          isWhole ? Optional.empty() : Optional.of(new ObjectStore.Part(first, first + count - 1)));
    }

    @Override
    public ByteBuffer map() throws IOException {
      Path copy = Files.createTempFile("lampwright-picture", "");
      try (InputStream in = open()) {
        Files.copy(in, copy, StandardCopyOption.REPLACE_EXISTING);
        try (FileChannel whole = FileChannel.open(copy, StandardOpenOption.READ)) {
          return whole.map(FileChannel.MapMode.READ_ONLY, 0, whole.size());
        }
      } finally {
        // The system keeps the bytes for as long as they are mapped.
        Files.deleteIfExists(copy);
      }
    }
  }
}
