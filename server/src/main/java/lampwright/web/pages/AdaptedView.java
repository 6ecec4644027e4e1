package lampwright.web.pages;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import lampwright.drawing.Plan;
import lampwright.drawing.PlanTable;
import lampwright.engine.unit.Stops;
import lampwright.setup.Cautions;
import lampwright.setup.LightId;
import lampwright.setup.SetupDocument;
import lampwright.setup.adapting.Adaptation;
import lampwright.setup.adapting.Answer;
import lampwright.setup.adapting.Weights;
import lampwright.setup.adapting.Wishes;
import lampwright.setup.figures.FiguresComputation;

/** Puts a setup recomputed for a kit beside the original. */
final class AdaptedView {

  private static final double VISIBLE_STOPS = 1.0 / 3 - 1e-9;

  private final SetupDocument setup;
  private final Wishes wishes;
  private final Answer answer;
  private final List<Adaptation> adaptations;

  AdaptedView(SetupDocument setup, Wishes wishes, Answer answer) {
    this.setup = setup;
    this.wishes = wishes;
    this.answer = answer;
    this.adaptations = ways(answer);
  }

  /** The ways that an answer has, the best first; perhaps none. */
  static List<Adaptation> ways(Answer answer) {
    return switch (answer) {
      case Answer.Adapted adapted -> adapted.adaptations();
      case Answer.NotEnoughGear falls -> falls.nearest();
    };
  }

  /**
   * What stands around the answer.
   *
   * @param path of this page, without its query
   * @param asked its query, with the kit
   * @param way which of the adaptations is shown, from 0; the last where there are fewer
   */
  record Around(
      Layout layout,
      String setupPath,
      String kitName,
      String path,
      WishPairs asked,
      int way,
      WishesForm form,
      Optional<SaveForm> save) {}

  AdaptedPage page(Around around) {
    List<AdaptedPage.Chip> chips = WishWords.chips(setup, around.asked(), around.path());
    if (adaptations.isEmpty()) {
      AdaptedShortfalls falls = new AdaptedShortfalls(setup, answer, Optional.empty());
      return new AdaptedPage(
          around.layout(),
          setup.title(),
          around.setupPath(),
          around.kitName(),
          "This kit cannot make the setup.",
          "",
          false,
          chips,
          around.form(),
          List.of(),
          falls.of(Optional.empty()),
          falls.forAll(),
          Optional.empty(),
          List.of(),
          Optional.empty(),
          List.of(),
          List.of(),
          new AdaptedPage.Costs("", List.of()),
          List.of(),
          List.of(),
          List.of(),
          Optional.empty());
    }
    int shown = Math.clamp(around.way(), 0, adaptations.size() - 1);
    return page(around, chips, shown, adaptations.get(shown));
  }

  private AdaptedPage page(
      Around around, List<AdaptedPage.Chip> chips, int shown, Adaptation adaptation) {
    AdaptedShortfalls falls = new AdaptedShortfalls(setup, answer, Optional.of(adaptation));
    WishPairs asked = around.asked();
    return new AdaptedPage(
        around.layout(),
        setup.title(),
        around.setupPath(),
        around.kitName(),
        verdict(adaptation),
        ProofWords.of(
            switch (answer) {
              case Answer.Adapted adapted -> adapted.proof();
              case Answer.NotEnoughGear not -> not.proof();
            }),
        answer instanceof Answer.Adapted,
        chips,
        around.form(),
        wishes.preset() == Weights.Preset.FEWEST_DIALS
            ? new LightNames(setup).in(adaptation.changes())
            : List.of(),
        falls.of(Optional.of(adaptation)),
        falls.forAll(),
        Optional.of(
            new AdaptedComparison(setup, FiguresComputation.of(setup), adaptations)
                .of(asked, around.path(), shown)),
        SetupFigures.strip(adaptation.document().exposure(), adaptation.figures()),
        Optional.of(plan(adaptation)),
        new AdaptedLights(setup, asked, around.path()).of(adaptation),
        new AdaptedCamera(setup, asked, around.path()).settings(adaptation),
        AdaptedCosts.of(adaptation),
        new LightNames(setup).in(adaptation.losses()),
        adaptation.leftOut(),
        Cautions.of(adaptation.document()),
        around.save());
  }

  /** A light keeps its number when others are given up. */
  private PlanView plan(Adaptation adaptation) {
    Map<LightId, Integer> numbers = SetupView.numbers(setup);
    return PlanView.of(
        Plan.of(adaptation.document(), adaptation.figures(), numbers),
        PlanTable.of(adaptation.document(), adaptation.figures(), numbers));
  }

  private String verdict(Adaptation adaptation) {
    if (answer instanceof Answer.NotEnoughGear falls) {
      return String.join(" ", new LightNames(setup).in(falls.reasons()))
          + " The nearest thing is below.";
    }
    List<lampwright.setup.adapting.AdaptedLight> lit =
        adaptation.lights().stream().filter(light -> light.made().isPresent()).toList();
    List<lampwright.setup.adapting.AdaptedLight> unlit =
        adaptation.lights().stream().filter(light -> light.made().isEmpty()).toList();
    long off = lit.stream().filter(AdaptedLights::isOff).count();
    return levels(lit.size(), off)
        + (unlit.isEmpty() ? "" : " Without " + names(unlit) + ".")
        + adaptation
            .ambientChange()
            .filter(change -> Math.abs(change.value()) >= VISIBLE_STOPS)
            .map(AdaptedView::ambientInShort)
            .orElse("");
  }

  private static String levels(int lit, long off) {
    if (off > 0) {
      return off
          + " of "
          + lit
          + (off == 1 ? " lights is" : " lights are")
          + " off by a third of a stop or more.";
    }
    return (lit == 1 ? "The light reaches its level" : "All " + lit + " lights reach their level")
        + " within a third of a stop.";
  }

  private String names(List<lampwright.setup.adapting.AdaptedLight> lights) {
    return lights.stream()
        .map(light -> WishWords.light(SetupView.numbers(setup), light.original().light()))
        .collect(Collectors.joining(", "));
  }

  private static String ambientInShort(Stops change) {
    return " The ambient is %s %s."
        .formatted(
            Wording.stops(Math.abs(change.value())), change.value() > 0 ? "brighter" : "darker");
  }
}
