package lampwright.store;

import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.InputStream;
import java.net.URI;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Base64;
import java.util.HexFormat;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Consumer;
import java.util.function.Supplier;
import software.amazon.awssdk.auth.credentials.AwsCredentialsProvider;
import software.amazon.awssdk.auth.credentials.DefaultCredentialsProvider;
import software.amazon.awssdk.awscore.retry.AwsRetryStrategy;
import software.amazon.awssdk.core.checksums.RequestChecksumCalculation;
import software.amazon.awssdk.core.checksums.ResponseChecksumValidation;
import software.amazon.awssdk.core.exception.SdkClientException;
import software.amazon.awssdk.core.exception.SdkException;
import software.amazon.awssdk.core.sync.RequestBody;
import software.amazon.awssdk.http.urlconnection.UrlConnectionHttpClient;
import software.amazon.awssdk.regions.Region;
import software.amazon.awssdk.services.s3.S3Client;
import software.amazon.awssdk.services.s3.model.GetObjectRequest;
import software.amazon.awssdk.services.s3.model.PutObjectRequest;
import software.amazon.awssdk.services.s3.model.S3Exception;
import software.amazon.awssdk.services.s3.model.S3Object;

/**
 * A bucket of a store that speaks S3, as far as pictures need it: whole objects that are put once
 * and read in parts. Each call ends within bounds, tries again a few times what may pass, and ends
 * as {@link PicturesUnavailable} otherwise; for a moment after one that was not answered the others
 * do not ask either, so that many who want a picture do not all wait.
 */
final class ObjectStore implements AutoCloseable {

  private static final int NOT_FOUND = 404;
  private static final int CONFLICT = 409;
  private static final int PRECONDITION_FAILED = 412;
  private static final int NOT_IMPLEMENTED = 501;

  private static final int TRIES = 3;
  private static final int PUTTING_TRIES = 5;
  private static final Duration CONNECTING = Duration.ofSeconds(2);
  private static final Duration SILENCE = Duration.ofSeconds(10);
  private static final Duration WHOLE_CALL = Duration.ofSeconds(20);

  /** The slowest way to the store on which the largest picture still gets there. */
  private static final long SLOWEST_BYTES_PER_SECOND = 256 << 10;

  private static final Duration NOT_ASKING = Duration.ofSeconds(1);

  private final S3Client client;
  private final String bucket;
  private final String where;
  private final AtomicLong notAskingUntilNanos = new AtomicLong(System.nanoTime());

  private ObjectStore(S3Client client, String bucket, String where) {
    this.client = client;
    this.bucket = bucket;
    this.where = where;
  }

  /**
   * Makes the client, and asks the store once.
   *
   * @throws PicturesUnavailable where it refuses; where it does not answer, it may later
   */
  static ObjectStore open(PicturePlace.Bucket place) {
    AwsCredentialsProvider key =
        place
            .keyFile()
            .<AwsCredentialsProvider>map(KeyFile::new)
            .orElseGet(() -> DefaultCredentialsProvider.builder().build());
    String where = "The store of pictures (" + place + ")";
    try {
      key.resolveCredentials();
    } catch (SdkClientException e) {
      throw PicturesUnavailable.refused(
          where + " has no key: " + reason(e) + ". Set LAMPWRIGHT_S3_KEY_FILE.", e);
    }
    ObjectStore store = new ObjectStore(client(place, key), place.bucket(), where);
    try {
      store.check(place.prefix());
    } catch (PicturesUnavailable e) {
      if (e.isRefused()) {
        store.close();
        throw e;
      }
    }
    return store;
  }

  private static S3Client client(PicturePlace.Bucket place, AwsCredentialsProvider key) {
    return S3Client.builder()
        .httpClientBuilder(
            UrlConnectionHttpClient.builder().connectionTimeout(CONNECTING).socketTimeout(SILENCE))
        .region(Region.of(place.region()))
        .credentialsProvider(key)
        .applyMutation(
            builder -> place.endpoint().ifPresent((URI at) -> builder.endpointOverride(at)))
        // Compatible stores seldom have a host name for each bucket.
        .forcePathStyle(place.endpoint().isPresent())
        // Those that were not asked for are newer than many stores.
        .requestChecksumCalculation(RequestChecksumCalculation.WHEN_REQUIRED)
        .responseChecksumValidation(ResponseChecksumValidation.WHEN_SUPPORTED)
        .serviceConfiguration(s3 -> s3.expectContinueEnabled(false))
        .overrideConfiguration(
            all ->
                all.retryStrategy(
                        AwsRetryStrategy.standardRetryStrategy().toBuilder()
                            .maxAttempts(TRIES)
                            .build())
                    .apiCallTimeout(WHOLE_CALL))
        .build();
  }

  /** One object. */
  record Entry(String key, long bytes) {}

  /** Asks for what begins with a prefix, at most one: needs the key, the bucket and the region. */
  void check(String prefix) {
    ask(() -> client.listObjectsV2(of -> of.bucket(bucket).prefix(prefix).maxKeys(1)));
  }

  /** How many bytes there are under a key; empty where there is nothing. */
  OptionalLong size(String key) {
    return find(() -> client.headObject(of -> of.bucket(bucket).key(key)).contentLength())
        .map(OptionalLong::of)
        .orElse(OptionalLong.empty());
  }

  /**
   * Opens a part of an object.
   *
   * @throws FileNotFoundException where there is none
   */
  InputStream open(String key, Optional<Part> part) throws IOException {
    GetObjectRequest.Builder request = GetObjectRequest.builder().bucket(bucket).key(key);
    part.ifPresent(some -> request.range(some.header()));
    return find(() -> (InputStream) client.getObject(request.build()))
        .map(ObjectStream::new)
        .orElseThrow(() -> new FileNotFoundException(key));
  }

