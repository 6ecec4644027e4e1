package lampwright.web.pages;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import lampwright.document.Reading;
import lampwright.people.Ids;
import lampwright.people.StudioId;
import lampwright.setup.Occasion;
import lampwright.setup.SetupId;
import lampwright.setup.figures.FiguresComputation;
import lampwright.setup.notes.Note;
import lampwright.setup.takes.ComparedReading;
import lampwright.setup.takes.Take;
import lampwright.tasks.Caller;
import lampwright.tasks.Catalogued;
import lampwright.tasks.Cataloguing;
import lampwright.tasks.KeptNote;
import lampwright.tasks.Leave;
import lampwright.tasks.Listed;
import lampwright.tasks.LoggedTake;
import lampwright.tasks.NoteKeeping;
import lampwright.tasks.Once;
import lampwright.tasks.Refusal;
import lampwright.tasks.Refused;
import lampwright.tasks.TakeLogging;
import lampwright.web.http.Body;
import lampwright.web.http.Door;
import lampwright.web.http.FormFields;

/** The page on which a day is logged: takes, their readings, and notes. */
public final class TakePages {

  private static final DateTimeFormatter WHEN =
      DateTimeFormatter.ofPattern("HH:mm, d MMMM uuuu", Locale.ENGLISH);
  private static final String TEXT = "text";
  private static final int MOST_ON_A_PAGE = 20;

  private final Door door;
  private final Tasks tasks;
  private final Ids ids;
  private final Clock clock;
  private final Templates templates;
  private final StudioLayouts layouts;

  /** What a page of the day asks. */
  public record Tasks(Cataloguing cataloguing, TakeLogging takes, NoteKeeping notes) {}

  /**
   * @param ids makes the key by which a form that is sent twice is one take
   * @param clock fills in when a take is
   */
  public TakePages(
      Door door, Tasks tasks, Ids ids, Clock clock, Templates templates, StudioLayouts layouts) {
    this.door = door;
    this.tasks = tasks;
    this.ids = ids;
    this.clock = clock;
    this.templates = templates;
    this.layouts = layouts;
  }

  /** What somebody typed, and what is wrong with it. */
  private record Typed(Optional<FormFields> take, String note, FormErrors errors) {

    static Typed nothing() {
      return new Typed(Optional.empty(), "", FormErrors.none());
    }
  }

  /** Shows it: {@code /studios/{studio}/setups/{setup}/takes}. */
  public void show(Context context) {
    show(context, Typed.nothing());
  }

  private void show(Context context, Typed typed) {
    Caller caller = door.caller(context);
    StudioId studio = Leave.studio(context.pathParam("studio"));
    SetupId id = Cataloguing.id(context.pathParam("setup"));
    Catalogued setup = tasks.cataloguing().get(caller, studio, id);
    boolean mayLog = tasks.takes().mayLog(caller, studio);
    Optional<String> cursor = Optional.ofNullable(context.queryParam("cursor"));
    Listed<LoggedTake> takes =
        tasks
            .takes()
            .list(
                caller,
                studio,
                id,
                new TakeLogging.Wish(
                    Optional.empty(), Optional.empty(), new Listed.Wish(cursor, MOST_ON_A_PAGE)));
    String path = takesPath(studio, id);
    templates.show(
        context,
        "takes",
        new TakesPage(
            layouts.of(context, studio, "Takes of " + setup.document().title()),
            setup.document().title(),
            SetupPages.setupPath(studio, id),
            mayLog ? Optional.of(form(context, path, setup, typed)) : Optional.empty(),
            takes.items().stream().map(take -> card(context, path, mayLog, take)).toList(),
            takes.next().map(next -> Address.of(path).with("cursor", next).text()).orElse(""),
            tasks.notes().list(caller, studio, id, Listed.Wish.first()).items().stream()
                .map(TakePages::note)
                .toList(),
            mayLog
                ? Optional.of(
                    new TakesPage.NoteForm(
                        SetupPages.setupPath(studio, id) + "/notes",
                        door.csrfToken(context),
                        typed.note(),
                        typed.take().isEmpty() ? typed.errors() : FormErrors.none()))
                : Optional.empty()));
  }

  private TakeForm form(Context context, String path, Catalogued setup, Typed typed) {
    TakeFields fields = new TakeFields(FiguresComputation.of(setup.document()));
    String token = door.csrfToken(context);
    return typed
        .take()
        .map(sent -> fields.form(path, token, setup.revision(), sent::get, typed.errors()))
        .orElseGet(() -> fields.form(path, token, ids.next(), setup.revision(), nowAt(setup)));
  }

  private OffsetDateTime nowAt(Catalogued setup) {
    return clock
        .instant()
        .atOffset(setup.document().occasion().flatMap(Occasion::utcOffset).orElse(ZoneOffset.UTC));
  }

  private TakesPage.TakeCard card(Context context, String path, boolean mayLog, LoggedTake take) {
    Take document = take.document();
    return new TakesPage.TakeCard(
        "take-" + take.id(),
        take.label(),
        WHEN.format(document.at()),
        switch (document.kept()) {
          case YES -> "Kept";
          case NO -> "Not kept";
          case UNDECIDED -> "Not judged yet";
        },
        document.why().orElse(""),
        document.changed().orElse(""),
        take.readings().stream().map(TakePages::line).toList(),
        mayLog
            ? Optional.of(
                new TakesPage.Judge(
                    path + "/" + take.id(),
                    door.csrfToken(context),
                    take.revision(),
                    document.why().orElse("")))
            : Optional.empty());
  }

