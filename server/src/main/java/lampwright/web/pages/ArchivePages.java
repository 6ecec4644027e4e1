package lampwright.web.pages;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.List;
import lampwright.archive.Fault;
import lampwright.document.Form;
import lampwright.document.Forms;
import lampwright.document.Reading;
import lampwright.people.Permission;
import lampwright.people.Role;
import lampwright.people.StudioId;
import lampwright.tasks.Caller;
import lampwright.tasks.Importing;
import lampwright.tasks.Leave;
import lampwright.tasks.Refusal;
import lampwright.tasks.Refused;
import lampwright.tasks.Studios;
import lampwright.web.http.Door;
import lampwright.web.http.FormWithFile;

/** A studio out as an archive, and archives in, with true progress. */
public final class ArchivePages {

  private static final Form<Importing.Clashes> CLASHES = Forms.choice(Importing.Clashes.values());
  private static final long BYTES_PER_GB = 1L << 30;

  private final Door door;
  private final Studios studios;
  private final Importing importing;
  private final Templates templates;
  private final StudioLayouts layouts;

  public ArchivePages(
      Door door, Studios studios, Importing importing, Templates templates, StudioLayouts layouts) {
    this.door = door;
    this.studios = studios;
    this.importing = importing;
    this.templates = templates;
    this.layouts = layouts;
  }

  static String path(StudioId studio) {
    return "/studios/" + studio.text() + "/archive";
  }

  private static String importPath(StudioId studio, String id) {
    return "/studios/" + studio.text() + "/imports/" + id;
  }

  /** Shows both: {@code /studios/{studio}/archive}. */
  public void show(Context context) {
    show(context, studio(context), FormErrors.none());
  }

  private void show(Context context, StudioId studio, FormErrors errors) {
    Layout layout = layouts.named(context, studio, "studio.archive.heading");
    Role role = studios.role(door.caller(context), studio);
    templates.show(
        context,
        "archive",
        new ArchivePage(
            layout,
            role.may(Permission.MOVE_STUDIO) ? "/api" + path(studio) : "",
            role.may(Permission.KEEP_INDEX) ? IndexPages.path(studio) : "",
            new ArchivePage.BringIn(
                role.may(Permission.WRITE_SETUPS) ? path(studio) : "",
                door.csrfToken(context),
                Importing.MOST_BYTES / BYTES_PER_GB + " GB"),
            errors));
  }

  /** Receives an archive and leads to its plan, which is made meanwhile. */
  public void receive(Context context) {
    StudioId studio = studio(context);
    Caller caller = door.caller(context);
    importing.askToImport(caller, studio);
    if (!FormWithFile.is(context)) {
      throw new Refused(new Refusal.WrongContentType("multipart/form-data"));
    }
    FormWithFile form = FormWithFile.of(context);
    Importing.Clashes clashes =
        switch (CLASHES.read(form.get(ArchivePage.CLASHES))) {
          case Reading.Sound<Importing.Clashes>(Importing.Clashes chosen) -> chosen;
          case Reading.Faulty<Importing.Clashes> faulty -> Importing.Clashes.REFUSE;
        };
    try {
      Importing.Told told = importing.begin(caller, studio, clashes, form.file());
      context.redirect(importPath(studio, told.id()), HttpStatus.SEE_OTHER);
    } catch (Refused refused) {
      switch (refused.refusal()) {
        case Refusal.Clash(String what) -> again(context, studio, HttpStatus.CONFLICT, what);
        case Refusal.NotReadable(String message) ->
            again(context, studio, HttpStatus.BAD_REQUEST, message);
        default -> throw refused;
      }
    }
  }

  private void again(Context context, StudioId studio, HttpStatus status, String message) {
    context.status(status);
    show(
        context,
        studio,
        new FormErrors(List.of(new FormErrors.FormError(ArchivePage.FILE, message))));
  }

  /** Shows how far an import is: {@code /studios/{studio}/imports/{import}}. */
  public void showImport(Context context) {
    StudioId studio = studio(context);
    String id = context.pathParam("import");
    Importing.Told told = importing.get(door.caller(context), studio, id);
    Layout layout = layouts.named(context, studio, "studio.import.heading");
    ImportView view = new ImportView(layout.notation(), told);
    String path = importPath(studio, id);
    templates.show(
        context,
        "import",
        new ImportPage(
            layout,
            view.state(),
            view.sentence(),
            view.work("/api" + path),
            view.plan(),
            told.faults().stream().map(ArchivePages::sentence).toList(),
            view.canStart() ? path + "/execution" : "",
            view.canBeDiscarded() ? path + "/removal" : "",
            door.csrfToken(context),
            path,
            path(studio)));
  }

  private static String sentence(Fault fault) {
    String where =
        fault.file().isEmpty()
            ? ""
            : fault.file() + (fault.line() > 0 ? ", " + fault.line() : "") + ": ";
    return where + fault.message();
  }

  /** Carries an import out, and leads back to how far it is. */
  public void start(Context context) {
    StudioId studio = studio(context);
    String id = context.pathParam("import");
    importing.start(door.caller(context), studio, id);
    context.redirect(importPath(studio, id), HttpStatus.SEE_OTHER);
  }

  /** Forgets an import, or ends it before anything of it is kept. */
  public void discard(Context context) {
    StudioId studio = studio(context);
    importing.discard(door.caller(context), studio, context.pathParam("import"));
    context.redirect(path(studio), HttpStatus.SEE_OTHER);
  }

  private static StudioId studio(Context context) {
    return Leave.studio(context.pathParam("studio"));
  }
}
