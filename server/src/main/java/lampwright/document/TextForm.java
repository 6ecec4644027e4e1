package lampwright.document;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
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
    String label = Words.label(at);
    if (!(json instanceof String text)) {
      problems.add(at, label + " (" + Words.shown(json) + ") must be text.");
      return Optional.empty();
    }
    if (text.codePoints().allMatch(TextForm::isSpace)) {
      problems.add(
          at, label + " must not be empty. Leave the field out where there is nothing to say.");
      return Optional.empty();
    }
    int length = text.codePointCount(0, text.length());
    if (length > longest) {
      problems.add(
          at, label + " (" + length + " characters) must be at most " + longest + " characters.");
      return Optional.empty();
    }
    if (text.codePoints().anyMatch(TextForm::isBroken)) {
      problems.add(at, label + " must not hold control characters or broken characters.");
      return Optional.empty();
    }
    if (text.codePoints().anyMatch(TextForm::turnsText)) {
      problems.add(
          at, label + " must not hold characters that turn the direction of what follows.");
      return Optional.empty();
    }
    if (make.isPresent() && !make.get().test().test(text)) {
      problems.add(at, label + " (" + Words.shown(text) + ") must be " + make.get().words() + ".");
      return Optional.empty();
    }
    return Optional.of(text);
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
   * Embeddings, overrides and isolates, which would turn round the figures that stand after the
   * text. Hebrew and Arabic need none of them.
   */
  private static boolean turnsText(int codePoint) {
    return switch (Character.getDirectionality(codePoint)) {
      case Character.DIRECTIONALITY_LEFT_TO_RIGHT_EMBEDDING,
          Character.DIRECTIONALITY_LEFT_TO_RIGHT_OVERRIDE,
          Character.DIRECTIONALITY_RIGHT_TO_LEFT_EMBEDDING,
          Character.DIRECTIONALITY_RIGHT_TO_LEFT_OVERRIDE,
          Character.DIRECTIONALITY_POP_DIRECTIONAL_FORMAT,
          Character.DIRECTIONALITY_LEFT_TO_RIGHT_ISOLATE,
          Character.DIRECTIONALITY_RIGHT_TO_LEFT_ISOLATE,
          Character.DIRECTIONALITY_FIRST_STRONG_ISOLATE,
          Character.DIRECTIONALITY_POP_DIRECTIONAL_ISOLATE ->
          true;
      default -> false;
    };
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
