package lampwright.web.pages;

import java.util.List;
import java.util.Optional;
import lampwright.drawing.Svg;

/**
 * One setup that was found.
 *
 * @param reasons why it matched, in words; empty for a list without a search
 * @param figures the key figures: aperture, time, ISO, ambient offset
 * @param plan a small plan
 * @param picture the finished picture
 */
public record Hit(
    String title,
    String path,
    String placeAndDate,
    String intent,
    List<String> moods,
    List<String> reasons,
    List<Figure> figures,
    Optional<Svg> plan,
    Optional<PictureTile> picture) {

  public Hit {
    moods = List.copyOf(moods);
    reasons = List.copyOf(reasons);
    figures = List.copyOf(figures);
  }
}
