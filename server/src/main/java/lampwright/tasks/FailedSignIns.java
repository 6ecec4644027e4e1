package lampwright.tasks;

import java.time.Clock;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import lampwright.people.SecretHash;

/**
 * Slows down who guesses passwords or codes, without giving a stranger the means to keep somebody
 * out.
 *
 * <p>Failures are counted under the account from one address, under the account from everywhere and
 * under the address. The last two could keep the account's own person out: strangers can bring the
 * second about from anywhere, and the third from the same network. So they do not count at an
 * address from which the person has signed in before. In a browser in which they have, which keeps
 * a secret to show for it, failures are counted under the account in that browser and nowhere else;
 * nobody without that secret can bring those about.
 *
 * <p>A try is judged only after it was looked at, and then whatever came of it is told only if
 * there were not too many failures meanwhile: of many tries sent at once no more are answered than
 * of as many sent one by one.
 */
public final class FailedSignIns {

  private static final int MOST_NAMES = 20_000;

  private final Limits passwords;
  private final Limits codes;
  private final Map<String, Boolean> trusted;

  /**
   * One try.
   *
   * @param email whose account it is for
   * @param knownBrowser of a browser in which that account's person has signed in before
   */
  record Try(String email, String address, Optional<SecretHash> knownBrowser) {

    String account() {
      return key(email);
    }

    /** Where it comes from, as closely as can be told. */
    String here() {
      return knownBrowser
          .map(browser -> key(email + "\nbrowser\n" + browser.hex()))
          .orElseGet(this::atAddress);
    }

    String atAddress() {
      return key(email + "\naddress\n" + address);
    }

    /** Of one length, whatever a stranger typed. */
    private static String key(String text) {
      return SecretHash.of(text).hex();
    }
  }

  private record Limits(Throttle here, Throttle account, Throttle address) {

    Optional<Duration> pause(Try one, boolean known) {
      return Stream.of(
              here.pause(one.here()),
              known ? Optional.<Duration>empty() : account.pause(one.account()),
              known ? Optional.<Duration>empty() : address.pause(one.address()))
          .flatMap(Optional::stream)
          .max(Duration::compareTo);
    }

    void failed(Try one) {
      here.failed(one.here());
      if (one.knownBrowser().isEmpty()) {
        account.failed(one.account());
        address.failed(one.address());
      }
    }
  }

  public FailedSignIns(Clock clock) {
    passwords =
        new Limits(
            new Throttle(8, Duration.ofSeconds(15), MOST_NAMES, clock),
            new Throttle(50, Duration.ofSeconds(20), MOST_NAMES, clock),
            new Throttle(50, Duration.ofSeconds(3), MOST_NAMES, clock));
    // Of a million codes three are right at a time: 288 guesses a day find one in three years.
    codes =
        new Limits(
            new Throttle(5, Duration.ofMinutes(1), MOST_NAMES, clock),
            new Throttle(10, Duration.ofMinutes(5), MOST_NAMES, clock),
            new Throttle(50, Duration.ofSeconds(3), MOST_NAMES, clock));
    trusted =
        new LinkedHashMap<>(16, 0.75f, true) {
          @Override
          protected boolean removeEldestEntry(Map.Entry<String, Boolean> eldest) {
            return size() > MOST_NAMES;
          }
        };
  }

  /**
   * Lets a password be looked at.
   *
   * @throws Refused when there were too many failures
   */
  void mustBeFew(Try one) {
    mustBeFew(passwords, one);
  }

  /**
   * Counts a password that was wrong.
   *
   * @throws Refused when there were too many failures meanwhile, be it right or wrong
   */
  void judge(Try one, boolean right) {
    judge(passwords, one, right);
  }

  /**
   * Lets a code be looked at.
   *
   * @throws Refused when there were too many failures
   */
  void mustBeFewCodes(Try one) {
    mustBeFew(codes, one);
  }

  /**
   * Counts a code that was wrong.
   *
   * @throws Refused when there were too many failures meanwhile, be it right or wrong
   */
  void judgeCode(Try one, boolean right) {
    judge(codes, one, right);
  }

  /** Forgets what failed here before somebody came in; not before they have proved all there is. */
  synchronized void forgive(Try one) {
    passwords.here().forget(one.here());
    codes.here().forget(one.here());
    trusted.put(one.atAddress(), true);
  }

  private synchronized void judge(Limits limits, Try one, boolean right) {
    mustBeFew(limits, one);
    if (!right) {
      limits.failed(one);
    }
  }

  private synchronized void mustBeFew(Limits limits, Try one) {
    boolean known = one.knownBrowser().isPresent() || trusted.containsKey(one.atAddress());
    Optional<Duration> wait = limits.pause(one, known);
    if (wait.isPresent()) {
      throw Refused.tooMany(wait.get());
    }
  }
}
