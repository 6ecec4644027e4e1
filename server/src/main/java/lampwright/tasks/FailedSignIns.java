package lampwright.tasks;

import java.time.Clock;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import lampwright.people.SecretHash;

/**
 * Slows down who guesses passwords, without giving a stranger the means to keep somebody out.
 *
 * <p>Failures are counted under the account from one address, under the account from everywhere and
 * under the address. The second could keep the account's own person out, so it does not count where
 * they have signed in from before.
 */
public final class FailedSignIns {

  private static final int MOST_NAMES = 20_000;

  private final Throttle accountFromAddress;
  private final Throttle account;
  private final Throttle address;
  private final Map<String, Boolean> trusted;

  public FailedSignIns(Clock clock) {
    accountFromAddress = new Throttle(8, Duration.ofSeconds(15), MOST_NAMES, clock);
    account = new Throttle(50, Duration.ofSeconds(20), MOST_NAMES, clock);
    address = new Throttle(50, Duration.ofSeconds(3), MOST_NAMES, clock);
    trusted =
        new LinkedHashMap<>(16, 0.75f, true) {
          @Override
          protected boolean removeEldestEntry(Map.Entry<String, Boolean> eldest) {
            return size() > MOST_NAMES;
          }
        };
  }

  /**
   * Lets a try pass.
   *
   * @throws Refused when there were too many failures
   */
  void mustBeFew(String email, String from) {
    String both = key(email, from);
    Optional<Duration> wait =
        Stream.of(
                accountFromAddress.pause(both),
                isTrusted(both) ? Optional.<Duration>empty() : account.pause(key(email, "")),
                address.pause(from))
            .flatMap(Optional::stream)
            .max(Duration::compareTo);
    if (wait.isPresent()) {
      throw Refused.tooMany(wait.get());
    }
  }

  void add(String email, String from) {
    accountFromAddress.failed(key(email, from));
    account.failed(key(email, ""));
    address.failed(from);
  }

  void forgive(String email, String from) {
    String both = key(email, from);
    accountFromAddress.forget(both);
    synchronized (trusted) {
      trusted.put(both, true);
    }
  }

  private boolean isTrusted(String both) {
    synchronized (trusted) {
      return trusted.containsKey(both);
    }
  }

  /** Of one length, whatever a stranger typed. */
  private static String key(String email, String from) {
    return SecretHash.of(email + "\n" + from).hex();
  }
}
