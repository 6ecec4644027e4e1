package lampwright.people;

import java.util.Locale;

/**
 * Lets a person in once in place of a code of their device. Made by {@link Ids}, shown once; only
 * its hash is kept.
 *
 * @param text without the gaps between its groups
 */
public record RecoveryCode(String text) {

  static final int LENGTH = 24;

  private static final int GROUP = 4;

  /**
   * What somebody typed: in any case, with or without gaps, and with the letters that ours are
   * mistaken for.
   */
  public static RecoveryCode typed(String typed) {
    return new RecoveryCode(
        typed
            .replaceAll("[\\s-]", "")
            .toLowerCase(Locale.ROOT)
            .replace('o', '0')
            .replace('i', '1')
            .replace('l', '1'));
  }

  /** As it is shown: in groups of four. */
  public String grouped() {
    return text.replaceAll("(.{" + GROUP + "})(?=.)", "$1-");
  }

  /** What is kept of it. */
  public SecretHash hash() {
    return SecretHash.of(text);
  }

  /** No record's text may carry a secret into a log. */
  @Override
  public String toString() {
    return "RecoveryCode";
  }
}
