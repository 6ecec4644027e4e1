package lampwright.tasks;

import com.password4j.Argon2Function;
import com.password4j.types.Argon2;
import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.LongAdder;
import java.util.function.Supplier;
import lampwright.people.CommonPasswords;
import lampwright.people.PasswordRule;

/**
 * Hashes passwords with Argon2id (19 MiB, 2 passes, 1 lane), a choice of the OWASP cheat sheet on
 * password storage, and writes each hash with its parameters as a PHC string.
 *
 * <p>A hash costs a stranger nothing and us 19 MiB and a tenth of a second. So two are made at a
 * time, the others wait a little, and what would wait longer is refused.
 */
public final class Passwords {

  /** The least number of characters of a new password. */
  public static final int SHORTEST = PasswordRule.SHORTEST;

  /** The most characters that are hashed, so that length costs us nothing. */
  public static final int LONGEST = PasswordRule.LONGEST;

  private static final int MEMORY_KIB = 19 * 1024;
  private static final int PASSES = 2;
  private static final int LANES = 1;
  private static final int HASH_BYTES = 32;
  private static final int AT_A_TIME = 2;
  private static final int MOST_WAITING = 16;
  private static final Duration LONGEST_WAIT = Duration.ofSeconds(5);

  private final Argon2Function now;
  private final LongAdder runs = new LongAdder();
  private final Semaphore places = new Semaphore(AT_A_TIME, true);
  private Optional<CommonPasswords> common = Optional.empty();

  /** At the cost that keeps strangers out. */
  public Passwords() {
    this(MEMORY_KIB, PASSES);
  }

  /**
   * At another cost.
   *
   * @param memoryKib kibibytes that one hash takes, 8 or more
   * @param passes over them, 1 or more
   */
  public Passwords(int memoryKib, int passes) {
    now = Argon2Function.getInstance(memoryKib, passes, LANES, HASH_BYTES, Argon2.ID);
  }

  /** Whether a person's password is right, and whether its hash should be made anew. */
  record Checked(boolean right, boolean outdated) {}

  /**
   * What is wrong with a new password, in words for who chose it.
   *
   * @param familiar what anybody knows about them: e-mail, name, the studio's name
   */
  Optional<String> findFault(String password, String... familiar) {
    return PasswordRule.knowing(familiar)
        .findFault(password)
        .or(
            () ->
                Optional.of(
                        "Password is one of the commonest that have leaked elsewhere, and those are"
                            + " tried first. Take a few words that do not belong together.")
                    .filter(_ -> common().contains(password)));
  }

  /** Read when the first new password comes, since most starts see none. */
  private synchronized CommonPasswords common() {
    CommonPasswords read = common.orElseGet(CommonPasswords::fromClassPath);
    common = Optional.of(read);
    return read;
  }

  /** How many times Argon2 has run since the start; what guessing has cost us. */
  long runs() {
    return runs.sum();
  }

  /**
   * Hashes a new password.
   *
   * @throws Refused when too many wait for theirs
   */
  public String hash(String password) {
    return inTurn(() -> now.hash(password).getResult());
  }

  /**
   * Compares a password with a hash made here, now or under older parameters.
   *
   * @throws Refused when too many wait for theirs
   */
  Checked check(String password, String hash) {
    Argon2Function then = Argon2Function.getInstanceFromHash(hash);
    boolean right = inTurn(() -> then.check(password, hash));
    return new Checked(right, !then.equals(now));
  }

  /** Takes as long as comparing with somebody's hash, so that time does not tell who is known. */
  void checkNobody(String password) {
    hash(password);
  }

  private <T> T inTurn(Supplier<T> work) {
    if (places.getQueueLength() >= MOST_WAITING) {
      throw Refused.tooMany(LONGEST_WAIT);
    }
    try {
      if (!places.tryAcquire(LONGEST_WAIT.toMillis(), TimeUnit.MILLISECONDS)) {
        throw Refused.tooMany(LONGEST_WAIT);
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw Refused.unavailable(LONGEST_WAIT);
    }
    try {
      runs.increment();
      return work.get();
    } finally {
      places.release();
    }
  }
}
