package lampwright.drawing;

/** The strokes of one path, as its {@code d} attribute writes them. */
final class Strokes {

  private final StringBuilder text = new StringBuilder(80);

  Strokes from(Spot spot) {
    text.append('M');
    return spot(spot);
  }

  Strokes to(Spot spot) {
    text.append('L');
    return spot(spot);
  }

  Strokes line(Segment line) {
    return from(line.from()).to(line.to());
  }

  /** An arc of at most half a turn, clockwise as one looks at the drawing. */
  Strokes arc(double radius, Spot end) {
    return arc(radius, radius, 0, end);
  }

  /** An elliptic arc whose first axis is turned by so many degrees. */
  Strokes arc(double first, double second, double turnedDeg, Spot end) {
    text.append('A').append(Markup.number(first)).append(' ').append(Markup.number(second));
    text.append(' ').append(Markup.number(turnedDeg)).append(" 0 1 ");
    return spot(end);
  }

  Strokes close() {
    text.append('z');
    return this;
  }

  boolean isEmpty() {
    return text.isEmpty();
  }

  private Strokes spot(Spot spot) {
    text.append(Markup.number(spot.x())).append(' ').append(Markup.number(spot.y()));
    return this;
  }

  @Override
  public String toString() {
    return text.toString();
  }
}
