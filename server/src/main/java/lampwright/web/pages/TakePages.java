package lampwright.web.pages;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import lampwright.document.Problem;
import lampwright.document.Reading;
import lampwright.people.Ids;
import lampwright.people.StudioId;
import lampwright.setup.LightId;
import lampwright.setup.SetupDocument;
import lampwright.setup.SetupId;
import lampwright.setup.figures.FiguresComputation;
import lampwright.setup.notes.Note;
import lampwright.setup.takes.Take;
import lampwright.tasks.Catalogued;
import lampwright.tasks.Cataloguing;
import lampwright.tasks.GearMetering;
import lampwright.tasks.KeptGear;
import lampwright.tasks.Leave;
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

  private static final String TEXT = "text";

  private final Door door;
  private final Tasks tasks;
  private final Templates templates;
  private final StudioLayouts layouts;
  private final TakesView view;

  /** What a page of the day asks. */
  public record Tasks(
      Cataloguing cataloguing, TakeLogging takes, NoteKeeping notes, GearMetering metering) {}

  /**
   * @param ids makes the key by which a form that is sent twice is one take
   * @param clock fills in when a take is
   */
  public TakePages(
      Door door, Tasks tasks, Ids ids, Clock clock, Templates templates, StudioLayouts layouts) {
    this.door = door;
    this.tasks = tasks;
    this.templates = templates;
    this.layouts = layouts;
    this.view = new TakesView(door, tasks, ids, clock, layouts);
  }

  private TakesView.Asked asked(Context context) {
    StudioId studio = Leave.studio(context.pathParam("studio"));
    SetupId setup = Cataloguing.id(context.pathParam("setup"));
    return new TakesView.Asked(
        context,
        door.caller(context),
        studio,
        setup,
        takesPath(studio, setup),
        layouts.words(context));
  }

  /** Shows it: {@code /studios/{studio}/setups/{setup}/takes}. */
  public void show(Context context) {
    show(asked(context), new TakesView.Typed.Nothing());
  }

  private void show(TakesView.Asked asked, TakesView.Typed typed) {
    templates.show(asked.context(), "takes", view.page(asked, typed));
  }

  /** Logs a take: a form to {@code /studios/{studio}/setups/{setup}/takes}. */
  public void log(Context context) {
    TakesView.Asked asked = asked(context);
    FormFields sent = Body.form(context);
    SetupDocument setup =
        tasks.cataloguing().get(asked.caller(), asked.studio(), asked.setup()).document();
    TakeFields fields = new TakeFields(FiguresComputation.of(setup), asked.words());
    try {
      Take take = sound(fields.read(sent::get, view.nowAt(setup)));
      TakeLogging.Logged logged =
          tasks.takes().logAsSent(asked.caller(), asked.studio(), asked.setup(), take);
      asked.lead(asked.path() + "#" + TakeCards.place(logged.take()));
    } catch (Refused refused) {
      List<Problem> problems = problems(refused);
      boolean isLoggedAlready =
          problems.stream().anyMatch(of -> of.pointer().equals(TakeLogging.CLIENT_KEY));
      FormErrors errors =
          isLoggedAlready
              ? FormErrors.of("", asked.words().say("pages.takes.loggedAlready"))
              : fields.errors("", problems, sent::get);
      again(asked, new TakesView.Typed.ATake(sent, errors, isLoggedAlready));
    }
  }

  private static <T> T sound(Reading<T> reading) {
    return switch (reading) {
      case Reading.Sound<T>(T value) -> value;
      case Reading.Faulty<T> faulty -> throw Refused.invalid(faulty.problems());
    };
  }

  /** What is wrong with what was typed; all other refusals go on. */
  private static List<Problem> problems(Refused refused) {
    if (refused.refusal() instanceof Refusal.Invalid(var problems)) {
      return problems;
    }
    throw refused;
  }

  private void again(TakesView.Asked asked, TakesView.Typed typed) {
    asked.context().status(HttpStatus.UNPROCESSABLE_CONTENT);
    show(asked, typed);
  }

  /** Corrects a take: a form to {@code /studios/{studio}/setups/{setup}/takes/{take}}. */
  public void correct(Context context) {
    TakesView.Asked asked = asked(context);
    FormFields sent = Body.form(context);
    LoggedTake take =
        tasks.takes().get(asked.caller(), asked.studio(), asked.setup(), asked.take());
    TakeFields fields = TakesView.fields(take, asked.words());
    try {
      tasks
          .takes()
          .replace(
              asked.caller(),
              asked.studio(),
              asked.setup(),
              take.id(),
              basedOn(sent),
              sound(fields.corrected(take.document(), sent::get)));
      asked.lead(asked.path() + "#" + TakeCards.place(take));
    } catch (Refused refused) {
      FormErrors errors = fields.errors("-" + TakeCards.place(take), problems(refused), sent::get);
      again(asked, new TakesView.Typed.ACorrection(take.id(), sent, errors));
    }
  }

  /** Takes a take back: a form to {@code …/takes/{take}/withdrawal}. */
  public void withdraw(Context context) {
    TakesView.Asked asked = asked(context);
    FormFields sent = Body.form(context);
    LoggedTake take =
        tasks.takes().get(asked.caller(), asked.studio(), asked.setup(), asked.take());
    tasks.takes().delete(asked.caller(), asked.studio(), asked.setup(), take.id(), basedOn(sent));
    asked.lead(
        Address.of(asked.path()).with(TakesView.WITHDRAWN, Integer.toString(take.number())).text());
  }

  /**
   * Keeps readings of a take with the setup, or with its heads: a form to {@code
   * …/takes/{take}/readings}.
   */
  public void keepReadings(Context context) {
    TakesView.Asked asked = asked(context);
    FormFields sent = Body.form(context);
    LoggedTake take =
        tasks.takes().get(asked.caller(), asked.studio(), asked.setup(), asked.take());
    List<LightId> chosen = KeepingForm.chosen(take, field -> !sent.get(field).isEmpty());
    if (chosen.isEmpty()) {
      again(asked, refused(take, chosen, KeepingForm.nothingChosen(asked.words())));
      return;
    }
    try {
      asked.lead(
          sent.get(KeepingForm.INTO).equals(KeepingForm.GEAR)
              ? intoGear(asked, take, chosen)
              : intoSetup(asked, take, chosen, sent));
    } catch (Refused refused) {
      if (refused.refusal() instanceof Refusal.Stale) {
        asked.context().status(HttpStatus.PRECONDITION_FAILED);
        show(
            asked,
            refused(
                take, chosen, FormErrors.of("", asked.words().say("pages.setup.changedSince"))));
        return;
      }
      again(
          asked,
          refused(
              take,
              chosen,
              new FormErrors(
                  problems(refused).stream()
                      .map(of -> new FormErrors.FormError("", of.message()))
                      .toList())));
    }
  }

  private static TakesView.Typed refused(LoggedTake take, List<LightId> chosen, FormErrors errors) {
    return new TakesView.Typed.AKeeping(take.id(), new KeepingForm.Refusal(chosen, errors));
  }

  private String intoSetup(
      TakesView.Asked asked, LoggedTake take, List<LightId> chosen, FormFields sent) {
    Catalogued changed =
        tasks
            .takes()
            .calibrate(
                asked.caller(),
                asked.studio(),
                asked.setup(),
                take.id(),
                revision(sent, KeepingForm.SETUP_REVISION),
                chosen);
    return SetupPages.setupPath(asked.studio(), changed.id()) + "#lights";
  }

  private String intoGear(TakesView.Asked asked, LoggedTake take, List<LightId> chosen) {
    List<KeptGear> heads =
        tasks.metering().keep(asked.caller(), asked.studio(), asked.setup(), take.id(), chosen);
    String gear = GearPages.path(asked.studio());
    return heads.size() == 1 ? gear + "/" + heads.getFirst().id() : gear;
  }

  private static int basedOn(FormFields sent) {
    return revision(sent, TakeForm.REVISION);
  }

  private static int revision(FormFields sent, String field) {
    String revision = sent.get(field);
    return revision.matches("[1-9]\\d{0,8}") ? Integer.parseInt(revision) : 0;
  }

  /** Whoever comes to a form's own address is led to the log. */
  public void showLog(Context context) {
    TakesView.Asked asked = asked(context);
    asked.lead(asked.path());
  }

  /** Keeps a note: a form to {@code /studios/{studio}/setups/{setup}/notes}. */
  public void note(Context context) {
    TakesView.Asked asked = asked(context);
    String text = Body.form(context).get(TEXT);
    try {
      Note note = sound(Note.FORM.read(Map.of("text", text)));
      tasks.notes().create(asked.caller(), asked.studio(), asked.setup(), note, Once.unkeyed());
      asked.lead(asked.path() + "#notes");
    } catch (Refused refused) {
      List<FormErrors.FormError> errors =
          problems(refused).stream()
              .map(of -> new FormErrors.FormError(TEXT, of.message()))
              .toList();
      again(asked, new TakesView.Typed.ANote(text, new FormErrors(errors)));
    }
  }

  static String takesPath(StudioId studio, SetupId setup) {
    return SetupPages.setupPath(studio, setup) + "/takes";
  }
}
