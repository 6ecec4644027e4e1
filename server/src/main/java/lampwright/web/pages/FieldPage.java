package lampwright.web.pages;

import java.util.List;
import java.util.Optional;
import lampwright.drawing.Svg;
import lampwright.wording.CautionLine;

/**
 * A setup on location, for a phone that may have no signal: the build step by step, the walk of a
 * stand-in, takes, and what to change now.
 *
 * @param data what the page's script begins with, as JSON
 * @param bearings what directions are counted from
 * @param day absent for who may not log
 */
public record FieldPage(
    Layout layout,
    String title,
    String setupPath,
    String sheetPath,
    String listPath,
    String placeAndDate,
    String data,
    Svg plan,
    List<Step> steps,
    String bearings,
    List<Mark> marks,
    String focus,
    Optional<Day> day,
    NowForm now,
    List<Mover> movers) {

  public FieldPage {
    steps = List.copyOf(steps);
    marks = List.copyOf(marks);
    movers = List.copyOf(movers);
  }

  /**
   * One step of the build.
   *
   * @param what is done, or why; may be empty
   * @param light that is set; absent for another step
   * @param place where it goes, drawn from above
   * @param meter where one types what the meter gives for it alone
   * @param cautions while it is set up
   */
  public record Step(
      String what,
      Optional<SheetLight> light,
      Optional<Svg> place,
      Optional<MeterField> meter,
      List<CautionLine> cautions) {
    public Step {
      cautions = List.copyOf(cautions);
    }
  }

  /**
   * A mark that the stand-in walks to.
   *
   * @param who walks
   * @param place direction and distance from the hit mark
   * @param cue may be empty
   * @param focus "sharp", or that it is not; empty where nothing is known
   */
  public record Mark(
      String who, String name, String place, String cue, String focus, MeterField meter) {}

  /** Where takes are logged; the reasons are one tap each. */
  public record Day(
      String takesPath, List<TakeForm.Reason> forIt, List<TakeForm.Reason> againstIt) {
    public Day {
      forIt = List.copyOf(forIt);
      againstIt = List.copyOf(againstIt);
    }
  }

  /**
   * A light that may have been moved, where it stands in the setup.
   *
   * @param direction degrees, empty on the hit mark
   */
  public record Mover(String id, String name, String direction, String distance, String height) {}
}