  private static TakesPage.ReadingLine line(ComparedReading of) {
    return new TakesPage.ReadingLine(
        TakeFields.name(of.reading().light()),
        of.reading().meter().fNumber().tenthsText(),
        of.expected().map(level -> level.reading().tenthsText()).orElse("not known"),
        of.uncertainty().map(Wording::giveOrTake).orElse(""),
        of.sentence());
  }

  private static TakesPage.NoteCard note(KeptNote note) {
    return new TakesPage.NoteCard(
        note.document().text(),
        note.by() + ", " + WHEN.format(note.at().atOffset(ZoneOffset.UTC)) + " universal time",
        note.document().about().map(TakePages::about).orElse(""));
  }

  private static String about(Note.About about) {
    return switch (about) {
      case Note.About.OfLight(var light) -> "On the light " + light;
      case Note.About.OfPicture picture -> "On a picture";
    };
  }

  /** Logs a take: a form to {@code /studios/{studio}/setups/{setup}/takes}. */
  public void log(Context context) {
    Caller caller = door.caller(context);
    StudioId studio = Leave.studio(context.pathParam("studio"));
    SetupId id = Cataloguing.id(context.pathParam("setup"));
    FormFields sent = Body.form(context);
    TakeFields fields =
        new TakeFields(
            FiguresComputation.of(tasks.cataloguing().get(caller, studio, id).document()));
    try {
      Take take =
          switch (fields.read(sent::get)) {
            case Reading.Sound<Take>(Take value) -> value;
            case Reading.Faulty<Take> faulty -> throw Refused.invalid(faulty.problems());
          };
      tasks.takes().log(caller, studio, id, take);
      context.redirect(takesPath(studio, id), HttpStatus.SEE_OTHER);
    } catch (Refused refused) {
      if (!(refused.refusal() instanceof Refusal.Invalid(var problems))) {
        throw refused;
      }
      context.status(HttpStatus.UNPROCESSABLE_CONTENT);
      show(context, new Typed(Optional.of(sent), "", fields.errors(problems, sent::get)));
    }
  }

  /** Judges a take: a form to {@code /studios/{studio}/setups/{setup}/takes/{take}}. */
  public void judge(Context context) {
    Caller caller = door.caller(context);
    StudioId studio = Leave.studio(context.pathParam("studio"));
    SetupId id = Cataloguing.id(context.pathParam("setup"));
    FormFields sent = Body.form(context);
    LoggedTake take =
        tasks.takes().get(caller, studio, id, TakeLogging.id(context.pathParam("take")));
    Take old = take.document();
    String revision = sent.get(TakeForm.REVISION);
    int basedOn = revision.matches("[1-9]\\d{0,8}") ? Integer.parseInt(revision) : 0;
    tasks.takes().replace(caller, studio, id, take.id(), basedOn, judged(old, sent));
    context.redirect(takesPath(studio, id) + "#take-" + take.id(), HttpStatus.SEE_OTHER);
  }

  private static Take judged(Take old, FormFields sent) {
    Map<String, Object> json = new LinkedHashMap<>(Take.FORM.writeObject(old));
    json.put("kept", sent.get(TakeForm.KEPT));
    String why = sent.get(TakeForm.WHY).strip();
    if (why.isEmpty()) {
      json.remove("why");
    } else {
      json.put("why", why);
    }
    return switch (Take.FORM.read(json)) {
      case Reading.Sound<Take>(Take value) -> value;
      case Reading.Faulty<Take> faulty -> throw Refused.invalid(faulty.problems());
    };
  }

  /** Whoever comes to a form's own address is led to the log. */
  public void showLog(Context context) {
    StudioId studio = Leave.studio(context.pathParam("studio"));
    SetupId id = Cataloguing.id(context.pathParam("setup"));
    context.redirect(takesPath(studio, id), HttpStatus.SEE_OTHER);
  }

  /** Keeps a note: a form to {@code /studios/{studio}/setups/{setup}/notes}. */
  public void note(Context context) {
    Caller caller = door.caller(context);
    StudioId studio = Leave.studio(context.pathParam("studio"));
    SetupId id = Cataloguing.id(context.pathParam("setup"));
    String text = Body.form(context).get(TEXT);
    try {
      Note note =
          switch (Note.FORM.read(Map.of("text", text))) {
            case Reading.Sound<Note>(Note value) -> value;
            case Reading.Faulty<Note> faulty -> throw Refused.invalid(faulty.problems());
          };
      tasks.notes().create(caller, studio, id, note, Once.unkeyed());
      context.redirect(takesPath(studio, id) + "#notes", HttpStatus.SEE_OTHER);
    } catch (Refused refused) {
      if (!(refused.refusal() instanceof Refusal.Invalid(var problems))) {
        throw refused;
      }
      context.status(HttpStatus.UNPROCESSABLE_CONTENT);
      List<FormErrors.FormError> errors =
          problems.stream().map(of -> new FormErrors.FormError(TEXT, of.message())).toList();
      show(context, new Typed(Optional.empty(), text, new FormErrors(errors)));
    }
  }

  static String takesPath(StudioId studio, SetupId setup) {
    return SetupPages.setupPath(studio, setup) + "/takes";
  }
}
