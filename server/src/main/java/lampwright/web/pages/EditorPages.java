package lampwright.web.pages;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import lampwright.document.Reading;
import lampwright.drawing.Plan;
import lampwright.language.Notation;
import lampwright.people.StudioId;
import lampwright.setup.SetupDocument;
import lampwright.setup.SetupId;
import lampwright.setup.figures.FiguresComputation;
import lampwright.tasks.Caller;
import lampwright.tasks.Catalogued;
import lampwright.tasks.Cataloguing;
import lampwright.tasks.Editing;
import lampwright.tasks.Leave;
import lampwright.tasks.Message;
import lampwright.tasks.Once;
import lampwright.tasks.Refusal;
import lampwright.tasks.Refused;
import lampwright.web.http.Body;
import lampwright.web.http.Door;
import lampwright.web.http.FormFields;

/**
 * The pages on which one makes and changes setups. Without script a form of the essentials is sent;
 * with it the script saves by the API, as any program does.
 */
public final class EditorPages {

  private static final String REVISION = "revision";
  private static final String FROM = "from";

  private final Door door;
  private final Tasks tasks;
  private final Templates templates;
  private final StudioLayouts layouts;

  /** What these pages ask for. */
  public record Tasks(Editing editing, Cataloguing cataloguing) {}

  public EditorPages(Door door, Tasks tasks, Templates templates, StudioLayouts layouts) {
    this.door = door;
    this.tasks = tasks;
    this.templates = templates;
    this.layouts = layouts;
  }

  /**
   * What is edited.
   *
   * @param id absent for a new one
   * @param from what a new one is made from
   * @param document as it is now, or as a new one begins
   */
  private record Sheet(
      StudioId studio,
      Optional<SetupId> id,
      Optional<Catalogued> from,
      int revision,
      SetupDocument document,
      Editing.Desk desk) {

    String path() {
      return id.map(of -> SetupPages.setupPath(studio, of)).orElse(SetupPages.findPath(studio));
    }

    String action() {
      return id.isPresent()
          ? path() + "/edit"
          : path() + "/new" + from.map(of -> "?" + FROM + "=" + of.id().text()).orElse("");
    }

    String parentQuery() {
      return from.map(of -> "?parent=" + of.id().text() + "&parent_revision=" + of.revision())
          .orElse("");
    }
  }

  /** Shows one that is there: {@code /studios/{studio}/setups/{setup}/edit}. */
  public void show(Context context) {
    Sheet sheet = sheet(context);
    EditorFields fields = new EditorFields(sheet.document(), notation(context));
    show(context, sheet, fields, fields::filled, sheet.revision(), FormErrors.none());
  }

  private Notation notation(Context context) {
    return layouts.words(context).notation();
  }

  private Sheet sheet(Context context) {
    StudioId studio = Leave.studio(context.pathParam("studio"));
    SetupId id = Cataloguing.id(context.pathParam("setup"));
    Editing.Desk desk = tasks.editing().open(door.caller(context), studio, id);
    Catalogued setup = desk.setup().orElseThrow(Refused::notFound);
    return new Sheet(
        studio, Optional.of(id), Optional.empty(), setup.revision(), setup.document(), desk);
  }

  /** Shows a new one: {@code /studios/{studio}/setups/new}, with {@code ?from=} a child of that. */
  public void showNew(Context context) {
    Sheet sheet = newSheet(context);
    EditorFields fields = new EditorFields(sheet.document(), notation(context));
    show(context, sheet, fields, fields::filled, 0, FormErrors.none());
  }

  private Sheet newSheet(Context context) {
    StudioId studio = Leave.studio(context.pathParam("studio"));
    Caller caller = door.caller(context);
    String from = context.queryParam(FROM);
    Editing.Desk desk =
        from == null
            ? tasks.editing().openNew(caller, studio)
            : tasks.editing().open(caller, studio, Cataloguing.id(from));
    SetupDocument document =
        desk.setup()
            .map(of -> EditorStart.from(of.document()))
            .orElseGet(() -> EditorStart.fromNothing(desk.gear(), notation(context)));
    return new Sheet(studio, Optional.empty(), desk.setup(), 0, document, desk);
  }

