package lampwright.drawing;

/**
 * SVG markup that pages may print unescaped. Only this package can make one, so that nothing people
 * wrote reaches a page as markup: drawings pass every word through {@link #escaped}.
 */
public final class Svg {

  private final String markup;

  private Svg(String markup) {
    this.markup = markup;
  }

  /** Wraps markup written by a drawing of this package, its free text already escaped. */
  static Svg trusted(String markup) {
    if (!markup.startsWith("<svg ")) {
      throw new IllegalArgumentException("A drawing starts with \"<svg \": " + markup);
    }
    return new Svg(markup);
  }

  /** The text as it may stand between tags or inside a quoted attribute. */
  static String escaped(String text) {
    if (text.chars().noneMatch(c -> "&<>\"'".indexOf(c) >= 0)) {
      return text;
    }
    return text.replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace(">", "&gt;")
        .replace("\"", "&quot;")
        .replace("'", "&#39;");
  }

  /** The markup, one {@code svg} element. */
  public String markup() {
    return markup;
  }

  @Override
  public String toString() {
    return markup;
  }
}
