package lampwright.web.pages;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import lampwright.people.Ids;
import lampwright.people.StudioId;
import lampwright.setup.Occasion;
import lampwright.setup.SetupDocument;
import lampwright.setup.SetupId;
import lampwright.setup.figures.FiguresComputation;
import lampwright.setup.notes.Note;
import lampwright.setup.takes.TakeId;
import lampwright.tasks.Caller;
import lampwright.tasks.Catalogued;
import lampwright.tasks.KeptNote;
import lampwright.tasks.Listed;
import lampwright.tasks.LoggedTake;
import lampwright.tasks.TakeLogging;
import lampwright.web.http.Door;
import lampwright.web.http.FormFields;
import lampwright.wording.Wording;

/** Puts the log of the day together: takes, the form for the next one, and notes. */
final class TakesView {

  static final String WITHDRAWN = "withdrawn";

  private static final int MOST_ON_A_PAGE = 20;

  private final Door door;
  private final TakePages.Tasks tasks;
  private final Ids ids;
  private final Clock clock;
  private final StudioLayouts layouts;

  /**
   * @param ids makes the key by which a form that is sent twice is one take
   * @param clock says when a take is
   */
  TakesView(Door door, TakePages.Tasks tasks, Ids ids, Clock clock, StudioLayouts layouts) {
    this.door = door;
    this.tasks = tasks;
    this.ids = ids;
    this.clock = clock;
    this.layouts = layouts;
  }

  /** What somebody typed, and what is wrong with it. */
  sealed interface Typed {

    record Nothing() implements Typed {}

    /**
     * A take.
     *
     * @param isLoggedAlready whether its key is that of another take
     */
    record ATake(FormFields sent, FormErrors errors, boolean isLoggedAlready) implements Typed {}

    record ACorrection(TakeId take, FormFields sent, FormErrors errors) implements Typed {}

    record AKeeping(TakeId take, KeepingForm.Refusal refusal) implements Typed {}

    record ANote(String text, FormErrors errors) implements Typed {}
  }

  /**
   * One request about the takes of a setup.
   *
   * @param path of the log
   */
  record Asked(
      Context context, Caller caller, StudioId studio, SetupId setup, String path, Wording words) {

    TakeId take() {
      return TakeLogging.id(context.pathParam("take"));
    }

    void lead(String to) {
      context.redirect(to, HttpStatus.SEE_OTHER);
    }
  }

  /** The page, with what was typed where it was refused. */
  TakesPage page(Asked asked, Typed typed) {
    Context context = asked.context();
    Wording words = asked.words();
    Catalogued setup = tasks.cataloguing().get(asked.caller(), asked.studio(), asked.setup());
    TakeLogging.May may = tasks.takes().may(asked.caller(), asked.studio());
    Optional<String> cursor = Optional.ofNullable(context.queryParam("cursor"));
    Listed<LoggedTake> takes =
        tasks
            .takes()
            .list(
                asked.caller(),
                asked.studio(),
                asked.setup(),
                new TakeLogging.Wish(
                    Optional.empty(), Optional.empty(), new Listed.Wish(cursor, MOST_ON_A_PAGE)));
    List<TakesPage.TakeCard> cards =
        takes.items().stream()
            .map(take -> card(asked, may, take, typed, setup.revision()))
            .toList();
    int first = cursor.isEmpty() ? Math.min(1, cards.size()) : 0;
    return new TakesPage(
        layouts.of(context, asked.studio(), words.say("pages.takes.of", setup.document().title())),
        setup.document().title(),
        SetupPages.setupPath(asked.studio(), asked.setup()),
        Optional.ofNullable(context.queryParam(WITHDRAWN))
            .filter(number -> number.matches("\\d{1,6}"))
            .map(number -> words.say("pages.takes.withdrawn", number))
            .orElse(""),
        cards.stream().limit(first).findFirst(),
        may.log() ? Optional.of(form(asked, setup, typed)) : Optional.empty(),
        cards.subList(first, cards.size()),
        takes.next().map(next -> Address.of(asked.path()).with("cursor", next).text()).orElse(""),
        tasks
            .notes()
            .list(asked.caller(), asked.studio(), asked.setup(), Listed.Wish.first())
            .items()
            .stream()
            .map(note -> note(note, words))
            .toList(),
        may.log() ? Optional.of(noteForm(asked, typed)) : Optional.empty());
  }