  private void show(
      Context context,
      Sheet sheet,
      EditorFields fields,
      UnaryOperator<String> typed,
      int revision,
      FormErrors errors) {
    Notation notation = notation(context);
    String heading =
        sheet.id().isPresent()
            ? notation.say("editor.heading", sheet.document().title())
            : notation.say("editor.heading.new");
    String csrfToken = door.csrfToken(context);
    EditorData data =
        new EditorData(
            sheet.studio().text(),
            sheet.id().map(SetupId::text).orElse(""),
            sheet.parentQuery(),
            door.caller(context).person().id(),
            sheet.revision(),
            csrfToken,
            sheet.document(),
            sheet.desk().gear(),
            sheet.desk().locations(),
            notation);
    templates.show(
        context,
        "editor",
        new EditorPage(
            layouts.of(context, sheet.studio(), heading),
            notation,
            heading,
            sheet.action(),
            sheet.path(),
            csrfToken,
            revision,
            typed.apply(EditorFields.TITLE),
            typed.apply(EditorFields.GENRE),
            typed.apply(EditorFields.INTENT),
            typed.apply(EditorFields.MOODS),
            fields.groups(typed),
            Optional.of(
                Plan.of(sheet.document(), FiguresComputation.of(sheet.document()), notation)),
            errors,
            data.json()));
  }

  /** Saves the form of one that is there. */
  public void save(Context context) {
    Sheet sheet = sheet(context);
    FormFields sent = Body.form(context);
    EditorFields fields = new EditorFields(sheet.document(), notation(context));
    int basedOn = revision(sent);
    try {
      tasks
          .cataloguing()
          .replace(
              door.caller(context),
              sheet.studio(),
              sheet.id().orElseThrow(Refused::notFound),
              Optional.of(basedOn),
              sound(fields.read(sent::get)),
              Message.none());
      context.redirect(sheet.path(), HttpStatus.SEE_OTHER);
    } catch (Refused refused) {
      again(context, sheet, fields, sent, refused);
    }
  }

  /** Keeps the form of a new one. */
  public void create(Context context) {
    Sheet sheet = newSheet(context);
    FormFields sent = Body.form(context);
    EditorFields fields = new EditorFields(sheet.document(), notation(context));
    try {
      Catalogued made =
          tasks
              .cataloguing()
              .create(
                  door.caller(context),
                  sheet.studio(),
                  sound(fields.read(sent::get)),
                  sheet
                      .from()
                      .map(of -> new Cataloguing.From(of.id().text(), Optional.of(of.revision()))),
                  Message.none(),
                  Once.unkeyed());
      context.redirect(SetupPages.setupPath(sheet.studio(), made.id()), HttpStatus.SEE_OTHER);
    } catch (Refused refused) {
      again(context, sheet, fields, sent, refused);
    }
  }

  /** The one that was looked at; where the form does not say, none that there is. */
  private static int revision(FormFields sent) {
    String written = sent.get(REVISION);
    return written.matches("[1-9]\\d{0,8}") ? Integer.parseInt(written) : 0;
  }

  private static SetupDocument sound(Reading<SetupDocument> reading) {
    return switch (reading) {
      case Reading.Sound<SetupDocument>(SetupDocument value) -> value;
      case Reading.Faulty<SetupDocument> faulty -> throw Refused.invalid(faulty.problems());
    };
  }

  /** Shows the form as it was sent, with what is wrong with it. */
  private void again(
      Context context, Sheet sheet, EditorFields fields, FormFields sent, Refused refused) {
    boolean stale = refused.refusal() instanceof Refusal.Stale;
    FormErrors errors =
        switch (refused.refusal()) {
          case Refusal.Invalid(var problems) -> fields.errors(problems);
          case Refusal.Stale _ ->
              new FormErrors(
                  List.of(
                      new FormErrors.FormError("", notation(context).say("editor.plain.stale"))));
          default -> throw refused;
        };
    context.status(stale ? HttpStatus.PRECONDITION_FAILED : HttpStatus.UNPROCESSABLE_CONTENT);
    // Whoever has read what is new may then keep theirs over it.
    int basedOn = stale ? sheet.revision() : revision(sent);
    show(context, sheet, fields, sent::get, basedOn, errors);
  }
}
