package lampwright.meaning;

import ai.onnxruntime.OnnxTensor;
import ai.onnxruntime.OrtEnvironment;
import ai.onnxruntime.OrtException;
import ai.onnxruntime.OrtSession;
import java.io.IOException;
import java.io.InputStream;
import java.nio.LongBuffer;
import java.util.Arrays;
import java.util.Map;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;

/**
 * A small model of English sentences that runs in this process: the mean of what it makes of each
 * piece of a word (N. Reimers and I. Gurevych, "Sentence-BERT", 2019; model all-MiniLM-L6-v2 with
 * weights of 8 bits). Safe for many threads; each call uses one core.
 */
public final class SentenceModel implements AutoCloseable {

  /** Names the model in the database: meanings of two models cannot be compared. */
  public static final String NAME = "all-minilm-l6-v2-q";

  /** Pieces of words that are read, about 190 words: what the model was made for. */
  static final int MOST_PIECES = 256;

  /**
   * What loading needs of a thread. With the usual 1 MB the process dies without a word: measured,
   * and 2 MB were enough.
   */
  private static final long STACK_BYTES = 32L << 20;

  private final WordPieces pieces;
  private final OrtEnvironment environment;
  private final OrtSession session;

  private SentenceModel(WordPieces pieces, OrtEnvironment environment, OrtSession session) {
    this.pieces = pieces;
    this.environment = environment;
    this.session = session;
  }

  /** It cannot be used here; search goes on without it. */
  public static final class Unavailable extends Exception {
    private static final long serialVersionUID = 1;

    Unavailable(String message, Throwable cause) {
      super(message, cause);
    }
  }

  /**
   * Loads it; takes about a second and 150 MB.
   *
   * @throws Unavailable where the machine cannot run it or it was packed without
   */
  public static SentenceModel load() throws Unavailable {
    FutureTask<SentenceModel> loading = new FutureTask<>(SentenceModel::loadHere);
    Thread.ofPlatform().name("sentence-model-loader").stackSize(STACK_BYTES).start(loading);
    try {
      return loading.get();
    } catch (ExecutionException e) {
      if (e.getCause() instanceof Unavailable unavailable) {
        throw unavailable;
      }
      throw new Unavailable("The model of sentences cannot run here: " + e.getCause(), e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new Unavailable("Loading the model of sentences was interrupted", e);
    }
  }

  private static SentenceModel loadHere() throws Unavailable {
    try {
      WordPieces pieces;
      try (InputStream tokenizer = resource("/all-minilm-l6-v2-q-tokenizer.json")) {
        pieces = WordPieces.read(tokenizer);
      }
      byte[] model;
      try (InputStream in = resource("/all-minilm-l6-v2-q.onnx")) {
        model = in.readAllBytes();
      }
      OrtEnvironment environment = OrtEnvironment.getEnvironment();
      environment.setTelemetry(false);
      try (OrtSession.SessionOptions options = new OrtSession.SessionOptions()) {
        options.setIntraOpNumThreads(1);
        options.setInterOpNumThreads(1);
        return new SentenceModel(pieces, environment, environment.createSession(model, options));
      }
    } catch (IOException | OrtException | RuntimeException | LinkageError e) {
      throw new Unavailable("The model of sentences cannot run here: " + e.getMessage(), e);
    }
  }

  private static InputStream resource(String name) throws IOException {
    InputStream found = SentenceModel.class.getResourceAsStream(name);
    if (found == null) {
      throw new IOException("no " + name);
    }
    return found;
  }

  /**
   * Returns what a text means, from its first {@value #MOST_PIECES} pieces of words.
   *
   * @throws IllegalStateException where the model fails or was closed
   */
  public Meaning of(String text) {
    long[] numbers = pieces.of(text, MOST_PIECES);
    long[] shape = {1, numbers.length};
    long[] ones = new long[numbers.length];
    Arrays.fill(ones, 1);
    try (OnnxTensor ids = OnnxTensor.createTensor(environment, LongBuffer.wrap(numbers), shape);
        OnnxTensor mask = OnnxTensor.createTensor(environment, LongBuffer.wrap(ones), shape);
        OnnxTensor types =
            OnnxTensor.createTensor(environment, LongBuffer.wrap(new long[numbers.length]), shape);
        OrtSession.Result result =
            session.run(
                Map.of("input_ids", ids, "attention_mask", mask, "token_type_ids", types))) {
      return mean(((float[][][]) result.get(0).getValue())[0]);
    } catch (OrtException e) {
      throw new IllegalStateException("The model of sentences failed", e);
    }
  }

  private static Meaning mean(float[][] states) {
    float[] sum = new float[Meaning.DIMENSIONS];
    for (float[] state : states) {
      for (int i = 0; i < sum.length; i++) {
        sum[i] += state[i];
      }
    }
    return Meaning.of(sum);
  }

  @Override
  public void close() {
    try {
      session.close();
    } catch (OrtException e) {
      throw new IllegalStateException("The model of sentences could not be closed", e);
    }
  }
}
