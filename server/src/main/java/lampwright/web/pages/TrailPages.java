package lampwright.web.pages;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lampwright.document.Problem;
import lampwright.learning.trail.Stage;
import lampwright.learning.trail.StageId;
import lampwright.learning.trail.TrailId;
import lampwright.learning.trail.Way;
import lampwright.people.Ids;
import lampwright.people.StudioId;
import lampwright.setup.SetupId;
import lampwright.setup.takes.TakeId;
import lampwright.tasks.Caller;
import lampwright.tasks.Cataloguing;
import lampwright.tasks.Leave;
import lampwright.tasks.Refusal;
import lampwright.tasks.Refused;
import lampwright.tasks.TrailKeeping;
import lampwright.tasks.TrailWalking;
import lampwright.tasks.WalkedTrail;
import lampwright.web.http.Body;
import lampwright.web.http.Door;

/** A trail, walked stage by stage: {@code /studios/{studio}/trails/{trail}}. */
public final class TrailPages {

  private final Door door;
  private final Tasks tasks;
  private final Templates templates;
  private final StudioLayouts layouts;

  /** What this page asks. */
  public record Tasks(TrailKeeping keeping, TrailWalking walking, Cataloguing cataloguing) {}

  public TrailPages(Door door, Tasks tasks, Templates templates, StudioLayouts layouts) {
    this.door = door;
    this.tasks = tasks;
    this.templates = templates;
    this.layouts = layouts;
  }

  static String path(StudioId studio) {
    return "/studios/" + studio.text() + "/trails";
  }

  static String path(StudioId studio, TrailId trail) {
    return path(studio) + "/" + trail.text();
  }

  /** Shows it. */
  public void show(Context context) {
    show(context, FormErrors.none());
  }

  private void show(Context context, FormErrors errors) {
    StudioId studio = Leave.studio(context.pathParam("studio"));
    TrailId id = TrailKeeping.id(context.pathParam("trail"));
    Caller caller = door.caller(context);
    WalkedTrail walked = tasks.walking().get(caller, studio, id);
    Layout layout = layouts.of(context, studio, walked.trail().document().name());
    templates.show(
        context,
        "trail",
        new TrailView(studio, walked, layout.words())
            .page(
                new TrailView.Around(
                    layout,
                    door.csrfToken(context),
                    tasks.cataloguing().titles(caller, studio, walked.way().trail().setups()),
                    runThroughs(caller, studio, walked),
                    errors,
                    tasks.keeping().mayWrite(caller, studio) ? path(studio, id) + "/change" : "")));
  }

  /** Of the stage that is to be built now. */
  private Map<StageId, List<TrailWalking.RunThrough>> runThroughs(
      Caller caller, StudioId studio, WalkedTrail walked) {
    Map<StageId, List<TrailWalking.RunThrough>> all = new HashMap<>();
    for (Way.Step step : walked.way().steps()) {
      boolean isToDo = step.state() == Way.State.OPEN || step.state() == Way.State.SENT_BACK;
      if (isToDo && step.stage() instanceof Stage.ToBuild build) {
        all.put(build.id(), found(caller, studio, build.setup()));
      }
    }
    return all;
  }

  /** Nothing of a setup that one may not see. */
  private List<TrailWalking.RunThrough> found(Caller caller, StudioId studio, SetupId setup) {
    return tasks.cataloguing().titles(caller, studio, List.of(setup)).isEmpty()
        ? List.of()
        : tasks.walking().runThroughs(caller, studio, setup);
  }

  /** Says that a stage is done, or hands in what was built for it. */
  public void go(Context context) {
    StudioId studio = Leave.studio(context.pathParam("studio"));
    TrailId id = TrailKeeping.id(context.pathParam("trail"));
    String stage = context.pathParam("stage");
    if (!StageId.isSound(stage)) {
      throw Refused.notFound();
    }
    Optional<String> take =
        Optional.of(Body.form(context).get(TrailPage.TAKE)).filter(sent -> !sent.isEmpty());
    try {
      if (take.isPresent()) {
        TakeId built = take.filter(Ids::isId).map(TakeId::new).orElseThrow(Refused::notFound);
        tasks.walking().handIn(door.caller(context), studio, id, new StageId(stage), built);
      } else {
        tasks.walking().done(door.caller(context), studio, id, new StageId(stage));
      }
    } catch (Refused refused) {
      if (!(refused.refusal() instanceof Refusal.Invalid(List<Problem> problems))) {
        throw refused;
      }
      context.status(HttpStatus.UNPROCESSABLE_CONTENT);
      show(context, FormErrors.of(TrailPage.TAKE, problems.getFirst().message()));
      return;
    }
    context.redirect(path(studio, id) + "#" + stage, HttpStatus.SEE_OTHER);
  }
}
