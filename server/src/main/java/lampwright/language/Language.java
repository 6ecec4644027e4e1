package lampwright.language;

import java.util.Arrays;
import java.util.Optional;

/** A language that pages and drawings speak; each has a file of phrases. */
public enum Language {
  ENGLISH("en", "English", '.'),
  GERMAN("de", "Deutsch", ',');

  private final String tag;
  private final String ownName;
  private final char decimalMark;

  Language(String tag, String ownName, char decimalMark) {
    this.tag = tag;
    this.ownName = ownName;
    this.decimalMark = decimalMark;
  }

  /** The language's tag (BCP 47), as HTML and HTTP write it. */
  public String tag() {
    return tag;
  }

  /** What its speakers call it. */
  public String ownName() {
    return ownName;
  }

  /** What stands before tenths. */
  public char decimalMark() {
    return decimalMark;
  }

  public static Optional<Language> find(String tag) {
    return Arrays.stream(values()).filter(language -> language.tag.equals(tag)).findFirst();
  }
}
