package lampwright.document;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntPredicate;
import java.util.function.Predicate;

/** Text within a length, perhaps of a certain make; made by {@link Forms#text}. */
public final class TextForm extends Form<String> {

  /** What a text must be like, beyond its length. */
  private record Make(String pattern, Predicate<String> test, String words) {}

  private static final int BYTE_ORDER_MARK = 0xFEFF;

  private final int longest;
  private final Optional<Make> make;

  private TextForm(int longest, Optional<Make> make) {
    this.longest = longest;
    this.make = make;
  }

  /** Text of one to {@code longest} code points, as JSON Schema counts, that is not blank. */
  static TextForm upTo(int longest) {
    return new TextForm(longest, Optional.empty());
  }

  /**
   * Text that must pass a test too.
   *
   * @param pattern what the test asks for, as a regular expression of ECMA-262, for the schema
   * @param words ends the sentence "… must be "
   */
  public TextForm like(String pattern, Predicate<String> test, String words) {
    return new TextForm(longest, Optional.of(new Make(pattern, test, words)));
  }

  @Override
  public Optional<String> read(Object json, Pointer at, Problems problems) {
    if (!(json instanceof String text)) {
      return problem(at, " (" + Words.shown(json) + ") must be text.", problems);
    }
    if (!any(text, codePoint -> !isSpace(codePoint))) {
      return problem(
          at, " must not be empty. Leave the field out where there is nothing to say.", problems);
    }
    int length = text.codePointCount(0, text.length());
    if (length > longest) {
      return problem(
          at, " (" + length + " characters) must be at most " + longest + " characters.", problems);
    }
    if (any(text, TextForm::isBroken)) {
      return problem(at, " must not hold control characters or broken characters.", problems);
    }
    if (any(text, TextForm::turnsText)) {
      return problem(
          at, " must not hold characters that turn the direction of what follows.", problems);
    }
    if (make.isPresent() && !make.get().test().test(text)) {
      return problem(
          at, " (" + Words.shown(text) + ") must be " + make.get().words() + ".", problems);
    }
    return Optional.of(text);
  }

  private static Optional<String> problem(Pointer at, String words, Problems problems) {
    problems.add(at, Words.label(at) + words);
    return Optional.empty();
  }

  private static boolean any(String text, IntPredicate test) {
    int codePoint;
    for (int i = 0; i < text.length(); i += Character.charCount(codePoint)) {
      codePoint = text.codePointAt(i);
      if (test.test(codePoint)) {
        return true;
      }
    }
    return false;
  }

  /** What Java calls a space and what the schema's regular expressions call one. */
  private static boolean isSpace(int codePoint) {
    return Character.isWhitespace(codePoint)
        || Character.isSpaceChar(codePoint)
        || codePoint == BYTE_ORDER_MARK;
  }

  /** Control characters but those of lines and columns, and halves of characters. */
  private static boolean isBroken(int codePoint) {
    boolean halfOfOne =
        codePoint >= Character.MIN_SURROGATE && codePoint <= Character.MAX_SURROGATE;
    boolean ofLines = codePoint == '\n' || codePoint == '\t' || codePoint == '\r';
    return halfOfOne || (Character.isISOControl(codePoint) && !ofLines);
  }

  /**
   * Embeddings, overrides and isolates (Unicode Standard Annex 9, section 2), which would turn
   * round the figures that stand after the text. Hebrew and Arabic need none of them.
   */
  private static boolean turnsText(int codePoint) {
    boolean embeds = codePoint >= 0x202A && codePoint <= 0x202E;
    boolean isolates = codePoint >= 0x2066 && codePoint <= 0x2069;
    return embeds || isolates;
  }

  @Override
  public Object write(String value) {
    return value;
  }

  @Override
  public Map<String, Object> schema(Definitions definitions) {
    Map<String, Object> schema = new LinkedHashMap<>();
    schema.put("type", "string");
    schema.put("minLength", 1);
    schema.put("maxLength", longest);
    schema.put("pattern", make.map(Make::pattern).orElse("\\S"));
    return schema;
  }
}
