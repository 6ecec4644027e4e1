package lampwright.web.pages;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import lampwright.document.Problem;
import lampwright.gear.stock.GearId;
import lampwright.gear.stock.GearKind;
import lampwright.people.Permission;
import lampwright.people.StudioId;
import lampwright.tasks.Caller;
import lampwright.tasks.GearKeeping;
import lampwright.tasks.KeptGear;
import lampwright.tasks.Leave;
import lampwright.tasks.Message;
import lampwright.tasks.Once;
import lampwright.tasks.Refusal;
import lampwright.tasks.Refused;
import lampwright.tasks.Studios;
import lampwright.web.http.Body;
import lampwright.web.http.Door;
import lampwright.web.http.FormFields;

/** The forms by which a piece of the studio's gear is made, changed and retired. */
public final class GearEditPages {

  private final Door door;
  private final Tasks tasks;
  private final Templates templates;
  private final StudioLayouts layouts;

  /** What these pages ask. */
  public record Tasks(Studios studios, GearKeeping gear) {}

  public GearEditPages(Door door, Tasks tasks, Templates templates, StudioLayouts layouts) {
    this.door = door;
    this.tasks = tasks;
    this.templates = templates;
    this.layouts = layouts;
  }

  static String newPath(StudioId studio, GearKind kind) {
    return GearPages.path(studio) + "/new?kind=" + kind.word();
  }

  static String changePath(StudioId studio, GearId gear) {
    return GearPages.path(studio) + "/" + gear.text() + "/change";
  }

  /** Shows the form for new gear: {@code /studios/{studio}/gear/new?kind=…}, usually a head. */
  public void showNew(Context context) {
    StudioId studio = studio(context);
    GearKind kind =
        Optional.ofNullable(context.queryParam(GearEditPage.KIND))
            .flatMap(GearKind::find)
            .orElse(GearKind.HEAD);
    GearFields fields = fields(context, kind, Optional.empty());
    show(
        context,
        new Form(studio, kind, Optional.empty(), fields),
        fields::filled,
        FormErrors.none());
  }

  /** Shows the form for what is there: {@code …/gear/{gear}/change}. */
  public void showChange(Context context) {
    Form form = form(context);
    show(context, form, form.fields()::filled, FormErrors.none());
  }

  /**
   * A form.
   *
   * @param gear that is changed; absent for new gear
   */
  private record Form(StudioId studio, GearKind kind, Optional<KeptGear> gear, GearFields fields) {

    String path() {
      return gear.map(of -> GearPages.path(studio) + "/" + of.id().text())
          .orElse(GearPages.path(studio));
    }
  }

  private Form form(Context context) {
    StudioId studio = studio(context);
    GearId id = GearKeeping.id(context.pathParam("gear"));
    KeptGear gear = tasks.gear().get(door.caller(context), studio, id);
    GearKind kind = gear.document().kind();
    return new Form(studio, kind, Optional.of(gear), fields(context, kind, Optional.of(gear)));
  }

  private GearFields fields(Context context, GearKind kind, Optional<KeptGear> gear) {
    return new GearFields(kind, gear.map(KeptGear::document), layouts.words(context).notation());
  }

  private void show(Context context, Form form, UnaryOperator<String> typed, FormErrors errors) {
    Caller caller = door.caller(context);
    if (!tasks.studios().role(caller, form.studio()).may(Permission.WRITE_KITS)) {
      throw Refused.notAllowed("Only authors and owners change gear.");
    }
    Layout layout =
        form.gear()
            .map(
                gear ->
                    layouts.named(
                        context, form.studio(), "studio.gear.form.change", gear.document().name()))
            .orElseGet(
                () ->
                    layouts.named(
                        context, form.studio(), "studio.gear.form.new." + form.kind().word()));
    templates.show(
        context,
        "gearForm",
        new GearEditPage(
            layout,
            layout.title(),
            form.gear().isPresent() ? form.path() + "/change" : form.path() + "/new",
            form.path(),
            door.csrfToken(context),
            form.kind().word(),
            form.gear().map(KeptGear::revision).orElse(0),
            form.fields().groups(typed),
            form.fields().rows().condition(typed),
            form.fields().rows().readings(typed),
            form.gear().isPresent() ? form.path() + "/removal" : "",
            errors));
  }

  /** Keeps new gear. */
  public void create(Context context) {
    StudioId studio = studio(context);
    FormFields sent = Body.form(context);
    GearKind kind = GearKind.find(sent.get(GearEditPage.KIND)).orElseThrow(Refused::notFound);
    Form form = new Form(studio, kind, Optional.empty(), fields(context, kind, Optional.empty()));
    try {
      KeptGear made =
          tasks
              .gear()
              .create(
                  door.caller(context),
                  studio,
                  form.fields().read(sent::get),
                  Message.none(),
                  Once.unkeyed());
      context.redirect(form.path() + "/" + made.id().text(), HttpStatus.SEE_OTHER);
    } catch (Refused refused) {
      again(context, form, sent, refused);
    }
  }

  /** Changes what is there. */
  public void change(Context context) {
    Form form = form(context);
    FormFields sent = Body.form(context);
    try {
      tasks
          .gear()
          .replace(
              door.caller(context),
              form.studio(),
              form.gear().orElseThrow(Refused::notFound).id(),
              Optional.of(KitFields.revision(sent)),
              form.fields().read(sent::get),
              Message.none());
      context.redirect(form.path(), HttpStatus.SEE_OTHER);
    } catch (Refused refused) {
      again(context, form, sent, refused);
    }
  }

  /** Takes a piece out of the studio's gear; where a kit takes it, the form says which. */
  public void retire(Context context) {
    Form form = form(context);
    int revision = KitFields.revision(Body.form(context));
    try {
      tasks
          .gear()
          .delete(
              door.caller(context),
              form.studio(),
              form.gear().orElseThrow(Refused::notFound).id(),
              Optional.of(revision),
              Message.none());
      context.redirect(GearPages.path(form.studio()), HttpStatus.SEE_OTHER);
    } catch (Refused refused) {
      switch (refused.refusal()) {
        case Refusal.Clash(String what) ->
            again(context, HttpStatus.CONFLICT, form, form.fields()::filled, what);
        case Refusal.Stale _ -> changedSince(context, form, form.fields()::filled);
        default -> throw refused;
      }
    }
  }

  private void changedSince(Context context, Form form, UnaryOperator<String> typed) {
    again(
        context,
        HttpStatus.PRECONDITION_FAILED,
        form,
        typed,
        layouts.words(context).notation().say("studio.gear.form.changed_since"));
  }

  private void again(Context context, Form form, FormFields sent, Refused refused) {
    switch (refused.refusal()) {
      case Refusal.Invalid(List<Problem> problems) -> {
        context.status(HttpStatus.UNPROCESSABLE_CONTENT);
        show(context, form, sent::get, form.fields().errors(problems, sent::get));
      }
      // What was typed stands, and may then be kept over what is new.
      case Refusal.Stale _ -> changedSince(context, form, sent::get);
      case Refusal.Clash(String what) -> again(context, HttpStatus.CONFLICT, form, sent::get, what);
      default -> throw refused;
    }
  }

  private void again(
      Context context, HttpStatus status, Form form, UnaryOperator<String> typed, String message) {
    context.status(status);
    show(context, form, typed, new FormErrors(List.of(new FormErrors.FormError("", message))));
  }

  private static StudioId studio(Context context) {
    return Leave.studio(context.pathParam("studio"));
  }
}
