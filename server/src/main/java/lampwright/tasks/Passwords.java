package lampwright.tasks;

import com.password4j.Argon2Function;
import com.password4j.types.Argon2;
import java.time.Duration;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;
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

  private final Argon2Function now =
      Argon2Function.getInstance(MEMORY_KIB, PASSES, LANES, HASH_BYTES, Argon2.ID);
  private final Semaphore places = new Semaphore(AT_A_TIME, true);

  /** Whether a person's password is right, and whether its hash should be made anew. */
  record Checked(boolean right, boolean outdated) {}

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
      return work.get();
    } finally {
      places.release();
    }
  }
}
