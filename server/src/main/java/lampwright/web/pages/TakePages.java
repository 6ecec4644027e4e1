package lampwright.web.pages;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.LinkedHashMap;
import java.util.List;
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
import lampwright.wording.Wording;

/** The page on which a day is logged: takes, their readings, and notes. */
public final class TakePages {

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
    Wording words = layouts.words(context);
    Layout layout =
        layouts.of(context, studio, words.say("pages.takes.of", setup.document().title()));
    templates.show(
        context,
        "takes",
        new TakesPage(
            layout,
            setup.document().title(),
            SetupPages.setupPath(studio, id),
            mayLog
                ? Optional.of(form(context, path, setup, typed, layout.words()))
                : Optional.empty(),
            takes.items().stream()
                .map(take -> card(context, path, mayLog, take, layout.words()))
                .toList(),
            takes.next().map(next -> Address.of(path).with("cursor", next).text()).orElse(""),
            tasks.notes().list(caller, studio, id, Listed.Wish.first()).items().stream()
                .map(note -> note(note, words))
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

  private TakeForm form(
      Context context, String path, Catalogued setup, Typed typed, Wording words) {
    TakeFields fields = new TakeFields(FiguresComputation.of(setup.document()), words);
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

  private TakesPage.TakeCard card(
      Context context, String path, boolean mayLog, LoggedTake take, Wording words) {
    Take document = take.document();
    return new TakesPage.TakeCard(
        "take-" + take.id(),
        take.label(),
        when(document.at(), words),
        switch (document.kept()) {
          case YES -> words.say("pages.takes.kept");
          case NO -> words.say("pages.takes.notKept");
          case UNDECIDED -> words.say("pages.takes.undecided");
        },
        document.why().orElse(""),
        document.changed().orElse(""),
        take.readings().stream().map(reading -> line(reading, words)).toList(),
        mayLog
            ? Optional.of(
                new TakesPage.Judge(
                    path + "/" + take.id(),
                    door.csrfToken(context),
                    take.revision(),
                    document.why().orElse("")))
            : Optional.empty());
  }

  private static TakesPage.ReadingLine line(ComparedReading of, Wording words) {
    return new TakesPage.ReadingLine(
        TakeFields.name(of.reading().light()),
        words.reading(of.reading().meter().fNumber()),
        of.expected().map(level -> words.reading(level.reading())).orElseGet(words::notKnown),
        of.uncertainty().map(words::giveOrTake).orElse(""),
        of.sentence());
  }

  private static TakesPage.NoteCard note(KeptNote note, Wording words) {
    return new TakesPage.NoteCard(
        note.document().text(),
        note.by()
            + ", "
            + words.say("pages.common.universal", when(note.at().atOffset(ZoneOffset.UTC), words)),
        note.document().about().map(about -> about(about, words)).orElse(""));
  }

  private static String when(OffsetDateTime at, Wording words) {
    return new DayWords(words).timeAndDay(at.toLocalTime(), at.toLocalDate());
  }

  private static String about(Note.About about, Wording words) {
    return switch (about) {
      case Note.About.OfLight(var light) -> words.say("pages.takes.onLight", light);
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
            FiguresComputation.of(tasks.cataloguing().get(caller, studio, id).document()),
            layouts.words(context));
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
