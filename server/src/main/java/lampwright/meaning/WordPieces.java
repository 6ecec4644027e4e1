package lampwright.meaning;

import java.io.InputStream;
import java.text.Normalizer;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.stream.LongStream;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * Cuts text into the pieces of words that a sentence model was trained on: lower case, without
 * accents, punctuation by itself, then always the longest known piece (J. Devlin and others,
 * "BERT", 2019, section 3; M. Schuster and K. Nakajima 2012).
 *
 * <p>Of our own, because the library for it carries 19 MB of native code and asks a foreign server
 * when it starts; a test holds it to that library.
 */
final class WordPieces {

  private static final int LONGEST_WORD = 100;
  private static final String GOES_ON = "##";

  private final Map<String, Integer> numbers;
  private final int unknown;
  private final int start;
  private final int end;

  private WordPieces(Map<String, Integer> numbers) {
    this.numbers = Map.copyOf(numbers);
    this.unknown = number("[UNK]");
    this.start = number("[CLS]");
    this.end = number("[SEP]");
  }

  /** Reads the vocabulary of a {@code tokenizer.json}. */
  static WordPieces read(InputStream tokenizer) {
    JsonNode vocabulary = JsonMapper.shared().readTree(tokenizer).path("model").path("vocab");
    Map<String, Integer> numbers = HashMap.newHashMap(vocabulary.size());
    for (Map.Entry<String, JsonNode> piece : vocabulary.properties()) {
      numbers.put(piece.getKey(), piece.getValue().intValue());
    }
    return new WordPieces(numbers);
  }

  private int number(String piece) {
    Integer number = numbers.get(piece);
    if (number == null) {
      throw new IllegalArgumentException("The vocabulary has no " + piece + ".");
    }
    return number;
  }

  /**
   * Returns the numbers of a text's pieces, between a mark for its start and one for its end.
   *
   * @param most how many at most, the marks included; what is beyond is left off
   */
  long[] of(String text, int most) {
    LongStream.Builder pieces = LongStream.builder();
    pieces.add(start);
    int left = most - 2;
    for (String word : separated(text).split(" ", -1)) {
      if (!word.isEmpty() && left > 0) {
        left = add(word, left, pieces);
      }
    }
    return pieces.add(end).build().toArray();
  }

  /** Adds the pieces of a word; returns how many more there may be. */
  private int add(String word, int left, LongStream.Builder pieces) {
    LongStream.Builder own = LongStream.builder();
    int count = 0;
    int from = 0;
    while (from < word.length()) {
      int to = word.length();
      Integer number = null;
      while (to > from && number == null) {
        String piece = word.substring(from, to);
        number = numbers.get(from == 0 ? piece : GOES_ON + piece);
        to = number == null ? word.offsetByCodePoints(to, -1) : to;
      }
      if (number == null || word.codePointCount(0, word.length()) > LONGEST_WORD) {
        pieces.add(unknown);
        return left - 1;
      }
      own.add(number);
      count++;
      from = to;
    }
    own.build().limit(left).forEach(pieces::add);
    return left - Math.min(left, count);
  }

  /** The text in plain small letters, with a space before and behind each mark. */
  private static String separated(String text) {
    StringBuilder out = new StringBuilder();
    // Accents go before the case is changed, as in the reference.
    Normalizer.normalize(cleaned(text), Normalizer.Form.NFD)
        .codePoints()
        .filter(point -> Character.getType(point) != Character.NON_SPACING_MARK)
        .forEach(out::appendCodePoint);
    String lower = out.toString().toLowerCase(Locale.ROOT);
    out.setLength(0);
    lower
        .codePoints()
        .forEach(
            point -> {
              if (isMark(point)) {
                out.append(' ').appendCodePoint(point).append(' ');
              } else {
                out.appendCodePoint(point);
              }
            });
    return out.toString();
  }

  private static String cleaned(String text) {
    StringBuilder out = new StringBuilder();
    text.codePoints()
        .forEach(
            point -> {
              if (point == '\t' || point == '\n' || point == '\r' || isSpace(point)) {
                out.append(' ');
              } else if (isIdeograph(point)) {
                out.append(' ').appendCodePoint(point).append(' ');
              } else if (point != 0 && point != 0xfffd && !isControl(point)) {
                out.appendCodePoint(point);
              }
            });
    return out.toString();
  }

  private static boolean isSpace(int point) {
    return Character.isWhitespace(point) || Character.isSpaceChar(point);
  }

  private static boolean isControl(int point) {
    return switch (Character.getType(point)) {
      case Character.CONTROL,
          Character.FORMAT,
          Character.PRIVATE_USE,
          Character.SURROGATE,
          Character.UNASSIGNED ->
          true;
      default -> false;
    };
  }

  private static boolean isMark(int point) {
    boolean ascii =
        (point >= 33 && point <= 47)
            || (point >= 58 && point <= 64)
            || (point >= 91 && point <= 96)
            || (point >= 123 && point <= 126);
    return ascii
        || switch (Character.getType(point)) {
          case Character.CONNECTOR_PUNCTUATION,
              Character.DASH_PUNCTUATION,
              Character.START_PUNCTUATION,
              Character.END_PUNCTUATION,
              Character.INITIAL_QUOTE_PUNCTUATION,
              Character.FINAL_QUOTE_PUNCTUATION,
              Character.OTHER_PUNCTUATION ->
              true;
          default -> false;
        };
  }

  /** The blocks that the reference separates; Japanese syllables and Korean are not among them. */
  private static boolean isIdeograph(int point) {
    return (point >= 0x4e00 && point <= 0x9fff)
        || (point >= 0x3400 && point <= 0x4dbf)
        || (point >= 0x20000 && point <= 0x2a6df)
        || (point >= 0x2a700 && point <= 0x2b73f)
        || (point >= 0x2b740 && point <= 0x2b81f)
        || (point >= 0x2b920 && point <= 0x2ceaf)
        || (point >= 0xf900 && point <= 0xfaff)
        || (point >= 0x2f800 && point <= 0x2fa1f);
  }
}
