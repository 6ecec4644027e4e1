package lampwright.web.pages;

import java.util.List;
import java.util.Optional;
import lampwright.drawing.Svg;
import lampwright.wording.LightRow;

/**
 * Two setups side by side, in figures and words and on one plan. Wherever the two stand in one
 * place, the first is hollow and the second solid.
 *
 * @param matters what they have in common or differ in, apart from their lights
 * @param lights pair by pair, in the second's build order
 * @param choosePath where another is chosen to stand beside the first
 * @param turnedPath the same two the other way round
 */
public record BesidePage(
    Layout layout,
    Column first,
    Column second,
    List<Group> matters,
    List<Pair> lights,
    DrawingView overlay,
    String choosePath,
    String turnedPath) {

  public BesidePage {
    matters = List.copyOf(matters);
    lights = List.copyOf(lights);
  }

  /**
   * One of the two.
   *
   * @param picture its finished picture, or absent
   */
  public record Column(
      String title, String path, String placeAndDate, Optional<PictureTile> picture) {}

  /**
   * What belongs together.
   *
   * @param isCompared whether it is the same words of ours for the same matter, so that a
   *     difference stands out; what people wrote always differs
   */
  public record Group(String name, List<Matter> matters, boolean isCompared) {
    public Group {
      matters = List.copyOf(matters);
    }
  }

  /**
   * One matter.
   *
   * @param first what the first says; empty where it says nothing
   * @param second what the second says; empty where it says nothing
   */
  public record Matter(String name, String first, String second) {

    /** Whether the two say the same. */
    public boolean isSame() {
      return first.equals(second);
    }
  }

  /**
   * A light of each that have the same task; one of them may be missing.
   *
   * @param ruler both on one ruler
   */
  public record Pair(Optional<LightRow> first, Optional<LightRow> second, Svg ruler) {}
}
