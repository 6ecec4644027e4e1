package lampwright.web.pages;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import lampwright.document.Problem;
import lampwright.learning.trail.HandedIn;
import lampwright.learning.trail.Stage;
import lampwright.learning.trail.Way;
import lampwright.people.StudioId;
import lampwright.tasks.LearningReporting;
import lampwright.tasks.Leave;
import lampwright.tasks.Refusal;
import lampwright.tasks.Refused;
import lampwright.tasks.SigningOff;
import lampwright.tasks.WalkedTrail;
import lampwright.web.http.Body;
import lampwright.web.http.Door;
import lampwright.web.http.FormFields;
import lampwright.wording.SlipWords;
import lampwright.wording.Wording;

/** What others built, judged; and for owners how far everybody is. */
public final class SignOffPages {

  private final Door door;
  private final SigningOff signingOff;
  private final LearningReporting reporting;
  private final Templates templates;
  private final StudioLayouts layouts;

  public SignOffPages(
      Door door,
      SigningOff signingOff,
      LearningReporting reporting,
      Templates templates,
      StudioLayouts layouts) {
    this.door = door;
    this.signingOff = signingOff;
    this.reporting = reporting;
    this.templates = templates;
    this.layouts = layouts;
  }

  static String path(StudioId studio, String build) {
    return "/studios/" + studio.text() + "/builds/" + build;
  }

  /** The page of who can build what. */
  static String reportPath(StudioId studio) {
    return LearningPages.path(studio) + "/report";
  }

  /** Shows a build with what was metered. */
  public void show(Context context) {
    show(context, "", FormErrors.none());
  }

  private void show(Context context, String typed, FormErrors errors) {
    StudioId studio = Leave.studio(context.pathParam("studio"));
    SigningOff.Shown shown =
        signingOff.get(door.caller(context), studio, context.pathParam("build"));
    SigningOff.Build build = shown.build();
    String by = new WhoWords(layouts.words(context)).by(build.by());
    Layout layout = layouts.named(context, studio, "learning.build.of", by);
    Wording words = layout.words();
    Optional<HandedIn.Judgement> judgement = build.handedIn().judgement();
    templates.show(
        context,
        "signOff",
        new SignOffPage(
            layout,
            by,
            Stream.concat(
                    Stream.of(build.trail().document().name()),
                    build.stage().map(Stage::title).stream())
                .reduce((trail, stage) -> trail + ": " + stage)
                .orElse(""),
            build.stage().orElse(null) instanceof Stage.ToBuild of ? of.task() : "",
            new Link(
                build.setup().document().title(), SetupPages.setupPath(studio, build.setup().id())),
            new TakeCards(words).card(shown.take(), Optional.empty(), Optional.empty()),
            build.mayJudge()
                ? Optional.of(
                    new SignOffPage.Form(path(studio, build.id()), door.csrfToken(context), typed))
                : Optional.empty(),
            judgement.map(one -> judged(one, build.judgedBy().orElse(""), words)).orElse(""),
            judgement.map(HandedIn.Judgement::words).orElse(""),
            errors,
            LearningPages.path(studio)));
  }

  private static String judged(HandedIn.Judgement judgement, String by, Wording words) {
    return words.say(
        judgement.isSignedOff() ? "learning.trail.signedOff" : "learning.trail.sentBack",
        by,
        new DayWords(words).day(judgement.at()));
  }

  /** Signs it off, or sends it back. */
  public void judge(Context context) {
    StudioId studio = Leave.studio(context.pathParam("studio"));
    FormFields sent = Body.form(context);
    String said = sent.get(SignOffPage.WORDS);
    String build = context.pathParam("build");
    try {
      signingOff.judge(
          door.caller(context),
          studio,
          build,
          sent.get(SignOffPage.VERDICT).equals(SignOffPage.SIGN_OFF),
          said);
    } catch (Refused refused) {
      if (!(refused.refusal() instanceof Refusal.Invalid(List<Problem> problems))) {
        throw refused;
      }
      context.status(HttpStatus.UNPROCESSABLE_CONTENT);
      show(context, said, FormErrors.of(SignOffPage.WORDS, problems.getFirst().message()));
      return;
    }
    context.redirect(path(studio, build), HttpStatus.SEE_OTHER);
  }

  /** Shows owners how far everybody is. */
  public void report(Context context) {
    StudioId studio = Leave.studio(context.pathParam("studio"));
    LearningReporting.Report report = reporting.report(door.caller(context), studio);
    Layout layout = layouts.named(context, studio, "learning.report.heading");
    Wording words = layout.words();
    templates.show(
        context,
        "learningReport",
        new LearningReportPage(
            layout,
            LearningPages.path(studio),
            report.members().stream()
                .findFirst()
                .map(LearningReporting.OfMember::trails)
                .orElse(List.of())
                .stream()
                .map(walked -> walked.trail().document().name())
                .toList(),
            report.members().stream().map(member -> member(member, words)).toList(),
            report.kinds().stream()
                .map(
                    kind ->
                        new LearningReportPage.OfKind(
                            DrillPages.title(kind.kind(), words),
                            words.say("learning.drills.counted", kind.right(), kind.answered())))
                .toList(),
            report.slips().stream()
                .flatMap(
                    slip ->
                        SlipWords.find(slip.key(), words)
                            .map(
                                told ->
                                    new LearningReportPage.Slip(
                                        DrillPages.title(slip.kind(), words), told, slip.times()))
                            .stream())
                .toList()));
  }

  private static LearningReportPage.OfMember member(LearningReporting.OfMember of, Wording words) {
    return new LearningReportPage.OfMember(
        of.member().person().name(),
        words.say("studio.people.role." + of.member().role().word()),
        of.answered() == 0 ? "" : words.say("learning.drills.counted", of.right(), of.answered()),
        of.trails().stream().map(walked -> way(walked, words)).toList());
  }

  private static LearningReportPage.OnTrail way(WalkedTrail walked, Wording words) {
    Way way = walked.way();
    return new LearningReportPage.OnTrail(
        way.done() == 0 ? "" : words.say("learning.trail.short", way.done(), way.steps().size()),
        way.clearance().map(Way.Clearance::what).orElse(""));
  }
}
