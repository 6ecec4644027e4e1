package lampwright.web.pages;

import java.util.Arrays;
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
 * @param camera facts, the distance that is focused on first
 * @param movement whom or what it is of, then each mark with its cue
 * @param changes what to change when the light changes
 * @param power batteries and frames, in sentences
 * @param packing what to bring
 * @param noteLines to write on
 * @param tight a light on two lines instead of three
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
    List<Fact> camera,
    Cut<Mark> movement,
    Cut<Change> changes,
    List<String> power,
    Cut<Piece> packing,
    String weight,
    Cut<CautionLine> cautions,
    int noteLines,
    boolean tight) {

  /** In a column of changes, about. */
  private static final int LETTERS_OF_A_LINE = 46;

  private static final int LETTERS_OF_A_NAME = 15;
  private static final int LETTERS_OF_A_CUE = 20;

  /**
   * Of the figures' own letters and of their names', about, and the space after each, in points.
   */
  private static final double LETTER_OF_A_FIGURE_PT = 8.4;

  private static final double LETTER_OF_A_NAME_PT = 4.9;
  private static final double AFTER_A_FIGURE_PT = 8;
  private static final double STRIP_PT = 530;

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

  /** Whether the marks stand in the second column, so that the longer of the two is shorter. */
  public boolean isMovementSecond() {
    int left =
        changes.items().stream()
            .mapToInt(
                of ->
                    Math.max(
                        lines(of.when(), LETTERS_OF_A_NAME),
                        lines(of.turns() + of.then(), LETTERS_OF_A_LINE)))
            .sum();
    int right =
        power.stream().mapToInt(line -> lines(line, LETTERS_OF_A_LINE)).sum()
            + packing.items().size();
    int marks =
        movement.items().stream()
            .mapToInt(
                of ->
                    Math.max(
                        lines(of.name(), LETTERS_OF_A_NAME), lines(of.cue(), LETTERS_OF_A_CUE)))
            .sum();
    return Math.max(left, right + marks) < Math.max(left + marks, right);
  }

  /** The strip in one row, or in two where that would press the words under its figures. */
  public List<List<Figure>> stripRows() {
    if (strip.stream().mapToDouble(SheetPage::widthPt).sum() <= STRIP_PT) {
      return List.of(strip);
    }
    int half = (strip.size() + 1) / 2;
    return List.of(strip.subList(0, half), strip.subList(half, strip.size()));
  }

  /** What the figure takes, or its name on two lines, but at least the longest word of that. */
  private static double widthPt(Figure figure) {
    int word = Arrays.stream(figure.name().split(" ", -1)).mapToInt(String::length).max().orElse(0);
    double name = Math.max(word, figure.name().length() / 2.0) * LETTER_OF_A_NAME_PT;
    return Math.max(figure.value().length() * LETTER_OF_A_FIGURE_PT, name) + AFTER_A_FIGURE_PT;
  }

  private static int lines(String text, int letters) {
    return 1 + text.length() / letters;
  }

  /** The words of who prints it. */
  public Wording words() {
    return layout.words();
  }
}
