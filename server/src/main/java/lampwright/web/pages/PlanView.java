package lampwright.web.pages;

import java.util.List;
import lampwright.drawing.PlanTable;
import lampwright.drawing.Svg;

/**
 * The plan, with the same facts as a table.
 *
 * @param drawing the measured drawing
 * @param places what stands where, in the order of the drawing's numbers
 * @param elevations the same from the side and from the front; may be empty
 */
public record PlanView(Svg drawing, List<Place> places, List<Svg> elevations) {

  public PlanView {
    places = List.copyOf(places);
    elevations = List.copyOf(elevations);
  }

  public PlanView(Svg drawing, List<Place> places) {
    this(drawing, places, List.of());
  }

  PlanView withElevations(List<Svg> wanted) {
    return new PlanView(drawing, places, wanted);
  }

  /** A drawing beside the rows that say the same. */
  public static PlanView of(Svg drawing, PlanTable table) {
    return new PlanView(
        drawing,
        table.rows().stream()
            .map(
                row ->
                    new Place(row.numbered(), row.across(), row.away(), row.height(), row.note()))
            .toList());
  }

  /**
   * One thing on the plan, lengths in the person's unit.
   *
   * @param what "1 Key", "hit mark", "camera"
   * @param across to the right of the hit mark, seen from the camera
   * @param away beyond the hit mark, seen from the camera
   * @param height above the ground
   * @param note its aim, size or bearing; may be empty
   */
  public record Place(String what, String across, String away, String height, String note) {}
}
