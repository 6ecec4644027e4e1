package lampwright.people;

import java.text.Normalizer;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What a new password must be: long enough, and not one of those that are tried first. Nothing else
 * is asked, no mixture of signs and no change by the calendar (OWASP ASVS 5.0, 6.2.1 to 6.2.11;
 * NIST SP 800-63B, 3.1.1.2).
 *
 * <p>Passwords that are tried first are made of runs along the keyboard, of repetitions, and of a
 * few words with figures behind them. So this looks for how they are made: what is left of a
 * password without such pieces, and without what anybody knows about the person, must be enough by
 * itself. Those that are on a list of leaked ones are {@link CommonPasswords}.
 */
public final class PasswordRule {

  /** The least number of characters. */
  public static final int SHORTEST = 12;

  /** The most characters. */
  public static final int LONGEST = 200;

  private static final int LEAST_LEFT = 7;
  private static final int LEAST_DIFFERENT = 5;
  private static final int SHORTEST_RUN = 4;
  private static final int SHORTEST_FAMILIAR = 4;

  /** Neighbours on the usual keyboards, row by row, column by column and between two rows. */
  private static final List<String> RUNS =
      Stream.of(
              "abcdefghijklmnopqrstuvwxyz",
              "01234567890",
              "qwertyuiop",
              "qwertzuiop",
              "azertyuiop",
              "asdfghjkl",
              "zxcvbnm",
              "yxcvbnm",
              "!@#$%^&*()",
              "1q2w3e4r5t6y7u8i9o0p",
              "q1w2e3r4t5y6u7i8o9p0",
              "1qaz2wsx3edc4rfv5tgb6yhn7ujm",
              "qazwsxedcrfvtgbyhnujm")
          .flatMap(run -> Stream.of(run, new StringBuilder(run).reverse().toString()))
          .toList();

  /** Words that passwords tried first are made of; from memory of published lists. */
  private static final List<String> WORDS =
      List.of(
          "password",
          "passwort",
          "passphrase",
          "welcome",
          "willkommen",
          "administrator",
          "admin",
          "letmein",
          "iloveyou",
          "trustno",
          "changeme",
          "secret",
          "geheim",
          "sunshine",
          "princess",
          "football",
          "baseball",
          "dragon",
          "monkey",
          "shadow",
          "master",
          "hello",
          "login",
          "summer",
          "winter",
          "unbelievable",
          "lampwright");

  private final List<String> familiar;

  private PasswordRule(List<String> familiar) {
    this.familiar = familiar;
  }

  /**
   * The rule for one person.
   *
   * @param familiar what anybody knows about them: e-mail, name, the studio's name
   */
  public static PasswordRule knowing(String... familiar) {
    return new PasswordRule(
        Stream.concat(
                WORDS.stream(),
                Arrays.stream(familiar)
                    .flatMap(text -> Arrays.stream(simple(text).split("[^\\p{L}\\p{N}]+", -1)))
                    .filter(word -> word.length() >= SHORTEST_FAMILIAR))
            .map(PasswordRule::withLetters)
            .toList());
  }

  /** What is wrong with a password, in words for who chose it. */
  public Optional<String> findFault(String password) {
    int length = password.codePointCount(0, password.length());
    if (length < SHORTEST || password.length() > LONGEST) {
      return Optional.of(
          "Password (%d characters) must have %d to %d. A few words in a row are fine."
              .formatted(length, SHORTEST, LONGEST));
    }
    String simple = simple(password);
    if (simple.chars().distinct().count() < LEAST_DIFFERENT || isRepetition(simple)) {
      return Optional.of(
          "Password repeats itself and would be guessed soon. Take a few words that do not belong"
              + " together.");
    }
    if (left(simple) < LEAST_LEFT) {
      return Optional.of(
          "Password is one of those that are tried first: a row of keys, a usual word, or what"
              + " anybody knows about you. Take a few words that do not belong together.");
    }
    return Optional.empty();
  }

  private static boolean isRepetition(String text) {
    for (int period = 1; period * 2 <= text.length(); period++) {
      if (text.startsWith(text.substring(period))) {
        return true;
      }
    }
    return false;
  }

  /** How many characters belong to no piece that is tried first. */
  private int left(String simple) {
    boolean[] tried = new boolean[simple.length()];
    for (int at = 0; at < simple.length(); at++) {
      int run = run(simple, at);
      if (run >= SHORTEST_RUN) {
        Arrays.fill(tried, at, at + run, true);
      }
    }
    String letters = withLetters(simple);
    for (String word : familiar) {
      for (int at = letters.indexOf(word); at >= 0; at = letters.indexOf(word, at + 1)) {
        Arrays.fill(tried, at, at + word.length(), true);
      }
    }
    int left = 0;
    for (boolean one : tried) {
      left += one ? 0 : 1;
    }
    return left;
  }

  /** How many characters from a place on are one key's, or neighbours in one direction. */
  private static int run(String text, int from) {
    int same = from + 1;
    while (same < text.length() && text.charAt(same) == text.charAt(from)) {
      same++;
    }
    int longest = same - from;
    for (String keys : RUNS) {
      int length = longest + 1;
      while (from + length <= text.length() && keys.contains(text.substring(from, from + length))) {
        longest = length;
        length++;
      }
    }
    return longest;
  }

  static String simple(String text) {
    return Normalizer.normalize(text, Normalizer.Form.NFKC).toLowerCase(Locale.ROOT);
  }

  /** Figures and signs that stand for letters, as those who guess read them; keeps the length. */
  private static String withLetters(String simple) {
    return simple
        .replace('0', 'o')
        .replace('1', 'i')
        .replace('3', 'e')
        .replace('4', 'a')
        .replace('5', 's')
        .replace('7', 't')
        .replace('@', 'a')
        .replace('$', 's')
        .replace('!', 'i');
  }
}