  private TakesPage.NoteForm noteForm(Asked asked, Typed typed) {
    String action = SetupPages.setupPath(asked.studio(), asked.setup()) + "/notes";
    String token = door.csrfToken(asked.context());
    return typed instanceof Typed.ANote(String text, FormErrors errors)
        ? new TakesPage.NoteForm(action, token, text, errors)
        : new TakesPage.NoteForm(action, token, "", FormErrors.none());
  }

  private TakeForm form(Asked asked, Catalogued setup, Typed typed) {
    TakeFields fields = new TakeFields(FiguresComputation.of(setup.document()), asked.words());
    OffsetDateTime now = nowAt(setup.document());
    String key =
        typed instanceof Typed.ATake take && !take.isLoggedAlready()
            ? take.sent().get(TakeForm.CLIENT_KEY)
            : ids.next();
    TakeFields.Frame frame =
        new TakeFields.Frame(
            asked.path(),
            door.csrfToken(asked.context()),
            tasks
                .takes()
                .nextNumber(asked.caller(), asked.studio(), asked.setup(), now.toLocalDate()),
            key,
            setup.revision(),
            now.getOffset());
    return typed instanceof Typed.ATake take
        ? fields.form(frame, take.sent()::get, take.errors())
        : fields.form(frame, _ -> "", FormErrors.none());
  }

  /** Now, by the clocks of the place. */
  OffsetDateTime nowAt(SetupDocument setup) {
    return clock
        .instant()
        .atOffset(setup.occasion().flatMap(Occasion::utcOffset).orElse(ZoneOffset.UTC));
  }

  private TakesPage.TakeCard card(
      Asked asked, TakeLogging.May may, LoggedTake take, Typed typed, int setupRevision) {
    boolean mayKeep = may.keepReadings() && !take.document().readings().isEmpty();
    return new TakeCards(asked.words())
        .card(
            take,
            may.log() ? Optional.of(correction(asked, may, take, typed)) : Optional.empty(),
            mayKeep ? Optional.of(keeping(asked, take, typed, setupRevision)) : Optional.empty());
  }

  private KeepingForm keeping(Asked asked, LoggedTake take, Typed typed, int setupRevision) {
    return KeepingForm.of(
        take,
        asked.path() + "/" + take.id() + "/readings",
        door.csrfToken(asked.context()),
        setupRevision,
        typed instanceof Typed.AKeeping of && of.take().equals(take.id())
            ? Optional.of(of.refusal())
            : Optional.empty());
  }

  private TakesPage.Correction correction(
      Asked asked, TakeLogging.May may, LoggedTake take, Typed typed) {
    TakeFields fields = fields(take, asked.words());
    boolean mayWithdraw = may.deleteAny() || take.creator().equals(asked.caller().person().id());
    boolean isAgain = typed instanceof Typed.ACorrection of && of.take().equals(take.id());
    return TakeCards.correction(
        asked.path() + "/" + take.id(),
        door.csrfToken(asked.context()),
        take,
        mayWithdraw,
        fields,
        isAgain && typed instanceof Typed.ACorrection of
            ? of.sent()::get
            : fields.written(take.document()),
        isAgain && typed instanceof Typed.ACorrection of ? of.errors() : FormErrors.none());
  }

  /** The fields of the form that corrects a take. */
  static TakeFields fields(LoggedTake take, Wording words) {
    return new TakeFields(FiguresComputation.of(take.shot()), words);
  }

  private static TakesPage.NoteCard note(KeptNote note, Wording words) {
    return new TakesPage.NoteCard(
        note.document().text(),
        new WhoWords(words).who(note.by())
            + ", "
            + words.say(
                "pages.common.universal",
                new TakeCards(words).when(note.at().atOffset(ZoneOffset.UTC))),
        note.document().about().map(about -> about(about, words)).orElse(""));
  }

  private static String about(Note.About about, Wording words) {
    return switch (about) {
      case Note.About.OfLight(var light) -> words.say("pages.takes.onLight", light);
      case Note.About.OfPicture _ -> words.say("pages.takes.onPicture");
    };
  }
}
