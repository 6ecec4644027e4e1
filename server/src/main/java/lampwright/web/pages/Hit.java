package lampwright.web.pages;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import lampwright.drawing.Svg;
import lampwright.search.MarkedText;
import lampwright.wording.Figure;

/**
 * One setup that was found.
 *
 * @param title in pieces, of which those are marked that it was found by; so is the intent
 * @param passages of other texts that it was found by
 * @param reasons why it matched, in words; empty for a list without a search
 * @param figures the key figures: aperture, time, ISO, ambient offset
 * @param plan a small plan
 * @param picture the finished picture
 */
public record Hit(
    List<MarkedText.Piece> title,
    String path,
    String placeAndDate,
    List<MarkedText.Piece> intent,
    List<String> moods,
    List<Passage> passages,
    List<String> reasons,
    List<Figure> figures,
    Optional<Svg> plan,
    Optional<PictureTile> picture) {

  public Hit {
    title = List.copyOf(title);
    intent = List.copyOf(intent);
    passages = List.copyOf(passages);
    moods = List.copyOf(moods);
    reasons = List.copyOf(reasons);
    figures = List.copyOf(figures);
  }

  /**
   * A piece of a text that a list does not show.
   *
   * @param field which text it is, in a word
   */
  public record Passage(String field, List<MarkedText.Piece> pieces) {
    public Passage {
      pieces = List.copyOf(pieces);
    }
  }

  /** The title without its marks. */
  public String name() {
    return title.stream().map(MarkedText.Piece::text).collect(Collectors.joining());
  }
}
