package lampwright.search;

import java.io.IOException;
import java.io.Reader;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.lucene.analysis.CharFilter;

/**
 * Rewrites the trade's numbers so that the tokenizer keeps each in one piece: {@code f/5.6} and
 * {@code f 5,6} as f5.6, {@code 1/125 s} as 1_125, {@code 400 W·s} as 400ws. Every character is
 * replaced by one, with {@link #JOINT} where none is wanted, so that a word's place in the text
 * stays what it was.
 */
final class TradeNumbers extends CharFilter {

  /** Belongs to the word around it by the rules of UAX 29; {@link Words} drops it afterwards. */
  static final char JOINT = '\u00ad';

  private static final int PIECE = 256;
  private static final Pattern APERTURE =
      Pattern.compile(
          "(?<![\\p{L}\\p{N}])[fFƒ]([\\s/]{0,3})(\\d{1,2})(?:([.,])(\\d{1,2}))?(?![\\d\\p{L}])");
  private static final Pattern FRACTION =
      Pattern.compile(
          "(?<![\\d/.])(\\d{1,5})(\\s?/\\s?)(\\d{1,5})(?![\\d/])((?:\\s?s(?:ec)?(?![\\p{L}\\d]))?)");
  private static final Pattern ENERGY =
      Pattern.compile("(?<=\\d)(\\s?)[wW]([·⋅.]?)[sS](?![\\p{L}\\d])");

  TradeNumbers(Reader text) {
    super(rewritten(text));
  }

  private static Reader rewritten(Reader reader) {
    try {
      StringBuilder whole = new StringBuilder();
      // Most texts are short, and there are very many: a large piece for each is what costs.
      char[] piece = new char[PIECE];
      for (int read = reader.read(piece); read >= 0; read = reader.read(piece)) {
        whole.append(piece, 0, read);
      }
      String text = whole.toString();
      if (!mayHoldOne(text)) {
        return new StringReader(text);
      }
      String apertures = APERTURE.matcher(text).replaceAll(TradeNumbers::aperture);
      String fractions = FRACTION.matcher(apertures).replaceAll(TradeNumbers::fraction);
      return new StringReader(ENERGY.matcher(fractions).replaceAll(TradeNumbers::energy));
    } catch (IOException e) {
      throw new UncheckedIOException("A text in memory could not be read", e);
    }
  }

  /**
   * Whether a digit has a letter f, a bar or a letter w near it. Most texts have none, and the
   * patterns are slow in saying so.
   */
  private static boolean mayHoldOne(String text) {
    for (int i = 0; i < text.length(); i++) {
      if (text.charAt(i) >= '0' && text.charAt(i) <= '9') {
        for (int near = Math.max(0, i - 4); near < Math.min(text.length(), i + 3); near++) {
          if ("fFƒ/wW".indexOf(text.charAt(near)) >= 0) {
            return true;
          }
        }
      }
    }
    return false;
  }

  private static String aperture(MatchResult match) {
    String decimals = match.group(3) == null ? "" : "." + match.group(4);
    return Matcher.quoteReplacement("f" + joints(match.group(1)) + match.group(2) + decimals);
  }

  private static String fraction(MatchResult match) {
    String bar = "_" + joints(match.group(2).substring(1));
    return match.group(1) + bar + match.group(3) + joints(match.group(4));
  }

  private static String energy(MatchResult match) {
    return joints(match.group(1)) + "w" + joints(match.group(2)) + "s";
  }

  private static String joints(String replaced) {
    return String.valueOf(JOINT).repeat(replaced.length());
  }

  @Override
  public int read(char[] buffer, int offset, int length) throws IOException {
    return input.read(buffer, offset, length);
  }

  @Override
  protected int correct(int offset) {
    return offset;
  }
}
