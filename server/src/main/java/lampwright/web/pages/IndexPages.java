package lampwright.web.pages;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.Duration;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import lampwright.people.StudioId;
import lampwright.search.IndexRebuild;
import lampwright.tasks.IndexKeeping;
import lampwright.tasks.Leave;
import lampwright.tasks.Refusal;
import lampwright.tasks.Refused;
import lampwright.web.http.Door;
import lampwright.wording.Figure;
import lampwright.wording.Wording;

/** The page on which an owner looks after the search index. */
public final class IndexPages {

  private final Door door;
  private final IndexKeeping keeping;
  private final Templates templates;
  private final StudioLayouts layouts;

  public IndexPages(Door door, IndexKeeping keeping, Templates templates, StudioLayouts layouts) {
    this.door = door;
    this.keeping = keeping;
    this.templates = templates;
    this.layouts = layouts;
  }

  static String path(StudioId studio) {
    return "/studios/" + studio.text() + "/index";
  }

  /** Shows it: {@code /studios/{studio}/index}. */
  public void show(Context context) {
    StudioId studio = Leave.studio(context.pathParam("studio"));
    IndexKeeping.Told told = keeping.get(door.caller(context), studio);
    Wording words = layouts.words(context);
    String path = path(studio);
    templates.show(
        context,
        "searchIndex",
        new IndexPage(
            layouts.named(context, studio, "studio.index.heading"),
            List.of(
                Figure.of(String.valueOf(told.indexed()), "", words.say("studio.index.indexed")),
                Figure.of(String.valueOf(told.setups()), "", words.say("studio.index.setups")),
                Figure.of(seconds(told.lag(), words), "s", words.say("studio.index.lag"))),
            List.of(
                words.say("studio.index.state." + word(told.state())),
                words.say("studio.index.by_meaning." + word(told.byMeaning()))),
            told.rebuild().map(now -> work(now, "/api" + path, words)),
            told.last().map(last -> last(last, words)).orElse(""),
            told.rebuild().isEmpty() ? path + "/rebuild" : "",
            told.rebuild().filter(IndexRebuild::mayStop).map(_ -> path + "/stop").orElse(""),
            door.csrfToken(context),
            path,
            ArchivePages.path(studio)));
  }

  private static IndexPage.Work work(IndexRebuild now, String address, Wording words) {
    return new IndexPage.Work(
        now.done(),
        now.total(),
        words.say("studio.index.done", String.valueOf(now.done()), String.valueOf(now.total())),
        now.left()
            .map(
                left ->
                    words.say(
                        "studio.index.pace",
                        words.fixed(now.perSecond(), 0),
                        words.fixed(left.toMillis() / 1_000.0, 0)))
            .orElse(""),
        words.say("studio.index.done", "{0}", "{1}"),
        words.say("studio.index.pace", "{0}", "{1}"),
        address);
  }

  private static String last(IndexKeeping.Ended last, Wording words) {
    return words.say(
        "studio.index.last." + word(last.ending()),
        new DayWords(words)
            .timeAndDay(
                last.at().atOffset(ZoneOffset.UTC).toLocalTime(),
                last.at().atOffset(ZoneOffset.UTC).toLocalDate()),
        String.valueOf(last.setups()),
        seconds(last.took(), words));
  }

  private static String seconds(Duration time, Wording words) {
    return words.fixed(time.toMillis() / 1_000.0, 1);
  }

  private static String word(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT);
  }

  /** Has it made anew: a form to {@code …/index/rebuild}. */
  public void start(Context context) {
    StudioId studio = Leave.studio(context.pathParam("studio"));
    try {
      keeping.start(door.caller(context), studio);
    } catch (Refused refused) {
      // Somebody else was first: what they began is shown.
      if (!(refused.refusal() instanceof Refusal.Clash)) {
        throw refused;
      }
    }
    context.redirect(path(studio), HttpStatus.SEE_OTHER);
  }

  /** Ends that: a form to {@code …/index/stop}. */
  public void stop(Context context) {
    StudioId studio = Leave.studio(context.pathParam("studio"));
    keeping.stop(door.caller(context), studio);
    context.redirect(path(studio), HttpStatus.SEE_OTHER);
  }
}
