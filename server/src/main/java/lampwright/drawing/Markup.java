package lampwright.drawing;

import lampwright.engine.unit.Bounds;

/**
 * SVG text in the making. Every word and every attribute passes through {@link Svg#escaped}, so
 * that no drawing can let what people wrote become markup.
 */
final class Markup {

  private final StringBuilder text = new StringBuilder(8_000);

  /** A number as drawings write it: to a tenth of a unit, which no eye can tell from exact. */
  static String number(double value) {
    return Bounds.rounded(value, 1);
  }

  /** Opens an element; attributes are names and values by turns. */
  Markup open(String element, String... attributes) {
    start(element, attributes);
    text.append('>');
    return this;
  }

  /** An inner drawing that ends at a box; it needs no id, as a clipping path would. */
  Markup openClipped(Box box) {
    String x = number(box.left());
    String y = number(box.top());
    String width = number(box.width());
    String height = number(box.height());
    String seen = String.join(" ", x, y, width, height);
    return open("svg", "x", x, "y", y, "width", width, "height", height, "viewBox", seen);
  }

  Markup close(String element) {
    text.append("</").append(element).append('>');
    return this;
  }

  /** An element without content. */
  Markup add(String element, String... attributes) {
    start(element, attributes);
    text.append("/>");
    return this;
  }

  /** An element around words. */
  Markup words(String element, String words, String... attributes) {
    open(element, attributes);
    text.append(Svg.escaped(words));
    return close(element);
  }

  /** Opens the group of something that can be moved; a list's drawing has none. */
  Markup openPiece(Sheet.Format format, String key) {
    return format == Sheet.Format.PAGE ? open("g", "class", "piece", "data-piece", key) : this;
  }

  Markup closePiece(Sheet.Format format) {
    return format == Sheet.Format.PAGE ? close("g") : this;
  }

  /** A path of one class; nothing where there is nothing to draw. */
  Markup path(String cssClass, Strokes strokes) {
    return strokes.isEmpty() ? this : add("path", "class", cssClass, "d", strokes.toString());
  }

  Markup circle(String cssClass, Spot centre, double radius) {
    return add(
        "circle",
        "class",
        cssClass,
        "cx",
        number(centre.x()),
        "cy",
        number(centre.y()),
        "r",
        number(radius));
  }

  /** Takes in what another has written already, escaped as it is. */
  Markup add(Markup written) {
    text.append(written.text);
    return this;
  }

  private void start(String element, String... attributes) {
    text.append('<').append(element);
    for (int i = 0; i < attributes.length; i += 2) {
      text.append(' ').append(attributes[i]).append("=\"");
      text.append(Svg.escaped(attributes[i + 1])).append('"');
    }
  }

  @Override
  public String toString() {
    return text.toString();
  }
}
