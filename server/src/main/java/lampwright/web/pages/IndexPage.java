package lampwright.web.pages;

import java.util.List;
import java.util.Optional;
import lampwright.wording.Figure;

/**
 * How the search index stands, for owners.
 *
 * @param figures what it holds and how far behind it is
 * @param sentences what that means, a line each
 * @param work the new one that is being made; absent where none is
 * @param last what became of the one before; empty where none was made
 * @param start where a new one is ordered; empty where one is being made
 * @param stop where that is ended; empty where that cannot be
 * @param path of this page, to look again
 * @param archivePath of the page that leads here
 */
public record IndexPage(
    Layout layout,
    List<Figure> figures,
    List<String> sentences,
    Optional<Work> work,
    String last,
    String start,
    String stop,
    String csrfToken,
    String path,
    String archivePath) {

  public IndexPage {
    figures = List.copyOf(figures);
    sentences = List.copyOf(sentences);
  }

  /**
   * What is being done.
   *
   * @param total 0 where that is not known yet
   * @param words "120 of 5000 setups"
   * @param pace "800 a second, 6 s left"; empty before the first
   * @param pattern the words with {0} and {1} for the figures
   * @param pacePattern the pace with {0} and {1} for the figures
   * @param address where programs ask how far it is
   */
  public record Work(
      long done,
      long total,
      String words,
      String pace,
      String pattern,
      String pacePattern,
      String address) {}
}
