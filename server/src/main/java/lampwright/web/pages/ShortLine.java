package lampwright.web.pages;

import java.util.List;
import lampwright.wording.Figure;

/**
 * One subject of the figures in a line, with the way to all of them.
 *
 * @param name what it is about
 * @param path to the figures in full
 * @param figures the few that one asks for first; may be empty
 * @param words what they mean, or what is missing for them; may be empty
 */
public record ShortLine(String name, String path, List<Figure> figures, String words) {

  public ShortLine {
    figures = List.copyOf(figures);
  }
}
