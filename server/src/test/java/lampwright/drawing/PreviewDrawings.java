package lampwright.drawing;

import lampwright.setup.SetupDocument;
import lampwright.setup.figures.FiguresComputation;

/** Drawings of an invented setup with five lights, for previews of pages. */
public final class PreviewDrawings {

  private static final int LIGHTS = 5;

  private PreviewDrawings() {}

  /** The plan as it stands on a setup's page. */
  public static Svg plan() {
    SetupDocument setup = InventedSetups.round(LIGHTS);
    return Plan.of(setup, FiguresComputation.of(setup), UsualNotation.READ);
  }

  /** The same from the side. */
  public static Svg side() {
    SetupDocument setup = InventedSetups.round(LIGHTS);
    return Elevation.side(setup, FiguresComputation.of(setup), UsualNotation.READ);
  }

  /** The same from the front. */
  public static Svg front() {
    SetupDocument setup = InventedSetups.round(LIGHTS);
    return Elevation.front(setup, FiguresComputation.of(setup), UsualNotation.READ);
  }

  /** The same as rows. */
  public static PlanTable planTable() {
    SetupDocument setup = InventedSetups.round(LIGHTS);
    return PlanTable.of(setup, FiguresComputation.of(setup), UsualNotation.READ);
  }

  /** The plan as it stands beside a hit. */
  public static Svg smallPlan() {
    return Plan.small(InventedSetups.round(LIGHTS), UsualNotation.READ);
  }
}
