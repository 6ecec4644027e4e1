package lampwright.web.pages;

import io.javalin.http.Context;
import java.time.Duration;
import java.util.Arrays;
import java.util.Optional;
import lampwright.learning.drill.DrillKind;
import lampwright.learning.drill.Repetition;
import lampwright.people.StudioId;
import lampwright.tasks.Drilling;
import lampwright.tasks.Leave;
import lampwright.web.http.Door;
import lampwright.wording.Wording;

/** Where one stands: {@code /studios/{studio}/learning}. */
public final class LearningPages {

  private final Door door;
  private final Drilling drilling;
  private final Templates templates;
  private final StudioLayouts layouts;

  public LearningPages(Door door, Drilling drilling, Templates templates, StudioLayouts layouts) {
    this.door = door;
    this.drilling = drilling;
    this.templates = templates;
    this.layouts = layouts;
  }

  static String path(StudioId studio) {
    return "/studios/" + studio.text() + "/learning";
  }

  /** Shows it. */
  public void show(Context context) {
    StudioId studio = Leave.studio(context.pathParam("studio"));
    Drilling.Progress progress = drilling.progress(door.caller(context), studio);
    Layout layout = layouts.named(context, studio, "learning.heading");
    Wording words = layout.words();
    templates.show(
        context,
        "learning",
        new LearningPage(
            layout,
            link(studio, progress.next(), words),
            Arrays.stream(DrillKind.values())
                .map(kind -> kind(studio, kind, progress, words))
                .toList()));
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
