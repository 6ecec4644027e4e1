package lampwright.search;

import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.lucene.analysis.Analyzer;
import org.apache.lucene.analysis.LowerCaseFilter;
import org.apache.lucene.analysis.StopFilter;
import org.apache.lucene.analysis.TokenFilter;
import org.apache.lucene.analysis.TokenStream;
import org.apache.lucene.analysis.en.EnglishAnalyzer;
import org.apache.lucene.analysis.en.EnglishPossessiveFilter;
import org.apache.lucene.analysis.en.KStemFilter;
import org.apache.lucene.analysis.en.PorterStemFilter;
import org.apache.lucene.analysis.miscellaneous.ASCIIFoldingFilter;
import org.apache.lucene.analysis.miscellaneous.KeywordMarkerFilter;
import org.apache.lucene.analysis.standard.StandardTokenizer;
import org.apache.lucene.analysis.tokenattributes.CharTermAttribute;
import org.apache.lucene.analysis.tokenattributes.OffsetAttribute;
import org.apache.lucene.analysis.tokenattributes.PositionIncrementAttribute;

/**
 * Cuts text into words as the index keeps them: lower case, accents folded, English stems (R.
 * Krovetz 1993, then M. Porter 1980), and the trade's numbers whole. {@code f/5.6}, {@code f 5.6}
 * and {@code f5.6} are one word, which {@code 5.6} finds; so are {@code 1/125 s} and {@code 400
 * W·s}.
 */
final class Words extends Analyzer {

  /** Counts up when the same text would give other words, so that older indexes are rebuilt. */
  static final int VERSION = 2;

  private static final int BETWEEN_TEXTS = 100;

  /** One word of a text: where it stands, and the piece of the text it was made from. */
  record Word(String term, int position, int start, int end) {}

  @Override
  protected Reader initReader(String fieldName, Reader reader) {
    return new TradeNumbers(reader);
  }

  @Override
  protected TokenStreamComponents createComponents(String fieldName) {
    StandardTokenizer words = new StandardTokenizer();
    TokenStream chain = new EnglishPossessiveFilter(words);
    chain = new LowerCaseFilter(chain);
    chain = new WithoutJoints(chain);
    chain = new ASCIIFoldingFilter(chain);
    chain = new StopFilter(chain, EnglishAnalyzer.ENGLISH_STOP_WORDS_SET);
    chain = new NumbersAsTheyAre(chain);
    chain = new KStemFilter(chain);
    chain = new PorterStemFilter(chain);
    return new TokenStreamComponents(words, new BareNumbers(chain));
  }

  /** No phrase goes from one text of a setup into the next. */
  @Override
  public int getPositionIncrementGap(String fieldName) {
    return BETWEEN_TEXTS;
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

  /** Drops what {@link TradeNumbers} put in to hold a number together. */
  private static final class WithoutJoints extends TokenFilter {
    private final CharTermAttribute term = addAttribute(CharTermAttribute.class);

    WithoutJoints(TokenStream input) {
      super(input);
    }

    @Override
    public boolean incrementToken() throws IOException {
      if (!input.incrementToken()) {
        return false;
      }
      char[] letters = term.buffer();
      int kept = 0;
      for (int i = 0; i < term.length(); i++) {
        if (letters[i] != TradeNumbers.JOINT) {
          letters[kept++] = letters[i];
        }
      }
      term.setLength(kept);
      return true;
    }
  }

  /** Numbers and their units have no stems. */
  private static final class NumbersAsTheyAre extends KeywordMarkerFilter {
    private final CharTermAttribute term = addAttribute(CharTermAttribute.class);

    NumbersAsTheyAre(TokenStream input) {
      super(input);
    }

    @Override
    protected boolean isKeyword() {
      return hasDigit(term);
    }
  }

  /** Asked of every word of every text, so without a pattern. */
  private static boolean hasDigit(CharTermAttribute term) {
    char[] letters = term.buffer();
    for (int i = 0; i < term.length(); i++) {
      if (letters[i] >= '0' && letters[i] <= '9') {
        return true;
      }
    }
    return false;
  }

  /** Behind {@code f5.6} and {@code 400ws} puts the bare number at the same place. */
  private static final class BareNumbers extends TokenFilter {
    private static final Pattern NAMED = Pattern.compile("f(\\d+(?:\\.\\d+)?)|(\\d+)ws");
    private final CharTermAttribute term = addAttribute(CharTermAttribute.class);
    private final PositionIncrementAttribute step = addAttribute(PositionIncrementAttribute.class);
    private String pending = "";

    BareNumbers(TokenStream input) {
      super(input);
    }

    @Override
    public boolean incrementToken() throws IOException {
      if (!pending.isEmpty()) {
        term.setEmpty().append(pending);
        step.setPositionIncrement(0);
        pending = "";
        return true;
      }
      if (!input.incrementToken()) {
        return false;
      }
      if (hasDigit(term)) {
        Matcher named = NAMED.matcher(term);
        if (named.matches()) {
          pending = named.group(1) != null ? named.group(1) : named.group(2);
        }
      }
      return true;
    }

    @Override
    public void reset() throws IOException {
      super.reset();
      pending = "";
    }
  }
}
