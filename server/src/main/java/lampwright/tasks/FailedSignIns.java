package lampwright.tasks;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.LongAdder;
import lampwright.people.SecretHash;
import lampwright.store.Database;
import lampwright.store.FailedTries;
import lampwright.store.FailedTries.Counted;
import lampwright.store.Transaction;

/**
 * Slows down who guesses passwords or codes, without giving a stranger the means to keep somebody
 * out. The counts are the database's, so all servers on it count together.
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
 * of as many sent one by one, at however many servers. To judge one takes one round trip; a try
 * that this server knows to be too soon is not looked at, and takes none.
 */
public final class FailedSignIns {

  /** An address from which somebody has signed in is known for so long. */
  private static final Duration ADDRESS_KNOWN = Duration.ofDays(30);

  /** By so much the clocks of servers on one database may differ, and one of them be set. */
  private static final Duration CLOCKS_DIFFER = Duration.ofMinutes(5);

  private static final int MOST_REMEMBERED = 20_000;

  private final Database database;
  private final Clock clock;
  private final Limits passwords;
  private final Limits codes;
  private final LongAdder failed = new LongAdder();

  /**
   * One try.
   *
   * @param email whose account it is for
   * @param knownBrowser of a browser in which that account's person has signed in before
   */
  record Try(String email, String address, Optional<SecretHash> knownBrowser) {

    private String account() {
      return email;
    }

    /** Where it comes from, as closely as can be told. */
    private String here() {
      return knownBrowser
          .map(browser -> email + "\nbrowser\n" + browser.hex())
          .orElseGet(() -> email + "\naddress\n" + address);
    }

    private SecretHash knownAddress() {
      return SecretHash.of("known\n" + email + "\naddress\n" + address);
    }
  }

  /** So many failures at once, and then one more each time an interval has passed. */
  private record Bound(int atOnce, Duration oneMoreEach) {}

  /**
   * How many failures of a kind are free.
   *
   * @param kind before the names that they count under
   * @param until when those are free again who this server was told are too soon
   */
  private record Limits(
      String kind, Bound here, Bound account, Bound address, Map<SecretHash, Instant> until) {

    static Limits of(String kind, Bound here, Bound account, Bound address) {
      return new Limits(
          kind,
          here,
          account,
          address,
          new LinkedHashMap<>(16, 0.75f, true) {
            @Override
            protected boolean removeEldestEntry(Map.Entry<SecretHash, Instant> eldest) {
              return size() > MOST_REMEMBERED;
            }
          });
    }

    /** Of one length, whatever a stranger typed. */
    SecretHash here(Try one) {
      return SecretHash.of(kind + "\n" + one.here());
    }

    List<Counted> counted(Try one) {
      Counted here = counted(here(one), this.here);
      return one.knownBrowser().isPresent()
          ? List.of(here)
          : List.of(
              here,
              counted(SecretHash.of(kind + "\naccount\n" + one.account()), account),
              counted(SecretHash.of(kind + "\nfrom\n" + one.address()), address));
    }

    /**
     * No pause is longer than one interval, so whoever would have to wait longer failed by a clock
     * that has gone back since.
     */
    boolean isOfAnotherClock(Try one, Duration pause) {
      return counted(one).stream()
          .noneMatch(c -> pause.compareTo(c.oneMoreEach().plus(CLOCKS_DIFFER)) <= 0);
    }

    private static Counted counted(SecretHash name, Bound bound) {
      return new Counted(name, bound.atOnce(), bound.oneMoreEach());
    }
  }

  public FailedSignIns(Database database, Clock clock) {
    this.database = database;
    this.clock = clock;
    this.passwords =
        Limits.of(
            "password",
            new Bound(8, Duration.ofSeconds(15)),
            new Bound(50, Duration.ofSeconds(20)),
            new Bound(50, Duration.ofSeconds(3)));
    // Of a million codes three are right at a time: 288 guesses a day find one in three years.
    this.codes =
        Limits.of(
            "code",
            new Bound(5, Duration.ofMinutes(1)),
            new Bound(10, Duration.ofMinutes(5)),
            new Bound(50, Duration.ofSeconds(3)));
  }

  /**
   * Lets a password be looked at. What this server was not told of, {@link #judge} finds.
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
   * Lets a code be looked at. What this server was not told of, {@link #judgeCode} finds.
   *
   * @throws Refused when there were too many failures
   */
  void mustBeFewCodes(Try one) {
    mustBeFew(codes, one);
  }

  /**
   * Counts a code that was wrong. It has a connection of its own, so no transaction may be open.
   *
   * @throws Refused when there were too many failures meanwhile, be it right or wrong
   */
  void judgeCode(Try one, boolean right) {
    judge(codes, one, right);
  }

  /** Forgets what failed here before somebody came in; not before they have proved all there is. */
  void forgive(Transaction in, Try one) {
    FailedTries tries = new FailedTries(in);
    tries.forget(List.of(passwords.here(one), codes.here(one)));
    tries.know(one.knownAddress(), clock.instant().plus(ADDRESS_KNOWN));
    forget(passwords, one);
    forget(codes, one);
  }

  /** Forgets which passwords failed here before the right one; not which codes did. */
  void forgivePasswords(Try one) {
    database.eachByItself(
        in -> {
          new FailedTries(in).forget(List.of(passwords.here(one)));
          return one;
        });
    forget(passwords, one);
  }

  /** How many tries were wrong at this server since its start. */
  public long failed() {
    return failed.sum();
  }

  private void judge(Limits limits, Try one, boolean right) {
    if (!right) {
      failed.increment();
    }
    Instant now = clock.instant();
    Optional<Duration> pause = pause(limits, one, right, now);
    if (pause.filter(longer -> limits.isOfAnotherClock(one, longer)).isPresent()) {
      database.eachByItself(
          in -> {
            List<SecretHash> names = limits.counted(one).stream().map(Counted::name).toList();
            new FailedTries(in).forget(names);
            return one;
          });
      pause = pause(limits, one, right, now);
    }
    if (pause.isPresent()) {
      synchronized (limits.until()) {
        limits.until().put(limits.here(one), now.plus(pause.get()));
      }
      throw Refused.tooMany(pause.get());
    }
  }

  private Optional<Duration> pause(Limits limits, Try one, boolean right, Instant now) {
    return database.eachByItself(
        in -> new FailedTries(in).judge(limits.counted(one), one.knownAddress(), right, now));
  }

  private void mustBeFew(Limits limits, Try one) {
    Instant now = clock.instant();
    Optional<Instant> until;
    synchronized (limits.until()) {
      until = Optional.ofNullable(limits.until().get(limits.here(one))).filter(now::isBefore);
    }
    if (until
        .filter(end -> !limits.isOfAnotherClock(one, Duration.between(now, end)))
        .isPresent()) {
      throw Refused.tooMany(Duration.between(now, until.get()));
    }
  }

  private static void forget(Limits limits, Try one) {
    synchronized (limits.until()) {
      limits.until().remove(limits.here(one));
    }
  }
}
