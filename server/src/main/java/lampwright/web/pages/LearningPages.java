package lampwright.web.pages;

import io.javalin.http.Context;
import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import lampwright.learning.drill.DrillKind;
import lampwright.learning.drill.Repetition;
import lampwright.learning.trail.Way;
import lampwright.people.Permission;
import lampwright.people.Role;
import lampwright.people.StudioId;
import lampwright.tasks.Caller;
import lampwright.tasks.Drilling;
import lampwright.tasks.Leave;
import lampwright.tasks.SigningOff;
import lampwright.tasks.Studios;
import lampwright.tasks.TrailWalking;
import lampwright.tasks.WalkedTrail;
import lampwright.web.http.Door;
import lampwright.wording.Wording;

/** Where one stands: {@code /studios/{studio}/learning}. */
public final class LearningPages {

  private final Door door;
  private final Tasks tasks;
  private final Templates templates;
  private final StudioLayouts layouts;

  /** What this page asks. */
  public record Tasks(
      Drilling drilling, TrailWalking walking, SigningOff signingOff, Studios studios) {}

  public LearningPages(Door door, Tasks tasks, Templates templates, StudioLayouts layouts) {
    this.door = door;
    this.tasks = tasks;
    this.templates = templates;
    this.layouts = layouts;
  }

  static String path(StudioId studio) {
    return "/studios/" + studio.text() + "/learning";
  }

  /** Shows it. */
  public void show(Context context) {
    StudioId studio = Leave.studio(context.pathParam("studio"));
    Caller caller = door.caller(context);
    Drilling.Progress progress = tasks.drilling().progress(caller, studio);
    List<WalkedTrail> trails = tasks.walking().list(caller, studio);
    Role role = tasks.studios().role(caller, studio);
    Layout layout = layouts.named(context, studio, "learning.heading");
    Wording words = layout.words();
    templates.show(
        context,
        "learning",
        new LearningPage(
            layout,
            trails.stream()
                .map(walked -> walked.way().clearance().map(Way.Clearance::what))
                .flatMap(Optional::stream)
                .toList(),
            trails.stream().map(walked -> trail(studio, walked, words)).toList(),
            tasks.signingOff().listWaiting(caller, studio).stream()
                .map(build -> waiting(studio, build, words))
                .toList(),
            link(studio, progress.next(), words),
            Arrays.stream(DrillKind.values())
                .map(kind -> kind(studio, kind, progress, words))
                .toList(),
            role.may(Permission.WRITE_TRAILS) ? TrailPages.path(studio) + "/new" : "",
            role.may(Permission.SEE_LEARNING) ? SignOffPages.reportPath(studio) : ""));
  }

  private static LearningPage.Trail trail(StudioId studio, WalkedTrail walked, Wording words) {
    Way way = walked.way();
    return new LearningPage.Trail(
        new Link(way.trail().name(), TrailPages.path(studio, walked.trail().id())),
        way.trail().about().orElse(""),
        words.say("learning.trail.counted", way.done(), way.steps().size()),
        way.next().map(step -> step.stage().title()).orElse(""));
  }

  private static LearningPage.Waiting waiting(
      StudioId studio, SigningOff.Build build, Wording words) {
    return new LearningPage.Waiting(
        new Link(new WhoWords(words).who(build.by()), SignOffPages.path(studio, build.id())),
        build.trail().document().name(),
        new DayWords(words).day(build.handedIn().at()));
  }

  private static Link link(StudioId studio, DrillKind kind, Wording words) {
    return new Link(DrillPages.title(kind, words), DrillPages.ask(studio, kind));
  }

  private static LearningPage.Kind kind(
      StudioId studio, DrillKind kind, Drilling.Progress progress, Wording words) {
    Link link = link(studio, kind, words);
    return Optional.ofNullable(progress.byKind().get(kind))
        .map(
            so ->
                new LearningPage.Kind(
                    link,
                    so.box(),
                    words.say("learning.drills.counted", so.right(), so.answered()),
                    due(so, progress, words),
                    so.isDue(progress.now())))
        .orElseGet(
            () -> new LearningPage.Kind(link, -1, "", words.say("learning.drills.never"), false));
  }

  private static String due(Repetition so, Drilling.Progress progress, Wording words) {
    if (so.isDue(progress.now())) {
      return words.say("learning.drills.now");
    }
    Duration until = Duration.between(progress.now(), so.due());
    long days = (until.toHours() + 12) / 24;
    return days == 0
        ? words.say("learning.drills.today")
        : words.count("learning.drills.days", days);
  }
}
