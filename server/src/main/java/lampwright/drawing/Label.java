package lampwright.drawing;

import java.util.List;

/**
 * Something with words that wants a place on a drawing.
 *
 * @param anchor what it belongs to
 * @param wishes where it may stand, the best first; beyond these any free place will do
 * @param importance the larger the earlier it is placed
 * @param reach how far from the anchor its edge may be before a line must lead back to it
 */
record Label(
    String words, Kind kind, Spot anchor, List<Wish> wishes, int importance, double reach) {

  /** What a label looks like, which decides how much room it takes. */
  enum Kind {
    WORDS,
    QUIET_WORDS,
    FIGURE,
    HEIGHT,
    LEVEL,
    ODD_LEVEL,
    DISC
  }

  /** Which part of the words stands at the wished spot. */
  enum Side {
    START,
    MIDDLE,
    END
  }

  /**
   * A place for a label.
   *
   * @param at the middle of the line's height, at the given side of the words
   * @param cost how much worse it is than the best one, in units moved
   */
  record Wish(Spot at, Side side, double cost) {}

  /** Air around the letters. */
  private static final double AIR = 3;

  /** How wide its words are. */
  double width(Sheet.Format format) {
    return isFigure()
        ? TextSize.ofFigures(words, format.figures)
        : TextSize.ofWords(words, format.words);
  }

  /**
   * What it covers where a wish is fulfilled.
   *
   * @param width of its words, which all wishes have in common
   */
  Box box(Wish wish, Sheet.Format format, double width) {
    if (kind == Kind.DISC) {
      return Box.around(wish.at(), format.disc + 1, format.disc + 1);
    }
    double size = isFigure() ? format.figures : format.words;
    double left =
        switch (wish.side()) {
          case START -> wish.at().x();
          case MIDDLE -> wish.at().x() - width / 2;
          case END -> wish.at().x() - width;
        };
    double half = TextSize.line(size) / 2;
    return new Box(left - AIR, wish.at().y() - half, left + width + AIR, wish.at().y() + half);
  }

  private boolean isFigure() {
    return kind == Kind.FIGURE
        || kind == Kind.HEIGHT
        || kind == Kind.LEVEL
        || kind == Kind.ODD_LEVEL;
  }

  /** A label that found its place. */
  record Placed(Label label, Wish wish, Box box) {

    /** Whether the eye needs a line from the thing to its label. */
    boolean isFar() {
      return box.nearestTo(label.anchor).distanceTo(label.anchor) > label.reach;
    }

    Segment leader() {
      return new Segment(label.anchor, box.nearestTo(label.anchor));
    }
  }
}
