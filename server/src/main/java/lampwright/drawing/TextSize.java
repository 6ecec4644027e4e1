package lampwright.drawing;

/**
 * How much room words take, reckoned from the advance widths of the embedded type: a few classes of
 * letters are enough to keep labels apart, and a drawing needs no font file.
 */
final class TextSize {

  /** Advance of every figure of the monospaced type, in em. */
  private static final double FIGURE_EM = 0.632;

  /** Height of a line of a label, in em: from accents to descenders. */
  private static final double LINE_EM = 1.16;

  // Measured from the regular weight, rounded up; in em.
  private static final String SLIM = " !'()*,./:;Iijl|[]{}`·°’‘";
  private static final double SLIM_EM = 0.3;
  private static final String NARROW = "fr\"t-1_\\";
  private static final double NARROW_EM = 0.41;
  private static final String WIDE = "MWm%@";
  private static final double WIDE_EM = 0.86;
  private static final double SMALL_LETTER_EM = 0.56;
  private static final double CAPITAL_EM = 0.7;

  /** Other scripts may be full width; a box too large does no harm. */
  private static final double OTHER_EM = 1.0;

  private static final int LAST_LATIN = 0x024f;

  private TextSize() {}

  static double ofWords(String words, double size) {
    return size * words.codePoints().mapToDouble(TextSize::advance).sum();
  }

  static double ofFigures(String figures, double size) {
    return size * FIGURE_EM * figures.codePointCount(0, figures.length());
  }

  static double line(double size) {
    return size * LINE_EM;
  }

  private static double advance(int letter) {
    if (SLIM.indexOf(letter) >= 0) {
      return SLIM_EM;
    }
    if (NARROW.indexOf(letter) >= 0) {
      return NARROW_EM;
    }
    if (WIDE.indexOf(letter) >= 0) {
      return WIDE_EM;
    }
    if (letter == 'w' || letter == '…' || Character.isUpperCase(letter)) {
      return CAPITAL_EM;
    }
    return letter <= LAST_LATIN || letter == '−' || letter == '×' ? SMALL_LETTER_EM : OTHER_EM;
  }
}
