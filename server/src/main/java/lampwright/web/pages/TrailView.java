package lampwright.web.pages;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import lampwright.learning.trail.HandedIn;
import lampwright.learning.trail.Stage;
import lampwright.learning.trail.StageId;
import lampwright.learning.trail.Way;
import lampwright.people.PersonId;
import lampwright.people.StudioId;
import lampwright.setup.SetupId;
import lampwright.tasks.TrailWalking;
import lampwright.tasks.WalkedTrail;
import lampwright.wording.Wording;

/** Puts a trail and somebody's way on it on a page. */
final class TrailView {

  private final StudioId studio;
  private final WalkedTrail walked;
  private final Wording words;
  private final DayWords days;

  TrailView(StudioId studio, WalkedTrail walked, Wording words) {
    this.studio = studio;
    this.walked = walked;
    this.words = words;
    this.days = new DayWords(words);
  }

  /**
   * What stands around it.
   *
   * @param titles of the setups that it leads to and one may see
   * @param runThroughs that can be handed in, by stage
   */
  record Around(
      Layout layout,
      String csrf,
      Map<SetupId, String> titles,
      Map<StageId, List<TrailWalking.RunThrough>> runThroughs,
      FormErrors errors,
      String changePath) {}

  TrailPage page(Around around) {
    Way way = walked.way();
    return new TrailPage(
        around.layout(),
        way.trail().name(),
        way.trail().about().orElse(""),
        LearningPages.path(studio),
        counted(way),
        way.trail().clearsFor().orElse(""),
        way.clearance()
            .map(
                cleared ->
                    words.say(
                        "learning.trail.cleared", name(cleared.by()), days.day(cleared.since())))
            .orElse(""),
        way.steps().stream().map(step -> stage(step, around)).toList(),
        around.errors(),
        around.changePath());
  }

  private String counted(Way way) {
    return words.say("learning.trail.counted", way.done(), way.steps().size());
  }

  private String name(PersonId person) {
    return new WhoWords(words).by(walked.names().getOrDefault(person, ""));
  }

  private TrailPage.Stage stage(Way.Step step, Around around) {
    String state = step.state().name().toLowerCase(Locale.ROOT);
    return new TrailPage.Stage(
        step.stage().id().text(),
        step.stage().title(),
        state.replace('_', '-'),
        words.say("learning.state." + state),
        step.state() == Way.State.AHEAD ? List.of() : paragraphs(step.stage()),
        step.state() == Way.State.AHEAD
            ? Optional.empty()
            : setup(step.stage()).flatMap(id -> link(id, around)),
        step.state() == Way.State.AHEAD ? List.of() : links(step),
        act(step, around),
        step.last().flatMap(HandedIn::judgement).map(this::judgement));
  }

  /** A blank line is where a paragraph ends. */
  private static List<String> paragraphs(Stage stage) {
    String text =
        switch (stage) {
          case Stage.ToRead read -> read.text();
          case Stage.ToStudy study -> study.lookAt();
          case Stage.ToBuild build -> build.task();
          case Stage.ToAnswer _ -> "";
        };
    return Arrays.stream(text.split("\\R\\s*\\R", -1))
        .map(String::strip)
        .filter(paragraph -> !paragraph.isEmpty())
        .toList();
  }

  private static Optional<SetupId> setup(Stage stage) {
    return switch (stage) {
      case Stage.ToStudy study -> Optional.of(study.setup());
      case Stage.ToBuild build -> Optional.of(build.setup());
      case Stage.ToRead _, Stage.ToAnswer _ -> Optional.empty();
    };
  }

  private Optional<Link> link(SetupId id, Around around) {
    return Optional.ofNullable(around.titles().get(id))
        .map(title -> new Link(title, SetupPages.setupPath(studio, id)));
  }

  private List<TrailPage.Counted> links(Way.Step step) {
    return switch (step.stage()) {
      case Stage.ToAnswer drills ->
          drills.kinds().stream()
              .map(
                  kind ->
                      new TrailPage.Counted(
                          new Link(
                              DrillPages.title(kind, words),
                              DrillPages.ask(studio, kind, walked.trail().id())),
                          words.say(
                              "learning.trail.right",
                              step.right().getOrDefault(kind, 0),
                              drills.right())))
              .toList();
      case Stage.ToBuild build ->
          List.of(
              new TrailPage.Counted(
                  new Link(
                      words.say("learning.trail.location"),
                      SetupPages.setupPath(studio, build.setup()) + "/field#build"),
                  ""));
      case Stage.ToStudy study ->
          List.of(
              new TrailPage.Counted(
                  new Link(
                      words.say("learning.trail.lights"), WithoutPages.path(studio, study.setup())),
                  ""));
      case Stage.ToRead _ -> List.of();
    };
  }

  private Optional<TrailPage.Act> act(Way.Step step, Around around) {
    boolean isToDo = step.state() == Way.State.OPEN || step.state() == Way.State.SENT_BACK;
    if (!isToDo) {
      return Optional.empty();
    }
    String action = TrailPages.path(studio, walked.trail().id()) + "/stages/" + step.stage().id();
    return switch (step.stage()) {
      case Stage.ToRead _ -> Optional.of(act(action, around, "learning.trail.read"));
      case Stage.ToStudy _ -> Optional.of(act(action, around, "learning.trail.studied"));
      case Stage.ToAnswer _ -> Optional.empty();
      case Stage.ToBuild _ -> Optional.of(handIn(action, step, around));
    };
  }

  private TrailPage.Act act(String action, Around around, String key) {
    return new TrailPage.Act(action, around.csrf(), words.say(key), List.of(), "");
  }

  private TrailPage.Act handIn(String action, Way.Step step, Around around) {
    List<TrailWalking.RunThrough> all =
        around.runThroughs().getOrDefault(step.stage().id(), List.of());
    return new TrailPage.Act(
        action,
        around.csrf(),
        words.say("learning.trail.handIn"),
        all.stream()
            .map(
                one ->
                    new TrailPage.Take(
                        one.id().text(),
                        words.say(
                            "learning.trail.run",
                            one.number(),
                            days.dayAndTime(
                                one.document().day(), one.document().at().toLocalTime()),
                            one.document().readings().size())))
            .toList(),
        all.isEmpty() ? words.say("learning.trail.noRun") : "");
  }

  private TrailPage.Judgement judgement(HandedIn.Judgement judgement) {
    return new TrailPage.Judgement(
        judgement.isSignedOff(),
        words.say(
            judgement.isSignedOff() ? "learning.trail.signedOff" : "learning.trail.sentBack",
            name(judgement.by()),
            days.day(judgement.at())),
        judgement.words());
  }
}
