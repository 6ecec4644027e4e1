package lampwright.web.pages;

import java.util.List;
import java.util.Optional;

/**
 * All pictures of a setup, and where one adds another.
 *
 * @param nextPath to more of them; empty on the last page
 * @param form absent for who may not
 */
public record PicturesPage(
    Layout layout,
    String setupTitle,
    String setupPath,
    List<PictureTile> pictures,
    String nextPath,
    Optional<PictureForm> form) {

  public PicturesPage {
    pictures = List.copyOf(pictures);
  }
}
