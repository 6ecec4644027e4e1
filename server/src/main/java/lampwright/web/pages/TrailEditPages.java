package lampwright.web.pages;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import lampwright.document.Problem;
import lampwright.learning.drill.DrillKind;
import lampwright.learning.trail.Trail;
import lampwright.learning.trail.TrailId;
import lampwright.people.StudioId;
import lampwright.tasks.Caller;
import lampwright.tasks.Cataloguing;
import lampwright.tasks.KeptTrail;
import lampwright.tasks.Leave;
import lampwright.tasks.Once;
import lampwright.tasks.Refusal;
import lampwright.tasks.Refused;
import lampwright.tasks.TrailKeeping;
import lampwright.web.http.Body;
import lampwright.web.http.Door;
import lampwright.web.http.FormFields;
import lampwright.wording.Wording;

/** Where authors put trails together. */
public final class TrailEditPages {

  /** Others are named by their ids. */
  private static final int MOST_OFFERED = 500;

  private final Door door;
  private final Tasks tasks;
  private final Templates templates;
  private final StudioLayouts layouts;

  /** What these pages ask. */
  public record Tasks(TrailKeeping keeping, Cataloguing cataloguing) {}

  public TrailEditPages(Door door, Tasks tasks, Templates templates, StudioLayouts layouts) {
    this.door = door;
    this.tasks = tasks;
    this.templates = templates;
    this.layouts = layouts;
  }

  /** What stands in the form. */
  private record Content(
      int revision, String name, String about, String clearsFor, List<TrailEditPage.Row> rows) {

    static Content of(Optional<KeptTrail> trail) {
      return trail
          .map(
              kept ->
                  new Content(
                      kept.revision(),
                      kept.document().name(),
                      kept.document().about().orElse(""),
                      kept.document().clearsFor().orElse(""),
                      TrailFields.rows(kept.document().stages())))
          .orElseGet(() -> new Content(0, "", "", "", TrailFields.rows(List.of())));
    }

    static Content of(FormFields sent) {
      return new Content(
          TrailEditPages.revisionOf(sent).orElse(0),
          sent.get(TrailEditPage.NAME),
          sent.get(TrailEditPage.ABOUT),
          sent.get(TrailEditPage.CLEARS_FOR),
          TrailFields.rows(sent));
    }
  }

  private static Optional<Integer> revisionOf(FormFields sent) {
    String revision = sent.get(TrailEditPage.REVISION);
    return revision.matches("[1-9]\\d{0,8}")
        ? Optional.of(Integer.valueOf(revision))
        : Optional.empty();
  }

  /** Shows the form for a new one. */
  public void showNew(Context context) {
    StudioId studio = Leave.studio(context.pathParam("studio"));
    show(
        context,
        studio,
        TrailPages.path(studio) + "/new",
        Content.of(Optional.empty()),
        FormErrors.none());
  }

  /** Keeps a new one. */
  public void create(Context context) {
    StudioId studio = Leave.studio(context.pathParam("studio"));
    FormFields sent = Body.form(context);
    try {
      Trail trail = TrailFields.read(sent);
      KeptTrail kept = tasks.keeping().create(door.caller(context), studio, trail, Once.unkeyed());
      context.redirect(TrailPages.path(studio, kept.id()), HttpStatus.SEE_OTHER);
    } catch (Refused refused) {
      again(context, studio, TrailPages.path(studio) + "/new", sent, refused);
    }
  }

  /** Shows the form for one that is there. */
  public void showChange(Context context) {
    StudioId studio = Leave.studio(context.pathParam("studio"));
    TrailId id = TrailKeeping.id(context.pathParam("trail"));
    KeptTrail trail = tasks.keeping().get(door.caller(context), studio, id);
    show(
        context,
        studio,
        TrailPages.path(studio, id) + "/change",
        Content.of(Optional.of(trail)),
        FormErrors.none());
  }

  /** Keeps what was changed. */
  public void change(Context context) {
    StudioId studio = Leave.studio(context.pathParam("studio"));
    TrailId id = TrailKeeping.id(context.pathParam("trail"));
    FormFields sent = Body.form(context);
    try {
      tasks
          .keeping()
          .replace(
              door.caller(context),
              studio,
              id,
              Optional.of(revisionOf(sent).orElse(0)),
              TrailFields.read(sent));
      context.redirect(TrailPages.path(studio, id), HttpStatus.SEE_OTHER);
    } catch (Refused refused) {
      again(context, studio, TrailPages.path(studio, id) + "/change", sent, refused);
    }
  }

  /** What was typed is shown again with what is wrong about it. */
  private void again(
      Context context, StudioId studio, String action, FormFields sent, Refused refused) {
    Wording words = layouts.words(context);
    FormErrors errors =
        switch (refused.refusal()) {
          case Refusal.Invalid(List<Problem> problems) -> {
            context.status(HttpStatus.UNPROCESSABLE_CONTENT);
            yield new FormErrors(
                problems.stream()
                    .map(
                        one ->
                            new FormErrors.FormError(TrailFields.field(one, sent), one.message()))
                    .toList());
          }
          case Refusal.Stale _ -> {
            context.status(HttpStatus.PRECONDITION_FAILED);
            yield FormErrors.of(TrailEditPage.NAME, words.say("learning.edit.stale"));
          }
          case Refusal.Clash(String detail) -> {
            context.status(HttpStatus.CONFLICT);
            yield FormErrors.of(TrailEditPage.NAME, detail);
          }
          default -> throw refused;
        };
    show(context, studio, action, Content.of(sent), errors);
  }

  private void show(
      Context context, StudioId studio, String action, Content content, FormErrors errors) {
    Caller caller = door.caller(context);
    if (!tasks.keeping().mayWrite(caller, studio)) {
      throw Refused.notAllowed("Only authors and owners change trails.");
    }
    Layout layout =
        layouts.named(
            context,
            studio,
            content.revision() == 0 ? "learning.trails.new" : "learning.trail.change");
    Wording words = layout.words();
    templates.show(
        context,
        "trailForm",
        new TrailEditPage(
            layout,
            layout.title(),
            action,
            door.csrfToken(context),
            content.revision(),
            content.name(),
            content.about(),
            content.clearsFor(),
            content.rows(),
            tasks.cataloguing().titles(caller, studio, MOST_OFFERED).entrySet().stream()
                .map(one -> new TrailEditPage.Choice(one.getKey().text(), one.getValue()))
                .toList(),
            Arrays.stream(DrillKind.values())
                .map(kind -> new TrailEditPage.Choice(kind.word(), DrillPages.title(kind, words)))
                .toList(),
            errors));
  }
}
