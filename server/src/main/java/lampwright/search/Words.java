package lampwright.search;

import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.apache.lucene.analysis.Analyzer;
import org.apache.lucene.analysis.LowerCaseFilter;
import org.apache.lucene.analysis.StopFilter;
import org.apache.lucene.analysis.TokenFilter;
import org.apache.lucene.analysis.TokenStream;
import org.apache.lucene.analysis.en.EnglishAnalyzer;
import org.apache.lucene.analysis.en.EnglishPossessiveFilter;
import org.apache.lucene.analysis.en.KStemFilter;
import org.apache.lucene.analysis.miscellaneous.ASCIIFoldingFilter;
import org.apache.lucene.analysis.pattern.PatternReplaceCharFilter;
import org.apache.lucene.analysis.standard.StandardTokenizer;
import org.apache.lucene.analysis.tokenattributes.CharTermAttribute;
import org.apache.lucene.analysis.tokenattributes.OffsetAttribute;
import org.apache.lucene.analysis.tokenattributes.PositionIncrementAttribute;

/**
 * Cuts text into words as the index keeps them: lower case, accents folded, English stems, and the
 * trade's numbers whole. {@code f/5.6}, {@code f 5.6} and {@code f5.6} are one word, which {@code
 * 5.6} finds; {@code 1/125 s} is one word.
 */
final class Words extends Analyzer {

  /** Counts up when the same text would give other words, so that older indexes are rebuilt. */
  static final int VERSION = 1;

  private static final Pattern F_NUMBER =
      Pattern.compile("(?<![\\p{L}\\p{N}])[fFƒ]\\s?/?\\s?(\\d{1,2})(?:[.,](\\d{1,2}))?(?![\\d])");
  private static final Pattern FRACTION =
      Pattern.compile("(?<![\\d/.])(\\d{1,5})\\s?/\\s?(\\d{1,5})(?![\\d/])(?:\\s?s(?:ec)?\\b)?");
  private static final Pattern WATT_SECONDS =
      Pattern.compile("(?<=\\d)\\s?[wW][·⋅.]?[sS](?![\\p{L}])");

  /** One word of a text: where it stands, and the piece of the text it was made from. */
  record Word(String term, int position, int start, int end) {}

  @Override
  protected Reader initReader(String fieldName, Reader reader) {
    // An underscore keeps a fraction in one piece for the tokenizer's word-break rules (UAX 29).
    Reader apertures = new PatternReplaceCharFilter(F_NUMBER, " f$1.$2 ", reader);
    Reader fractions = new PatternReplaceCharFilter(FRACTION, "$1_$2", apertures);
    return new PatternReplaceCharFilter(WATT_SECONDS, " ws", fractions);
  }

  @Override
  protected TokenStreamComponents createComponents(String fieldName) {
    StandardTokenizer words = new StandardTokenizer();
    TokenStream chain = new EnglishPossessiveFilter(words);
    chain = new LowerCaseFilter(chain);
    chain = new ASCIIFoldingFilter(chain);
    chain = new StopFilter(chain, EnglishAnalyzer.ENGLISH_STOP_WORDS_SET);
    chain = new KStemFilter(chain);
    return new TokenStreamComponents(words, new BareApertures(chain));
  }

  /** All words of a text, in order. */
  List<Word> of(String text) {
    List<Word> found = new ArrayList<>();
    try (TokenStream stream = tokenStream("", text)) {
      CharTermAttribute term = stream.getAttribute(CharTermAttribute.class);
      PositionIncrementAttribute step = stream.getAttribute(PositionIncrementAttribute.class);
      OffsetAttribute offset = stream.getAttribute(OffsetAttribute.class);
      int position = -1;
      stream.reset();
      while (stream.incrementToken()) {
        position += step.getPositionIncrement();
        found.add(new Word(term.toString(), position, offset.startOffset(), offset.endOffset()));
      }
      stream.end();
    } catch (IOException e) {
      throw new UncheckedIOException("A text in memory could not be read", e);
    }
    return found;
  }

  /** Behind {@code f5.6} puts {@code 5.6} at the same place. */
  private static final class BareApertures extends TokenFilter {
    private static final Pattern APERTURE = Pattern.compile("f\\d+(\\.\\d+)?");
    private final CharTermAttribute term = addAttribute(CharTermAttribute.class);
    private final PositionIncrementAttribute step = addAttribute(PositionIncrementAttribute.class);
    private boolean pending;

    BareApertures(TokenStream input) {
      super(input);
    }

    @Override
    public boolean incrementToken() throws IOException {
      if (pending) {
        pending = false;
        String number = term.toString().substring(1);
        term.setEmpty().append(number);
        step.setPositionIncrement(0);
        return true;
      }
      if (!input.incrementToken()) {
        return false;
      }
      pending = APERTURE.matcher(term).matches();
      return true;
    }

    @Override
    public void reset() throws IOException {
      super.reset();
      pending = false;
    }
  }
}
