package lampwright.web.pages;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import lampwright.drawing.Plan;
import lampwright.language.Said;
import lampwright.learning.drill.Answer;
import lampwright.learning.drill.Drill;
import lampwright.learning.drill.DrillKind;
import lampwright.learning.drill.Measure;
import lampwright.learning.trail.TrailId;
import lampwright.people.Ids;
import lampwright.people.StudioId;
import lampwright.setup.SetupDocument;
import lampwright.setup.figures.FiguresComputation;
import lampwright.tasks.AskedDrill;
import lampwright.tasks.Drilling;
import lampwright.wording.LightNames;
import lampwright.wording.Wording;
import lampwright.wording.WorkingStep;

/** Puts a drill on its page. */
final class DrillView {

  /** Kinds that one looks at a plan for. */
  private static final Set<DrillKind> SEEN =
      Set.of(DrillKind.LIGHT_OF_SHADOW, DrillKind.LIGHT_OF_READING, DrillKind.UNSAFE);

  private final StudioId studio;
  private final AskedDrill asked;
  private final Drill drill;
  private final Wording words;
  private final LightNames names;

  DrillView(StudioId studio, AskedDrill asked, Wording words) {
    this.studio = studio;
    this.asked = asked;
    this.drill = asked.drill();
    this.words = words;
    this.names = new LightNames(asked.setup().document(), words);
  }

  /**
   * What happened so far.
   *
   * @param typed what was answered; empty before
   * @param trail that one came from
   */
  record Shown(String typed, Optional<String> trail, Optional<Drilling.Judged> judged) {}

  DrillPage page(Layout layout, String csrf, Shown shown, FormErrors errors) {
    String typed = shown.typed();
    Optional<TrailId> trail = shown.trail().filter(Ids::isId).map(TrailId::new);
    SetupDocument setup = asked.setup().document();
    return new DrillPage(
        layout,
        DrillPages.title(drill.kind(), words),
        new Link(setup.title(), SetupPages.setupPath(studio, asked.setup().id())),
        names.say(drill.given()),
        names.say(drill.question()),
        new DrillPage.Form(
            DrillPages.path(studio),
            csrf,
            drill.kind().word(),
            asked.setup().id().text(),
            asked.seed(),
            asked.fingerprint(),
            trail.map(TrailId::text).orElse(""),
            typed,
            unit(),
            options(typed)),
        errors,
        SEEN.contains(drill.kind())
            ? Optional.of(
                new DrillPage.Svg(
                    Plan.of(setup, FiguresComputation.of(setup), words.notation()).markup()))
            : Optional.empty(),
        shown.judged().map(judged -> judged(judged, typed)),
        LearningPages.path(studio),
        trail.map(id -> TrailPages.path(studio, id)).orElse(""),
        trail
            .map(id -> DrillPages.ask(studio, drill.kind(), id))
            .orElseGet(() -> DrillPages.ask(studio, drill.kind())));
  }

  private String unit() {
    return drill.answer() instanceof Answer.OfNumber number
        ? switch (number.measure()) {
          case STOPS_SET, STOPS_COUNTED -> words.say("learning.unit.stops");
          case LIGHT_DISTANCE_M, GROUND_LENGTH_M -> words.notation().lengthSign();
          case MOVED_MM -> "mm";
          case FRAMES -> words.say("learning.unit.frames");
          case SHIFT_MIRED -> words.say("learning.unit.mired");
        }
        : "";
  }

  private List<DrillPage.Option> options(String typed) {
    if (!(drill.answer() instanceof Answer.OfChoice choice)) {
      return List.of();
    }
    return IntStream.range(0, choice.options().size())
        .mapToObj(
            i ->
                new DrillPage.Option(
                    String.valueOf(i),
                    names.say(choice.options().get(i).text()),
                    typed.equals(String.valueOf(i)),
                    i == choice.right()))
        .toList();
  }

  private DrillPage.Judged judged(Drilling.Judged judged, String typed) {
    Optional<Said> slip =
        judged.verdict() instanceof Answer.Verdict.Wrong(Optional<Said> told)
            ? told
            : Optional.empty();
    return new DrillPage.Judged(
        judged.verdict() instanceof Answer.Verdict.Right,
        inWords(judged.given(), typed),
        slip.map(names::say).orElse(""),
        right(),
        names.say(drill.why()),
        drill.workings().stream().map(step -> WorkingStep.of(step, words)).toList());
  }

  private String inWords(Drilling.Given given, String typed) {
    return switch (given) {
      case Drilling.Given.OfNumber(double value)
          when drill.answer() instanceof Answer.OfNumber number ->
          names.say(number.measure().inWords(value));
      case Drilling.Given.OfOption(int place)
          when drill.answer() instanceof Answer.OfChoice choice ->
          names.say(choice.options().get(place).text());
      default -> typed;
    };
  }

  private String right() {
    return names.say(
        switch (drill.answer()) {
          case Answer.OfNumber number -> number.measure().inWords(number.value());
          case Answer.OfChoice choice -> choice.options().get(choice.right()).text();
        });
  }

  /** How many metres one unit of a typed length is; 1 for what is no length. */
  static double inMetres(Measure measure, Wording words) {
    return switch (measure) {
      case LIGHT_DISTANCE_M, GROUND_LENGTH_M -> words.notation().lengths().metres();
      default -> 1;
    };
  }
}
