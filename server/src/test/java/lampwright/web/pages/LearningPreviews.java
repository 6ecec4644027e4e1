package lampwright.web.pages;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import lampwright.wording.WorkingStep;

/** Where one stands, and drills: asked by number and by choice, answered rightly and not. */
final class LearningPreviews {

  private static final String LEARNING = "/studios/demo/learning";

  private LearningPreviews() {}

  static LearningPage learning() {
    return new LearningPage(
        PagePreviews.layout("Learn"),
        new Link("Power after a move", "/studios/demo/drills?kind=power_after_move"),
        IntStream.range(-1, 5)
            .mapToObj(
                box ->
                    new LearningPage.Kind(
                        new Link("Kind " + box, "/studios/demo/drills?kind=sync"),
                        box,
                        box < 0 ? "" : "7 of 9 right",
                        box < 0 ? "Not asked yet" : "In 3 days",
                        box == 2))
            .toList());
  }

  static DrillPage number() {
    return page(form("", "stops", List.of()), FormErrors.none(), Optional.empty());
  }

  static DrillPage wrongNumber() {
    return page(
        form("a bit", "stops", List.of()),
        FormErrors.of("drill-answer", "The answer (“a bit”) must be a number, such as 1.5."),
        Optional.empty());
  }

  static DrillPage choice() {
    return page(form("", "", options()), FormErrors.none(), Optional.empty());
  }

  static DrillPage right() {
    return page(
        form("2", "stops", List.of()),
        FormErrors.none(),
        Optional.of(
            new DrillPage.Judged(
                true,
                "+2 stops",
                "",
                "+2 stops",
                List.of("The distance becomes 2 times what it was."),
                List.of(
                    new WorkingStep(
                        "exposure by the key", "12.4", "lx·s", "I · G", "derived", List.of())))));
  }

  static DrillPage notRight() {
    return page(
        form("1", "", options()),
        FormErrors.none(),
        Optional.of(
            new DrillPage.Judged(
                false,
                "2 Rim, which stands toward 130°",
                "A shadow falls away from its light, not toward it.",
                "3 Key, which stands toward 295°",
                List.of("Harbourmasterslampwithnospacesinitatall".repeat(3)),
                List.of())));
  }

  private static List<DrillPage.Option> options() {
    return List.of(
        new DrillPage.Option("0", "3 Key, which stands toward 295°", false, true),
        new DrillPage.Option("1", "2 Rim, which stands toward 130°", true, false));
  }

  private static DrillPage.Form form(String typed, String unit, List<DrillPage.Option> options) {
    return new DrillPage.Form(
        "/studios/demo/drills",
        "token",
        "power_after_move",
        "k3v9",
        7,
        "0123456789ab",
        typed,
        unit,
        options);
  }

  private static DrillPage page(
      DrillPage.Form form, FormErrors errors, Optional<DrillPage.Judged> judged) {
    return new DrillPage(
        PagePreviews.layout("Power after a move"),
        "Power after a move",
        new Link("Tea at low water", "/studios/demo/setups/k3v9"),
        List.of("2 Rim stands 2.0 m from its target, at the face, and its dial shows 1/4."),
        "It must go to 4.0 m. By how many stops does its power change?",
        form,
        errors,
        Optional.empty(),
        judged,
        LEARNING,
        "/studios/demo/drills?kind=power_after_move");
  }
}
