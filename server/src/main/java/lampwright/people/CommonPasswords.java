package lampwright.people;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.util.Arrays;

/**
 * The commonest passwords from leaks that are long enough to be taken here, some 44,000 of the
 * first million; OWASP ASVS 5.0 (6.2.4) asks for the first 3,000 of such. Their list is in {@code
 * src/test/npm}; what comes along are 48 bits of the SHA-256 of each, sorted: nobody need read what
 * people chose, and one password in six thousand million is taken for one of them by chance.
 */
public final class CommonPasswords {

  private static final String FILE = "common-passwords.bin";
  private static final int HASH_BYTES = 6;

  private final long[] sorted;

  private CommonPasswords(long[] sorted) {
    this.sorted = sorted;
  }

  /** Reads them: 264 kB from the class path, 352 kB in memory. */
  public static CommonPasswords fromClassPath() {
    try (InputStream file = CommonPasswords.class.getResourceAsStream(FILE)) {
      if (file == null) {
        throw new IllegalStateException("The resource " + FILE + " is not beside this class.");
      }
      byte[] all = file.readAllBytes();
      long[] sorted = new long[all.length / HASH_BYTES];
      for (int i = 0; i < sorted.length; i++) {
        sorted[i] = number(all, i * HASH_BYTES);
      }
      return new CommonPasswords(sorted);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Whether a password is one of them, in whatever case. */
  public boolean contains(String password) {
    return Arrays.binarySearch(sorted, hash(password)) >= 0;
  }

  /** What is kept of a password: a number of 48 bits. */
  static long hash(String password) {
    return number(SecretHash.of(PasswordRule.simple(password)).bytes(), 0);
  }

  private static long number(byte[] bytes, int from) {
    byte[] padded = new byte[Long.BYTES];
    System.arraycopy(bytes, from, padded, Long.BYTES - HASH_BYTES, HASH_BYTES);
    return ByteBuffer.wrap(padded).getLong();
  }
}
