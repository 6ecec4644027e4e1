package lampwright.web.pages;

import java.util.List;
import lampwright.wording.MissingInput;

/**
 * Every figure of a setup, with what it was made from.
 *
 * @param setupTitle the setup's title
 * @param setupPath back to it
 * @param parts one subject each, in the order of the trade
 * @param missing what the setup does not say, and its figures need
 * @param leftOut what the figures do not take into account
 */
public record FiguresPage(
    Layout layout,
    String setupTitle,
    String setupPath,
    List<FiguresPart> parts,
    List<MissingInput> missing,
    List<String> leftOut) {

  public FiguresPage {
    parts = List.copyOf(parts);
    missing = List.copyOf(missing);
    leftOut = List.copyOf(leftOut);
  }
}
