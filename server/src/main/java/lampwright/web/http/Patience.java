package lampwright.web.http;

import java.time.Duration;

/**
 * How long the server waits for those who are slow, and how many it has to itself at once, so that
 * nobody can keep it busy by doing nothing.
 *
 * @param silence after which a connection on which nothing moves is ended
 * @param head within which the head of a request must be there, from the connection's opening or
 *     from the end of the request before
 * @param grace what a body or an answer may be waited for beyond what its bytes are given
 * @param leastBytesPerS what a body must arrive with, and an answer be taken with, on average
 * @param fromOneAddress the most connections from one network address
 * @param altogether the most connections at all; further ones wait until another ends
 */
public record Patience(
    Duration silence,
    Duration head,
    Duration grace,
    int leastBytesPerS,
    int fromOneAddress,
    int altogether) {

  /**
   * What people with a poor signal need and no more: a telephone at the edge of its network brings
   * some 30 kbit/s, and a browser opens six connections.
   */
  public static final Patience USUAL =
      new Patience(
          Duration.ofSeconds(30), Duration.ofSeconds(40), Duration.ofSeconds(30), 1024, 256, 4000);

  /** How often it is looked whether somebody was too slow, or a certificate is renewed. */
  Duration betweenLooks() {
    return Duration.ofMillis(Math.clamp(head.toMillis() / 8, 10, 1000));
  }

  /** How long so many bytes may be waited for, all in all. */
  long nanosFor(long bytes) {
    return grace.plusSeconds(bytes / leastBytesPerS).toNanos();
  }
}
