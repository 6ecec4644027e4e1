package lampwright.meaning;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * The model of sentences of one server process: loaded beside its start, and what was asked of late
 * is remembered, because to work out what a question means takes longer than to search.
 */
public final class Sentences implements Meanings, AutoCloseable {

  private static final Logger LOG = LoggerFactory.getLogger(Sentences.class);
  private static final int REMEMBERED = 2_000;

  private final CountDownLatch tried = new CountDownLatch(1);
  private final Map<String, Meaning> remembered =
      new LinkedHashMap<>(256, 0.75f, true) {
        private static final long serialVersionUID = 1;

        @Override
        protected boolean removeEldestEntry(Map.Entry<String, Meaning> eldest) {
          return size() > REMEMBERED;
        }
      };
  private volatile Optional<SentenceModel> model = Optional.empty();
  private volatile Optional<String> trouble = Optional.of("The model of sentences is loading.");

  private Sentences() {}

  /** Begins to load the model. */
  public static Sentences load() {
    Sentences sentences = new Sentences();
    Thread.ofPlatform().name("sentence-model").daemon().start(sentences::loadNow);
    return sentences;
  }

  private void loadNow() {
    try {
      model = Optional.of(SentenceModel.load());
      trouble = Optional.empty();
    } catch (SentenceModel.Unavailable e) {
      LOG.warn("Searches go by words alone", e);
      trouble = Optional.of(String.valueOf(e.getMessage()));
    } finally {
      tried.countDown();
    }
  }

  /** The model once it is loaded; empty where it cannot be used. */
  public Optional<SentenceModel> await() throws InterruptedException {
    tried.await();
    return model;
  }

  @Override
  public boolean isLoading() {
    return tried.getCount() > 0;
  }

  /** Why meanings cannot be told now; empty where they can. */
  public Optional<String> trouble() {
    return trouble;
  }

  @Override
  public Optional<Meaning> find(String text) {
    String asked = text.strip().replaceAll("\\s+", " ").toLowerCase(Locale.ROOT);
    Optional<SentenceModel> loaded = model;
    if (loaded.isEmpty() || asked.isEmpty()) {
      return Optional.empty();
    }
    synchronized (remembered) {
      Meaning known = remembered.get(asked);
      if (known != null) {
        return Optional.of(known);
      }
    }
    Meaning meaning = loaded.get().of(asked);
    synchronized (remembered) {
      remembered.put(asked, meaning);
    }
    return Optional.of(meaning);
  }

  @Override
  public void close() {
    try {
      tried.await();
      model.ifPresent(SentenceModel::close);
      model = Optional.empty();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
