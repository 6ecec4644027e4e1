package lampwright.web.http;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import lampwright.language.Language;
import org.jspecify.annotations.Nullable;

/**
 * The language that a browser asks for, among those that pages speak (RFC 9110, section 12.5.4).
 */
public final class AskedLanguage {

  /** No browser sends more; reading more would only cost us. */
  private static final int LONGEST = 400;

  private AskedLanguage() {}

  /**
   * The one asked for most; empty where none of ours is, or the header cannot be read.
   *
   * @param header the value of {@code Accept-Language}, if there is one
   */
  public static Optional<Language> find(@Nullable String header) {
    if (header == null || header.length() > LONGEST) {
      return Optional.empty();
    }
    return ranges(header).stream()
        .filter(range -> range.getWeight() > 0)
        .map(range -> range.getRange().split("-", -1)[0])
        .flatMap(language -> Language.find(language).stream())
        .findFirst();
  }

  /** In the order of their weights. */
  private static List<Locale.LanguageRange> ranges(String header) {
    try {
      return Locale.LanguageRange.parse(header);
    } catch (IllegalArgumentException e) {
      return List.of();
    }
  }
}
