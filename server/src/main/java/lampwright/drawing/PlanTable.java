package lampwright.drawing;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import lampwright.language.Notation;
import lampwright.setup.LightId;
import lampwright.setup.SetupDocument;
import lampwright.setup.figures.Figures;

/**
 * What a plan shows, as rows: the lights in build order, then camera, subjects with their marks,
 * and surfaces.
 */
public record PlanTable(List<Row> rows) {

  public PlanTable {
    rows = List.copyOf(rows);
  }

  /**
   * One thing on the plan, in words and the person's unit.
   *
   * @param number a light's place in the build order; empty for what has none
   * @param what "Key", "camera", a name in full
   * @param gear head, modifier and gels; may be empty
   * @param across to the right or left of the hit mark, seen from the camera
   * @param away beyond the hit mark, or nearer to the camera
   * @param height above the ground of the hit mark
   * @param distance from a light to its target and what that is called; may be empty
   * @param bearing where it stands, seen from the hit mark; empty on the mark
   */
  public record Row(
      Optional<Integer> number,
      String what,
      String gear,
      String across,
      String away,
      String height,
      String distance,
      String bearing) {

    /** Everything that has no column of its own where a table is narrow. */
    public String note() {
      return String.join(
          "; ", Stream.of(gear, distance, bearing).filter(part -> !part.isEmpty()).toList());
    }

    /** The number and the name together, "1 Key". */
    public String numbered() {
      return number.map(n -> n + " " + what).orElse(what);
    }
  }

  /** The rows of a setup's plan. */
  public static PlanTable of(SetupDocument setup, Figures figures, Notation notation) {
    return of(setup, figures, setup.numbersInBuildOrder(), notation);
  }

  /** The rows of the plan of a setup that was made of another, whose numbers its lights keep. */
  public static PlanTable of(
      SetupDocument setup, Figures figures, Map<LightId, Integer> numbers, Notation notation) {
    return new PlanRows(setup, notation).table(figures, numbers);
  }
}
