package lampwright.web.pages;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.Optional;
import lampwright.document.Problem;
import lampwright.learning.drill.Answer;
import lampwright.learning.drill.DrillKind;
import lampwright.learning.trail.TrailId;
import lampwright.people.Ids;
import lampwright.people.StudioId;
import lampwright.setup.SetupId;
import lampwright.tasks.AskedDrill;
import lampwright.tasks.Caller;
import lampwright.tasks.Cataloguing;
import lampwright.tasks.Drilling;
import lampwright.tasks.Leave;
import lampwright.tasks.Refusal;
import lampwright.tasks.Refused;
import lampwright.web.http.Body;
import lampwright.web.http.Door;
import lampwright.web.http.FormFields;
import lampwright.wording.Wording;

/**
 * A drill on its page: {@code /studios/{studio}/drills?kind=&setup=&seed=}, which always shows the
 * same one; with {@code &answer=} what is said of that answer. Only answers that are sent are kept.
 */
public final class DrillPages {

  /** The id of the field, or of the first option. */
  private static final String FIELD = "drill-answer";

  private final Door door;
  private final Drilling drilling;
  private final Templates templates;
  private final StudioLayouts layouts;

  public DrillPages(Door door, Drilling drilling, Templates templates, StudioLayouts layouts) {
    this.door = door;
    this.drilling = drilling;
    this.templates = templates;
    this.layouts = layouts;
  }

  static String path(StudioId studio) {
    return "/studios/" + studio.text() + "/drills";
  }

  /** Where a drill of a kind is asked. */
  static String ask(StudioId studio, DrillKind kind) {
    return Address.of(path(studio)).with(DrillPage.KIND, kind.word()).text();
  }

  /** Where a drill of a kind is asked on the way along a trail. */
  static String ask(StudioId studio, DrillKind kind, TrailId trail) {
    return Address.of(ask(studio, kind)).with(DrillPage.TRAIL, trail.text()).text();
  }

  static String title(DrillKind kind, Wording words) {
    return words.say("drilling.kind." + kind.word());
  }

  /** Shows one. */
  public void show(Context context) {
    StudioId studio = Leave.studio(context.pathParam("studio"));
    Caller caller = door.caller(context);
    Optional<String> setup = query(context, DrillPage.SETUP);
    Optional<Integer> seed = query(context, DrillPage.SEED).flatMap(DrillPages::whole);
    AskedDrill asked =
        drilling.ask(
            caller,
            studio,
            new Drilling.Wish(
                query(context, DrillPage.KIND).map(DrillPages::kind),
                setup.map(Cataloguing::id),
                seed));
    if (setup.isEmpty() || seed.isEmpty()) {
      context.redirect(
          onTrail(address(studio, asked), query(context, DrillPage.TRAIL)).text(),
          HttpStatus.SEE_OTHER);
      return;
    }
    String typed = query(context, DrillPage.ANSWER).orElse("");
    Wording words = layouts.words(context);
    Optional<Drilling.Judged> judged =
        typed.isEmpty()
            ? Optional.empty()
            : Optional.of(
                drilling.judge(
                    caller,
                    studio,
                    new Drilling.Answered(
                        asked.drill().kind(),
                        asked.setup().id(),
                        asked.seed(),
                        asked.fingerprint(),
                        given(asked, typed, words))));
    show(
        context,
        studio,
        asked,
        new DrillView.Shown(typed, query(context, DrillPage.TRAIL), judged),
        FormErrors.none());
  }

  /** Judges an answer, keeps it, and leads to what is said of it. */
  public void answer(Context context) {
    StudioId studio = Leave.studio(context.pathParam("studio"));
    Caller caller = door.caller(context);
    FormFields sent = Body.form(context);
    DrillKind kind = kind(sent.get(DrillPage.KIND));
    SetupId setup = Cataloguing.id(sent.get(DrillPage.SETUP));
    Optional<Integer> seed = whole(sent.get(DrillPage.SEED));
    String typed = sent.get(DrillPage.ANSWER).strip();
    Optional<String> trail = Optional.of(sent.get(DrillPage.TRAIL)).filter(Ids::isId);
    AskedDrill asked =
        drilling.ask(
            caller,
            studio,
            new Drilling.Wish(Optional.of(kind), Optional.of(setup), Optional.of(seed.orElse(0))));
    try {
      drilling.answer(
          caller,
          studio,
          new Drilling.Answered(
              kind,
              setup,
              asked.seed(),
              sent.get(DrillPage.QUESTION),
              given(asked, typed, layouts.words(context))));
    } catch (Refused refused) {
      if (!(refused.refusal() instanceof Refusal.Invalid(var problems))) {
        throw refused;
      }
      context.status(HttpStatus.UNPROCESSABLE_CONTENT);
      FormErrors errors =
          new FormErrors(
              problems.stream()
                  .map(Problem::message)
                  .map(message -> new FormErrors.FormError(FIELD, message))
                  .toList());
      show(context, studio, asked, new DrillView.Shown(typed, trail, Optional.empty()), errors);
      return;
    }
    context.redirect(
        onTrail(address(studio, asked).with(DrillPage.ANSWER, typed), trail).text(),
        HttpStatus.SEE_OTHER);
  }

  private static Address onTrail(Address address, Optional<String> trail) {
    return trail.filter(Ids::isId).map(id -> address.with(DrillPage.TRAIL, id)).orElse(address);
  }

  private void show(
      Context context,
      StudioId studio,
      AskedDrill asked,
      DrillView.Shown shown,
      FormErrors errors) {
    Layout layout =
        layouts.of(context, studio, title(asked.drill().kind(), layouts.words(context)));
    templates.show(
        context,
        "drill",
        new DrillView(studio, asked, layout.words())
            .page(layout, door.csrfToken(context), shown, errors));
  }

  private static Address address(StudioId studio, AskedDrill asked) {
    return Address.of(path(studio))
        .with(DrillPage.KIND, asked.drill().kind().word())
        .with(DrillPage.SETUP, asked.setup().id().text())
        .with(DrillPage.SEED, String.valueOf(asked.seed()));
  }

  /**
   * What was typed or chosen; a number is in the person's own units.
   *
   * @throws Refused Invalid for what is no answer
   */
  private static Drilling.Given given(AskedDrill asked, String typed, Wording words) {
    return switch (asked.drill().answer()) {
      case Answer.OfChoice _ ->
          whole(typed)
              .<Drilling.Given>map(Drilling.Given.OfOption::new)
              .orElseThrow(() -> wrong(words.say("learning.wrong.option")));
      case Answer.OfNumber number ->
          DrillNumber.read(typed)
              .map(value -> value * DrillView.inMetres(number.measure(), words))
              .<Drilling.Given>map(Drilling.Given.OfNumber::new)
              .orElseThrow(() -> wrong(words.say("learning.wrong.number", typed)));
    };
  }

  private static Refused wrong(String message) {
    return Refused.invalid("/" + DrillPage.ANSWER, message);
  }

  private static DrillKind kind(String word) {
    return DrillKind.find(word).orElseThrow(Refused::notFound);
  }

  /** A whole number that is not negative; empty for what is none. */
  private static Optional<Integer> whole(String text) {
    return text.matches("\\d{1,9}") ? Optional.of(Integer.valueOf(text)) : Optional.empty();
  }

  private static Optional<String> query(Context context, String name) {
    return Optional.ofNullable(context.queryParam(name))
        .map(String::strip)
        .filter(t -> !t.isEmpty());
  }
}
