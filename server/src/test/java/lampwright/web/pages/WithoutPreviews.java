package lampwright.web.pages;

import java.util.Map;
import java.util.Optional;
import lampwright.drawing.Plan;
import lampwright.drawing.PlanTable;
import lampwright.setup.Burning;
import lampwright.setup.DemoSeeds;
import lampwright.setup.LightId;
import lampwright.setup.SetupDocument;
import lampwright.setup.figures.Figures;
import lampwright.setup.figures.FiguresComputation;
import lampwright.setup.without.LightByLight;
import lampwright.setup.without.OneFace;

/** Light by light: the whole, one off, growing, and with words that have no end. */
final class WithoutPreviews {

  private static final String PATH = "/demo/setups/k3v9/lights";

  private WithoutPreviews() {}

  static WithoutPage whole() {
    return page(boat(), Burning.ALL, Optional.empty());
  }

  static WithoutPage off() {
    return page(boat(), Burning.ALL.without(new LightId("fill")), Optional.empty());
  }

  static WithoutPage stage() {
    SetupDocument boat = boat();
    return page(
        boat,
        LightByLight.of(boat, FiguresComputation.of(boat)).stages().get(2).after(),
        Optional.of(3));
  }

  /** A light of which nothing is known, and a reason without a space in it. */
  static WithoutPage longWords() {
    SetupDocument setup =
        OneFace.setup(
            Map.of(),
            OneFace.with(
                OneFace.light("key", "key", -1, -3, "toward_light", 8),
                "reason",
                "Harbourmasterslampwithnospacesinitatall".repeat(6)),
            OneFace.unknownRim());
    return page(setup, Burning.noLightOf(setup), Optional.empty());
  }

  private static SetupDocument boat() {
    return new DemoSeeds().setup("last-boat-out");
  }

  private static WithoutPage page(SetupDocument setup, Burning burning, Optional<Integer> stage) {
    Layout layout = PagePreviews.layout("Light by light");
    Figures figures = FiguresComputation.of(setup);
    return new WithoutView(LightByLight.of(setup, figures), figures, layout.words())
        .page(
            layout,
            new WithoutView.Asked("/demo/setups/k3v9", PATH, burning, stage),
            PlanView.of(
                Plan.burning(setup, figures, burning, layout.notation()),
                PlanTable.of(setup, figures, layout.notation())));
  }
}
