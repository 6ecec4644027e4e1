package lampwright.web.pages;

import lampwright.drawing.Plan;
import lampwright.setup.SetupDocument;
import lampwright.setup.figures.Figures;

/** The plan of a setup with the same facts as a table. */
final class SetupPlan {

  private SetupPlan() {}

  static PlanView of(SetupDocument setup, Figures figures) {
    Plan plan = Plan.of(setup, figures);
    return new PlanView(
        plan.drawing(),
        plan.rows().stream()
            .map(
                row ->
                    new PlanView.Place(
                        row.what(), row.across(), row.away(), row.height(), row.note()))
            .toList());
  }
}