  /** Some bytes of an object, both ends included and counted from 0 (RFC 9110 section 14.1.2). */
  record Part(long first, long last) {

    String header() {
      return "bytes=" + first + "-" + last;
    }
  }

  /** Puts a file under a key, unless something is there already. */
  void put(String key, Path file, long bytes, String sha256) {
    put(key, () -> RequestBody.fromFile(file), bytes, sha256);
  }

  /** The same of bytes in memory. */
  void put(String key, byte[] bytes, String sha256) {
    put(key, () -> RequestBody.fromBytes(bytes), bytes.length, sha256);
  }

  private void put(String key, Supplier<RequestBody> body, long bytes, String sha256) {
    Duration longest = WHOLE_CALL.plusSeconds(bytes / SLOWEST_BYTES_PER_SECOND);
    PutObjectRequest request =
        PutObjectRequest.builder()
            .bucket(bucket)
            .key(key)
            .contentLength(bytes)
            .contentType("application/octet-stream")
            .checksumSHA256(Base64.getEncoder().encodeToString(HexFormat.of().parseHex(sha256)))
            .overrideConfiguration(one -> one.apiCallTimeout(longest))
            .build();
    for (int tries = 1; ; tries++) {
      // Some stores do not know the condition, so it is not all that keeps what is there.
      if (size(key).isPresent() || putNew(request, body, tries == PUTTING_TRIES)) {
        return;
      }
    }
  }

  /**
   * Puts what is not there yet.
   *
   * @return false where another server was putting the same, which may have failed
   */
  private boolean putNew(PutObjectRequest request, Supplier<RequestBody> body, boolean isLast) {
    return ask(
        () -> {
          try {
            client.putObject(request.toBuilder().ifNoneMatch("*").build(), body.get());
            return true;
          } catch (S3Exception e) {
            return switch (e.statusCode()) {
              case PRECONDITION_FAILED -> true;
              case NOT_IMPLEMENTED -> {
                client.putObject(request, body.get());
                yield true;
              }
              case CONFLICT -> {
                if (isLast) {
                  throw e;
                }
                yield false;
              }
              default -> throw e;
            };
          }
        });
  }

  /** Takes an object away, where there is one. */
  void delete(String key) {
    ask(() -> client.deleteObject(of -> of.bucket(bucket).key(key)));
  }

  /** Goes through every object whose key begins with a prefix, a thousand an answer. */
  void list(String prefix, Consumer<Entry> each) {
    ask(
        () -> {
          client
              .listObjectsV2Paginator(of -> of.bucket(bucket).prefix(prefix))
              .contents()
              .forEach((S3Object found) -> each.accept(new Entry(found.key(), found.size())));
          return prefix;
        });
  }

  private <T> Optional<T> find(Supplier<T> question) {
    return ask(
        () -> {
          try {
            return Optional.of(question.get());
          } catch (S3Exception e) {
            if (e.statusCode() == NOT_FOUND && !isBucketMissing(e)) {
              return Optional.empty();
            }
            throw e;
          }
        });
  }

  private <T> T ask(Supplier<T> question) {
    if (System.nanoTime() - notAskingUntilNanos.get() < 0) {
      throw PicturesUnavailable.away(where + " did not answer a moment ago.", new IOException());
    }
    try {
      return question.get();
    } catch (S3Exception e) {
      throw said(e);
    } catch (SdkException e) {
      notAskingUntilNanos.set(System.nanoTime() + NOT_ASKING.toNanos());
      throw PicturesUnavailable.away(where + " does not answer: " + reason(e) + ".", e);
    }
  }

  private PicturesUnavailable said(S3Exception e) {
    String code =
        Optional.ofNullable(e.awsErrorDetails())
            .map(details -> details.errorCode())
            .orElse(String.valueOf(e.statusCode()));
    if (e.statusCode() >= 500 || e.isThrottlingException()) {
      notAskingUntilNanos.set(System.nanoTime() + NOT_ASKING.toNanos());
      return PicturesUnavailable.away(where + " cannot answer now: " + code + ".", e);
    }
    return PicturesUnavailable.refused(where + " refuses: " + code + ". " + WAY_OUT, e);
  }

  private static final String WAY_OUT =
      "Correct the bucket's name, LAMPWRIGHT_S3_ENDPOINT, LAMPWRIGHT_S3_REGION or the key, or what"
          + " the key may do.";

  private static boolean isBucketMissing(S3Exception e) {
    return Optional.ofNullable(e.awsErrorDetails())
        .filter(details -> "NoSuchBucket".equals(details.errorCode()))
        .isPresent();
  }

  private static String reason(SdkException e) {
    Throwable cause = e;
    while (cause.getCause() != null) {
      cause = cause.getCause();
    }
    String message = String.valueOf(cause.getMessage()).lines().findFirst().orElse("");
    return cause instanceof SdkClientException
        ? message
        : cause.getClass().getSimpleName() + " (" + message + ")";
  }

  /** What the store sends; where it stops, that is a fault of reading like any other. */
  private static final class ObjectStream extends InputStream {

    private final InputStream in;

    ObjectStream(InputStream in) {
      this.in = in;
    }

    @Override
    public int read() throws IOException {
      byte[] one = new byte[1];
      return read(one, 0, 1) < 0 ? -1 : one[0] & 0xff;
    }

    @Override
    public int read(byte[] into, int from, int most) throws IOException {
      try {
        return in.read(into, from, most);
      } catch (SdkException e) {
        throw new IOException(e);
      }
    }

    @Override
    public void close() throws IOException {
      in.close();
    }
  }

  @Override
  public void close() {
    client.close();
  }
}
