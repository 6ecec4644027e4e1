package lampwright.web.http;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import io.github.bucket4j.Bucket;
import io.github.bucket4j.ConsumptionProbe;
import io.javalin.http.Context;
import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.atomic.LongAdder;
import lampwright.tasks.Caller;
import lampwright.tasks.Refused;

/**
 * How often somebody may ask: a bucket of tokens for each member, with all their browsers and
 * programs, and for each network address of who is not signed in. Each server counts for itself.
 */
public final class MemberLimits {

  private static final Duration MINUTE = Duration.ofMinutes(1);
  private static final int MOST_REMEMBERED = 50_000;

  private final PerMinute perMinute;
  private final Cache<String, Bucket> members = buckets();
  private final Cache<String, Bucket> costly = buckets();
  private final Cache<String, Bucket> visitors = buckets();
  private final LongAdder refused = new LongAdder();

  /**
   * How many requests a minute; 0 is no limit. As many may come at once as in a whole minute.
   *
   * @param member of a member
   * @param costly of a member, of costly work
   * @param visitor of an address, where nobody is signed in
   */
  public record PerMinute(int member, int costly, int visitor) {

    /** Nobody is limited. */
    public static final PerMinute UNLIMITED = new PerMinute(0, 0, 0);
  }

  public MemberLimits(PerMinute perMinute) {
    this.perMinute = perMinute;
  }

  /** A bucket that nobody took from for a minute is full again: to forget it changes nothing. */
  private static Cache<String, Bucket> buckets() {
    return Caffeine.newBuilder()
        .maximumSize(MOST_REMEMBERED)
        .expireAfterAccess(MINUTE.multipliedBy(2))
        .build();
  }

  /**
   * Counts a request.
   *
   * @param caller who asks; empty where nobody need say
   * @param address where it comes from
   * @throws Refused TooMany where there were too many
   */
  void count(Context context, Optional<Caller> caller, String address, Lane lane) {
    if (lane == Lane.OPEN) {
      return;
    }
    if (caller.isEmpty()) {
      take(context, visitors, address, perMinute.visitor(), "visitor");
      return;
    }
    String person = caller.get().person().id().text();
    take(context, members, person, perMinute.member(), "member");
    if (lane.isCostly()) {
      take(context, costly, person, perMinute.costly(), "costly");
    }
  }

  private void take(
      Context context, Cache<String, Bucket> buckets, String of, int limit, String policy) {
    if (limit == 0) {
      return;
    }
    Bucket bucket = buckets.get(of, _ -> full(limit));
    if (bucket.tryConsume(1)) {
      return;
    }
    refused.increment();
    ConsumptionProbe probe = bucket.tryConsumeAndReturnRemaining(1);
    Duration wait = Duration.ofNanos(Math.max(0, probe.getNanosToWaitForRefill()));
    // draft-ietf-httpapi-ratelimit-headers-10.
    context.header("RateLimit-Policy", "\"%s\";q=%d;w=60".formatted(policy, limit));
    context.header("RateLimit", "\"%s\";r=0;t=%d".formatted(policy, Math.max(1, wait.toSeconds())));
    context.header("Connection", "close");
    throw Refused.tooMany(wait);
  }

  private static Bucket full(int limit) {
    // By the clock of the day, which can go back for hours, nothing would be given back so long.
    return Bucket.builder()
        .withNanosecondPrecision()
        .addLimit(bandwidth -> bandwidth.capacity(limit).refillGreedy(limit, MINUTE))
        .build();
  }

  /** How many requests were refused since the start. */
  public long refused() {
    return refused.sum();
  }
}
