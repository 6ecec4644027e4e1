package lampwright.drawing;

import io.nayuki.qrcodegen.QrCode;

/**
 * An address as a QR code (ISO/IEC 18004): what a phone reads from paper to come back to the page.
 */
public final class AddressCode {

  /** White modules on every side, as ISO/IEC 18004 asks for. */
  private static final int QUIET_ZONE = 4;

  private AddressCode() {}

  /**
   * The code, black on white; it still reads with a seventh of it wet or worn.
   *
   * @param address at most 2 000 letters
   * @param title what it leads to, for those who cannot see it
   * @param sizePt of its side on paper, quiet zone included
   */
  public static Svg of(String address, String title, double sizePt) {
    QrCode code = QrCode.encodeText(address, QrCode.Ecc.MEDIUM);
    String modules = Markup.number(code.size + 2.0 * QUIET_ZONE);
    String size = Markup.number(sizePt) + "pt";
    Markup markup =
        new Markup()
            .open(
                "svg",
                "xmlns",
                "http://www.w3.org/2000/svg",
                "class",
                "address-code",
                "viewBox",
                "0 0 " + modules + " " + modules,
                "width",
                size,
                "height",
                size,
                "role",
                "img")
            .words("title", title)
            .add("rect", "fill", "#fff", "width", modules, "height", modules)
            .add("path", "fill", "#000", "d", dark(code))
            .close("svg");
    return Svg.trusted(markup.toString());
  }

  /** Each run of dark modules in a row as one box: no hairlines show between neighbours. */
  private static String dark(QrCode code) {
    StringBuilder path = new StringBuilder();
    for (int y = 0; y < code.size; y++) {
      int x = 0;
      while (x < code.size) {
        int from = x;
        while (x < code.size && code.getModule(x, y)) {
          x++;
        }
        if (x > from) {
          path.append('M').append(from + QUIET_ZONE).append(' ').append(y + QUIET_ZONE);
          path.append('h').append(x - from).append("v1h").append(from - x).append('z');
        }
        x++;
      }
    }
    return path.toString();
  }
}
