package lampwright.web.pages;

import java.util.List;
import java.util.Optional;

/**
 * The pictures on a setup's own page.
 *
 * @param finished the finished picture, large
 * @param others the rest, small; may be empty
 * @param allPath to all of them
 * @param allWords "All 14 pictures"
 */
public record PicturesPart(
    Optional<PictureTile> finished, List<PictureTile> others, String allPath, String allWords) {

  public PicturesPart {
    others = List.copyOf(others);
  }

  public boolean isEmpty() {
    return finished.isEmpty() && others.isEmpty();
  }
}
