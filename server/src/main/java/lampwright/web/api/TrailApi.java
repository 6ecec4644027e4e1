package lampwright.web.api;

import static lampwright.document.Field.required;
import static lampwright.document.Field.usually;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import lampwright.document.Field;
import lampwright.document.Form;
import lampwright.document.Forms;
import lampwright.document.ObjectForm;
import lampwright.learning.trail.StageId;
import lampwright.learning.trail.Trail;
import lampwright.learning.trail.TrailId;
import lampwright.people.Ids;
import lampwright.setup.takes.TakeId;
import lampwright.tasks.KeptTrail;
import lampwright.tasks.LearningReporting;
import lampwright.tasks.Listed;
import lampwright.tasks.Refused;
import lampwright.tasks.SigningOff;
import lampwright.tasks.TrailKeeping;
import lampwright.tasks.TrailWalking;
import lampwright.web.http.Door;
import lampwright.web.http.Preconditions;

/** Trails: kept, walked, signed off, and reported to owners. */
public final class TrailApi {

  private static final Set<String> PAGE = Set.of("cursor", "limit");

  private final Door door;
  private final Tasks tasks;

  /** What is asked here. */
  public record Tasks(
      TrailKeeping keeping,
      TrailWalking walking,
      SigningOff signingOff,
      LearningReporting reporting) {}

  public TrailApi(Door door, Tasks tasks) {
    this.door = door;
    this.tasks = tasks;
  }

  /** Which run-through is handed in. */
  private record HandIn(String take) {
    private static final Field<HandIn, String> TAKE =
        required("take", Forms.text(40), HandIn::take, "The id of the run-through.");
    static final ObjectForm<HandIn> FORM =
        ObjectForm.of(
            "build_handed_in",
            "A run-through that is handed in for a stage.",
            values -> new HandIn(values.get(TAKE)),
            List.of(TAKE));
  }

  /** What is said of a build. */
  private record Judgement(boolean isSignedOff, String words) {
    private static final Field<Judgement, Boolean> SIGNED_OFF =
        required("signed_off", Forms.flag(), Judgement::isSignedOff, "Or else it is sent back.");
    private static final Field<Judgement, String> WORDS =
        usually(
            "",
            "words",
            Forms.text(2_000),
            Judgement::words,
            "What to mind; needed where it is sent back.");
    static final ObjectForm<Judgement> FORM =
        ObjectForm.of(
            "build_judgement",
            "What is said of a build.",
            values -> new Judgement(values.get(SIGNED_OFF), values.get(WORDS)),
            List.of(SIGNED_OFF, WORDS));
  }

  /** What is read here. */
  static List<Form<?>> forms() {
    return List.of(Trail.FORM, HandIn.FORM, Judgement.FORM);
  }

  /** Part of them, the last changed first. */
  public void list(Context context) {
    Listed<KeptTrail> page =
        tasks
            .keeping()
            .list(door.caller(context), SetupApi.studio(context), new Query(context, PAGE).page());
    Query.linkNext(context, page);
    context.json(
        new TrailJson.All(page.items().stream().map(TrailJson.Item::of).toList(), page.next()));
  }

  /** Keeps a new one. */
  public void create(Context context) {
    Trail document = Documents.read(context, Trail.FORM);
    KeptTrail created =
        tasks
            .keeping()
            .create(door.caller(context), SetupApi.studio(context), document, Repeats.of(context));
    context.status(HttpStatus.CREATED);
    context.header("Location", context.path() + "/" + created.id().text());
    Preconditions.show(context, created.revision());
    context.json(TrailJson.One.of(created));
  }

  /** One as it is now. */
  public void get(Context context) {
    KeptTrail trail = current(context);
    if (!Preconditions.isKnown(context, trail.revision())) {
      context.json(TrailJson.One.of(trail));
    }
  }

  /** Puts another document in its place. */
  public void replace(Context context) {
    int based = basedOn(context);
    replace(context, based, Documents.read(context, Trail.FORM));
  }

  /** Changes what the body names of it. */
  public void change(Context context) {
    int based = basedOn(context);
    KeptTrail now = current(context);
    replace(
        context,
        based,
        Documents.changed(context, Trail.FORM, based, now.revision(), now.document()));
  }

  private void replace(Context context, int based, Trail document) {
    KeptTrail replaced =
        tasks
            .keeping()
            .replace(
                door.caller(context),
                SetupApi.studio(context),
                trail(context),
                Optional.of(based),
                document);
    Preconditions.show(context, replaced.revision());
    context.json(TrailJson.One.of(replaced));
  }

  /** Takes it away. */
  public void delete(Context context) {
    tasks
        .keeping()
        .delete(
            door.caller(context),
            SetupApi.studio(context),
            trail(context),
            Optional.of(basedOn(context)));
    context.status(HttpStatus.NO_CONTENT);
  }

  /** How far the caller is on it. */
  public void way(Context context) {
    context.json(
        TrailJson.WayJson.of(
            tasks.walking().get(door.caller(context), SetupApi.studio(context), trail(context))));
  }

  /** The caller has read or studied a stage. */
  public void done(Context context) {
    context.json(
        TrailJson.WayJson.of(
            tasks
                .walking()
                .done(
                    door.caller(context),
                    SetupApi.studio(context),
                    trail(context),
                    stage(context))));
  }

  /** The caller hands in what they built for a stage. */
  public void handIn(Context context) {
    HandIn handIn = Documents.read(context, HandIn.FORM);
    if (!Ids.isId(handIn.take())) {
      throw Refused.invalid("/take", "Take must be the id of a run-through.");
    }
    context.json(
        TrailJson.WayJson.of(
            tasks
                .walking()
                .handIn(
                    door.caller(context),
                    SetupApi.studio(context),
                    trail(context),
                    stage(context),
                    new TakeId(handIn.take()))));
  }

  /** The builds that wait for the caller to judge them. */
  public void builds(Context context) {
    context.json(
        new TrailJson.Builds(
            tasks.signingOff().listWaiting(door.caller(context), SetupApi.studio(context)).stream()
                .map(TrailJson.BuildJson::of)
                .toList()));
  }

  /** A build with what was metered. */
  public void build(Context context) {
    context.json(
        TrailJson.ShownBuild.of(
            tasks
                .signingOff()
                .get(door.caller(context), SetupApi.studio(context), context.pathParam("build"))));
  }

  /** Signs a build off, or sends it back. */
  public void judge(Context context) {
    Judgement judgement = Documents.read(context, Judgement.FORM);
    context.json(
        TrailJson.BuildJson.of(
            tasks
                .signingOff()
                .judge(
                    door.caller(context),
                    SetupApi.studio(context),
                    context.pathParam("build"),
                    judgement.isSignedOff(),
                    judgement.words())));
  }

  /** Who can build what, and where people slip. */
  public void report(Context context) {
    context.json(
        TrailJson.Report.of(
            tasks.reporting().report(door.caller(context), SetupApi.studio(context))));
  }

  private KeptTrail current(Context context) {
    return tasks.keeping().get(door.caller(context), SetupApi.studio(context), trail(context));
  }

  private int basedOn(Context context) {
    return Preconditions.based(context, () -> current(context).revision());
  }

  private static TrailId trail(Context context) {
    return TrailKeeping.id(context.pathParam("trail"));
  }

  private static StageId stage(Context context) {
    String text = context.pathParam("stage");
    if (!StageId.isSound(text)) {
      throw Refused.notFound();
    }
    return new StageId(text);
  }
}
