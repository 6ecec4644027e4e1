package lampwright.web.pages;

import lampwright.drawing.Plan;
import lampwright.drawing.PlanTable;
import lampwright.setup.SetupDocument;
import lampwright.setup.figures.Figures;

/** The plan of a setup with the same facts as a table. */
final class SetupPlan {

  private SetupPlan() {}

  static PlanView of(SetupDocument setup, Figures figures) {
    return new PlanView(
        Plan.of(setup, figures),
        PlanTable.of(setup, figures).rows().stream()
            .map(
                row ->
                    new PlanView.Place(
                        row.numbered(), row.across(), row.away(), row.height(), row.note()))
            .toList());
  }
}
