package lampwright.web.pages;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lampwright.drawing.Plan;
import lampwright.drawing.PlanTable;
import lampwright.engine.unit.Stops;
import lampwright.setup.LightId;
import lampwright.setup.SetupDocument;
import lampwright.setup.adapting.Adaptation;
import lampwright.setup.adapting.Answer;
import lampwright.setup.adapting.Weights;
import lampwright.setup.adapting.Wishes;
import lampwright.setup.figures.FiguresComputation;
import lampwright.wording.CautionLine;
import lampwright.wording.KeyFigures;
import lampwright.wording.LightNames;
import lampwright.wording.Wording;

/** Puts a setup recomputed for a kit beside the original. */
final class AdaptedView {

  private static final double VISIBLE_STOPS = 1.0 / 3 - 1e-9;

  private final SetupDocument setup;
  private final Wishes wishes;
  private final Answer answer;
  private final List<Adaptation> adaptations;
  private final Wording words;

  AdaptedView(SetupDocument setup, Wishes wishes, Answer answer, Wording words) {
    this.setup = setup;
    this.wishes = wishes;
    this.answer = answer;
    this.adaptations = ways(answer);
    this.words = words;
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
    List<AdaptedPage.Chip> chips = new WishWords(setup, words).chips(around.asked(), around.path());
    if (adaptations.isEmpty()) {
      AdaptedShortfalls falls = new AdaptedShortfalls(setup, answer, Optional.empty(), words);
      return new AdaptedPage(
          around.layout(),
          setup.title(),
          around.setupPath(),
          around.kitName(),
          words.say("pages.adapted.cannot"),
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
          Optional.empty(),
          "");
    }
    int shown = Math.clamp(around.way(), 0, adaptations.size() - 1);
    return page(around, chips, shown, adaptations.get(shown));
  }

  private AdaptedPage page(
      Around around, List<AdaptedPage.Chip> chips, int shown, Adaptation adaptation) {
    AdaptedShortfalls falls = new AdaptedShortfalls(setup, answer, Optional.of(adaptation), words);
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
            },
            words),
        answer instanceof Answer.Adapted,
        chips,
        around.form(),
        wishes.preset() == Weights.Preset.FEWEST_DIALS
            ? new LightNames(setup, words).say(adaptation.changes())
            : List.of(),
        falls.of(Optional.of(adaptation)),
        falls.forAll(),
        Optional.of(
            new AdaptedComparison(setup, FiguresComputation.of(setup), adaptations, words)
                .of(asked, around.path(), shown)),
        KeyFigures.of(adaptation.document(), adaptation.figures(), words.notation()),
        Optional.of(plan(adaptation)),
        new AdaptedLights(setup, asked, around.path(), words).of(adaptation),
        new AdaptedCamera(setup, asked, around.path(), words).settings(adaptation),
        new AdaptedCosts(words).of(adaptation),
        new LightNames(setup, words).say(adaptation.losses()),
        words.say(adaptation.leftOut()),
        CautionLine.all(adaptation.document(), words),
        around.save(),
        asked
            .with(WishPairs.WAY, Integer.toString(shown + 1))
            .address(around.setupPath() + SheetPages.SHEET));
  }

  /** A light keeps its number when others are given up. */
  private PlanView plan(Adaptation adaptation) {
    Map<LightId, Integer> numbers = setup.numbersInBuildOrder();
    return PlanView.of(
        Plan.of(adaptation.document(), adaptation.figures(), numbers, words.notation()),
        PlanTable.of(adaptation.document(), adaptation.figures(), numbers, words.notation()));
  }

  /** What one way is like, and what is lost by it, for paper. */
  String inShort(Adaptation adaptation) {
    return Stream.concat(
            Stream.of(verdict(adaptation)),
            new LightNames(setup, words).say(adaptation.losses()).stream())
        .collect(Collectors.joining(" "));
  }

  private String verdict(Adaptation adaptation) {
    if (answer instanceof Answer.NotEnoughGear falls) {
      return String.join(" ", new LightNames(setup, words).say(falls.reasons()))
          + " "
          + words.say("pages.adapted.nearest");
    }
    List<lampwright.setup.adapting.AdaptedLight> lit =
        adaptation.lights().stream().filter(light -> light.made().isPresent()).toList();
    List<lampwright.setup.adapting.AdaptedLight> unlit =
        adaptation.lights().stream().filter(light -> light.made().isEmpty()).toList();
    long off = lit.stream().filter(AdaptedLights::isOff).count();
    return levels(lit.size(), off)
        + (unlit.isEmpty() ? "" : " " + words.say("pages.adapted.without", names(unlit)))
        + adaptation
            .ambientChange()
            .filter(change -> Math.abs(change.value()) >= VISIBLE_STOPS)
            .map(this::ambientInShort)
            .orElse("");
  }

  private String levels(int lit, long off) {
    if (off > 0) {
      return words.count("pages.adapted.offLights", off, lit);
    }
    return words.count("pages.adapted.reach", lit);
  }

  private String names(List<lampwright.setup.adapting.AdaptedLight> lights) {
    return lights.stream()
        .map(light -> light.original().light())
        .map(light -> words.light(setup.numbersInBuildOrder().getOrDefault(light.id(), 0), light))
        .collect(Collectors.joining(", "));
  }

  private String ambientInShort(Stops change) {
    return " "
        + words.say(
            change.value() > 0 ? "pages.adapted.ambientBrighter" : "pages.adapted.ambientDarker",
            words.stops(Math.abs(change.value())));
  }
}
