package lampwright.web.pages;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import lampwright.wording.WorkingStep;

/** Where one stands, and drills: asked by number and by choice, answered rightly and not. */
final class LearningPreviews {

  private static final String LEARNING = "/studios/demo/learning";

  private static final String LONG = "Harbourmasterslampwithnospacesinitatall".repeat(3);

  private LearningPreviews() {}

  static LearningPage learning() {
    return new LearningPage(
        PagePreviews.layout("Learn"),
        List.of("set two heads indoors"),
        List.of(
            new LearningPage.Trail(
                new Link("Two heads indoors", "/studios/demo/trails/first"),
                "For whoever carries the first time. " + LONG,
                "3 of 8 stages",
                "Two lights"),
            new LearningPage.Trail(
                new Link("Six heads", "/studios/demo/trails/six"), "", "8 of 8 stages", "")),
        List.of(
            new LearningPage.Waiting(
                new Link("Sunniva Barrow", "/studios/demo/builds/b1"), "Two heads", "4 May 2031")),
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
            .toList(),
        "/studios/demo/trails/new",
        LEARNING + "/report");
  }

  static TrailPage trail() {
    return new TrailPage(
        PagePreviews.layout("Two heads indoors"),
        "Two heads indoors",
        "For whoever carries the first time.",
        LEARNING,
        "3 of 6 stages",
        "set two heads indoors",
        "Cleared by Ivo Castellane on 4 May 2031.",
        List.of(
            stage("done", List.of("Twice the light. " + LONG), Optional.empty(), Optional.empty()),
            stage(
                "open",
                List.of("Look."),
                Optional.of(new TrailPage.Act("/go", "token", "I have read it", List.of(), "")),
                Optional.empty()),
            stage(
                "sent-back",
                List.of("Build."),
                Optional.of(
                    new TrailPage.Act(
                        "/go",
                        "token",
                        "Hand it in",
                        List.of(new TrailPage.Take("t1", "Number 3, 4 May 2031, 18:05")),
                        "")),
                Optional.of(new TrailPage.Judgement(false, "Sent back by Ivo.", LONG))),
            stage(
                "open",
                List.of("Build."),
                Optional.of(new TrailPage.Act("/go", "", "Hand it in", List.of(), "Build it.")),
                Optional.empty()),
            stage("ahead", List.of(), Optional.empty(), Optional.empty())),
        FormErrors.of("take", "This run-through was handed in before."),
        "/change");
  }

  private static TrailPage.Stage stage(
      String state,
      List<String> paragraphs,
      Optional<TrailPage.Act> act,
      Optional<TrailPage.Judgement> judgement) {
    return new TrailPage.Stage(
        "stage-" + state + paragraphs.hashCode(),
        "A stage",
        state,
        "How it stands",
        paragraphs,
        Optional.of(new Link("Tea at low water", "/studios/demo/setups/k3v9")),
        List.of(
            new TrailPage.Counted(new Link("Sync", "/studios/demo/drills?kind=sync"), "2 of 3")),
        act,
        judgement);
  }

  static SignOffPage signOff() {
    return signOff(
        Optional.of(new SignOffPage.Form("/studios/demo/builds/b1", "token", "Closer.")), "");
  }

  static SignOffPage judged() {
    return signOff(Optional.empty(), "This was sent back on 4 May 2031.");
  }

  private static SignOffPage signOff(Optional<SignOffPage.Form> form, String judged) {
    return new SignOffPage(
        PagePreviews.layout("Built by Sunniva Barrow"),
        "Sunniva Barrow",
        "Two heads: Build",
        "Build it.",
        new Link("Tea at low water", "/studios/demo/setups/k3v9"),
        DayPreviews.take("b1", "", FormErrors.none()),
        form,
        judged,
        judged.isEmpty() ? "" : "Closer.",
        form.isPresent()
            ? FormErrors.of("words", "Words are missing: say what to do again, and how.")
            : FormErrors.none(),
        LEARNING);
  }

  static LearningReportPage report() {
    return new LearningReportPage(
        PagePreviews.layout("Who can build what"),
        LEARNING,
        List.of("Two heads", "Six heads"),
        List.of(
            new LearningReportPage.OfMember(
                "Sunniva Barrow",
                "crew",
                "7 of 9 right",
                List.of(
                    new LearningReportPage.OnTrail("8 of 8", "set two heads"),
                    new LearningReportPage.OnTrail("", "")))),
        List.of(new LearningReportPage.OfKind("Power after a move", "3 of 9 right")),
        List.of(new LearningReportPage.Slip("Power after a move", LONG, 4)));
  }

  static LearningReportPage emptyReport() {
    return new LearningReportPage(
        PagePreviews.layout("Who can build what"),
        LEARNING,
        List.of(),
        List.of(),
        List.of(),
        List.of());
  }

  static TrailEditPage edit() {
    return new TrailEditPage(
        PagePreviews.layout("Change this trail"),
        "Change this trail",
        "/studios/demo/trails/first/change",
        "token",
        3,
        "Two heads",
        "",
        "set two heads",
        List.of(
            new TrailEditPage.Row(
                "stage-0", "read", "1", "study", "Look", "At it.", "k3v9", List.of(), "3"),
            new TrailEditPage.Row("stage-1", "", "2", "drills", "", "", "", List.of("sync"), "3")),
        List.of(new TrailEditPage.Choice("k3v9", "Tea at low water")),
        List.of(new TrailEditPage.Choice("sync", "Faster than sync")),
        FormErrors.of("stage-0-setup", "Setup (“k3v9”) must be one of the studio's setups."));
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
                List.of(LONG),
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
        "",
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
        "/studios/demo/trails/first",
        "/studios/demo/drills?kind=power_after_move");
  }
}
