package lampwright.web.pages;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lampwright.drawing.Svg;

/**
 * The field sheet as it is made into a file.
 *
 * @param style what it is set in, as a style sheet
 * @param drawingStyle what its drawings are drawn in, as a style sheet of theirs
 */
public record SheetFile(SheetPage page, Paper paper, String style, String drawingStyle) {

  private static final Pattern TITLE = Pattern.compile("<title[^>]*>([^<]*)</title>");

  /** The paper that it is printed on. */
  public enum Paper {
    A4,
    LETTER
  }

  /** What readers of PDFs show as the window's name. */
  public String title() {
    return page.title() + " – " + page.words().say("sheet.kind");
  }

  /** What stands at the foot of each side, on one line. */
  public String foot() {
    return SheetRoom.cut(page.title(), 64);
  }

  /** Its style sheet, for the paper; ours alone, so it stands in the page as it is. */
  public String styled() {
    return style + "@page { size: " + (paper == Paper.A4 ? "A4" : "letter") + "; }\n";
  }

  /**
   * A drawing with its style and, for those who cannot see it, its title in words: what makes PDFs
   * reads both from there.
   */
  public String drawn(Svg drawing) {
    String markup = drawing.markup();
    Matcher title = TITLE.matcher(markup);
    String alt = title.find() ? title.group(1) : "";
    int end = markup.indexOf('>') + 1;
    return "<svg alt=\""
        + alt
        + "\""
        + markup.substring("<svg".length(), end)
        + "<style type=\"text/css\">"
        + drawingStyle
        + "</style>"
        + markup.substring(end);
  }
}
