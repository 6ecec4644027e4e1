package lampwright.web.pages;

import java.util.List;
import java.util.Optional;
import lampwright.drawing.Svg;
import lampwright.wording.CautionLine;
import lampwright.wording.Figure;
import lampwright.wording.Wording;

/**
 * The field sheet: what goes to the location on one or two sides of paper, as a page to print and
 * as a PDF. Whatever had to be shortened says so.
 *
 * @param back to what it is of
 * @param files the PDF in each size of paper
 * @param kit for which kit it was recomputed, and what is off; empty for the setup as it was
 * @param author who made this revision
 * @param code leads a phone to the page
 * @param address the same to be typed
 * @param strip what the camera is set to, and the other key figures
 * @param bearings what directions are counted from
 * @param drawings absent on a sheet of nothing
 * @param steps lights and what else is done, in build order
 * @param moreSteps how many lights stand on the page only, in words; may be empty
 * @param camera facts, the distance that is focused on first
 * @param movement whom or what it is of, then each mark with its cue
 * @param changes what to change when the light changes
 * @param power batteries and frames, in sentences
 * @param packing what to bring
 * @param noteLines to write on
 */
public record SheetPage(
    Layout layout,
    String title,
    Link back,
    List<Link> files,
    String kit,
    String placeAndDate,
    String revision,
    String author,
    Svg code,
    String address,
    List<Figure> strip,
    String bearings,
    Drawings drawings,
    List<Step> steps,
    String moreSteps,
    List<Fact> camera,
    Cut<Mark> movement,
    Cut<Change> changes,
    List<String> power,
    Cut<Piece> packing,
    String weight,
    Cut<CautionLine> cautions,
    int noteLines) {

  /** In a column of changes, about. */
  private static final int LETTERS_OF_A_LINE = 46;

  private static final int LETTERS_OF_A_NAME = 15;

  public SheetPage {
    files = List.copyOf(files);
    strip = List.copyOf(strip);
    steps = List.copyOf(steps);
    camera = List.copyOf(camera);
    power = List.copyOf(power);
  }

  /** The plan, and the elevation from the camera's right. */
  public record Drawings(Svg plan, Svg elevation) {}

  /** A thing to know: its name and what it is. */
  public record Fact(String name, String value) {}

  /**
   * Items as many as have room.
   *
   * @param more "and 3 more on the page"; empty where all are here
   */
  public record Cut<T>(List<T> items, String more) {
    public Cut {
      items = List.copyOf(items);
    }

    /** Asks whether there is nothing to show. */
    public boolean isEmpty() {
      return items.isEmpty() && more.isEmpty();
    }
  }

  /**
   * One step of the build.
   *
   * @param what is done, or why; may be empty
   * @param light that is set; absent for another step
   */
  public record Step(String what, Optional<SheetLight> light) {}

  /**
   * A subject, or a mark on its path.
   *
   * @param place "242° 3.40 m"; empty for a subject without one
   * @param cue what is done there, where one looks; may be empty
   */
  public record Mark(String name, String place, String cue, boolean isSubject) {}

  /**
   * What to change when something changes.
   *
   * @param when "Ambient 1 stop down"
   * @param turns "Shutter 1/60 → 1/30, 2 Rim 1/4 → 1/8"
   * @param then what is off then; may be empty
   */
  public record Change(String when, String turns, String then) {}

  /**
   * One kind of gear.
   *
   * @param weight "2.4 kg"; empty where it is not known
   */
  public record Piece(int count, String name, String weight) {}

  /** Whether the marks stand in the second column, where the first is the longer one. */
  public boolean isMovementSecond() {
    int first =
        changes.items().stream()
            .mapToInt(
                of ->
                    Math.max(
                        1 + of.when().length() / LETTERS_OF_A_NAME,
                        1 + (of.turns().length() + of.then().length()) / LETTERS_OF_A_LINE))
            .sum();
    return first > power.size() + packing.items().size();
  }

  /** The words of who prints it. */
  public Wording words() {
    return layout.words();
  }
}
