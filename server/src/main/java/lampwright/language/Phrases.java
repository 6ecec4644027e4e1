package lampwright.language;

import java.util.Map;
import java.util.Set;

/**
 * The phrases of one language, by key. A phrase may hold places, {@code {0}} to {@code {9}}, that
 * its parts are put into. A phrase that counts stands under two keys: {@code lights.one} and {@code
 * lights.other}, its count in {@code {0}}; English and German need no more than these two (Unicode
 * CLDR, plural rules of "en" and "de").
 */
public final class Phrases {

  private final Language language;
  private final Map<String, String> byKey;

  public Phrases(Language language, Map<String, String> byKey) {
    this.language = language;
    this.byKey = Map.copyOf(byKey);
  }

  public Language language() {
    return language;
  }

  public Set<String> keys() {
    return byKey.keySet();
  }

  /** The phrases with their places, as a page hands them on to the engine in the browser. */
  public Map<String, String> byKey() {
    return byKey;
  }

  /**
   * The phrase with its parts in place.
   *
   * @throws IllegalArgumentException where there is no such phrase, or a part is left over or
   *     missing: each is a slip in our own code
   */
  public String of(String key, Object... parts) {
    return filled(key, pattern(key), parts);
  }

  /** The phrase for so many, {@code {0}} being the count and {@code {1}} the first of the parts. */
  public String counted(String key, long count, Object... parts) {
    Object[] all = new Object[parts.length + 1];
    all[0] = count;
    System.arraycopy(parts, 0, all, 1, parts.length);
    return of(key + (count == 1 ? ".one" : ".other"), all);
  }

  String pattern(String key) {
    String pattern = byKey.get(key);
    if (pattern == null) {
      throw new IllegalArgumentException(
          "No phrase \"" + key + "\" in the language \"" + language.tag() + "\".");
    }
    return pattern;
  }

  private static String filled(String key, String pattern, Object[] parts) {
    StringBuilder words = new StringBuilder(pattern.length() + 16);
    int used = 0;
    for (int i = 0; i < pattern.length(); i++) {
      if (isPlace(pattern, i)) {
        int part = pattern.charAt(i + 1) - '0';
        if (part >= parts.length) {
          throw new IllegalArgumentException("Phrase \"" + key + "\" wants a part {" + part + "}.");
        }
        words.append(parts[part]);
        used |= 1 << part;
        i += 2;
      } else {
        words.append(pattern.charAt(i));
      }
    }
    // A count may go without saying ("one light").
    if (parts.length > 1 && (used >> 1) != (1 << (parts.length - 1)) - 1 && !key.endsWith(".one")) {
      throw new IllegalArgumentException(
          "Phrase \"" + key + "\" has no place for one of its " + parts.length + " parts.");
    }
    return words.toString();
  }

  /** Whether a part's place, such as <code>{0}</code>, begins here. */
  static boolean isPlace(String pattern, int at) {
    return pattern.charAt(at) == '{'
        && at + 2 < pattern.length()
        && pattern.charAt(at + 2) == '}'
        && Character.isDigit(pattern.charAt(at + 1));
  }
}
