package lampwright.web.pages;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lampwright.document.Problem;
import lampwright.document.Reading;
import lampwright.gear.KitId;
import lampwright.people.StudioId;
import lampwright.setup.Light;
import lampwright.setup.LightId;
import lampwright.setup.SetupDocument;
import lampwright.setup.SetupId;
import lampwright.setup.reacting.ReactionQuestion;
import lampwright.tasks.Caller;
import lampwright.tasks.Catalogued;
import lampwright.tasks.Cataloguing;
import lampwright.tasks.KitKeeping;
import lampwright.tasks.Leave;
import lampwright.tasks.Reacting;
import lampwright.tasks.Refusal;
import lampwright.tasks.Refused;
import lampwright.web.http.Door;
import lampwright.wording.ReactionLines;
import lampwright.wording.Wording;

/** What to change when something happens to a setup that stands. */
public final class NowPages {

  /** The ids of the form's fields, to which errors lead. */
  private static final String AMBIENT_FIELD = "now-ambient";

  private static final String LIGHT_FIELD = "now-light";

  private static final String KIT_FIELD = "now-kit";

  private final Door door;
  private final Cataloguing cataloguing;
  private final KitKeeping kits;
  private final Reacting reacting;
  private final Templates templates;
  private final StudioLayouts layouts;

  public NowPages(
      Door door,
      Cataloguing cataloguing,
      KitKeeping kits,
      Reacting reacting,
      Templates templates,
      StudioLayouts layouts) {
    this.door = door;
    this.cataloguing = cataloguing;
    this.kits = kits;
    this.reacting = reacting;
    this.templates = templates;
    this.layouts = layouts;
  }

  static String path(StudioId studio, SetupId setup) {
    return SetupPages.setupPath(studio, setup) + "/now";
  }

  /** The form of a setup's page, with nothing typed. */
  static NowForm form(String action, SetupDocument setup, Map<String, String> kits, Wording words) {
    return form(action, setup, kits, Typed.nothing(), words);
  }

  /** What somebody asks in an address. */
  private record Typed(String ask, String ambient, String light, String kit, boolean keepsTime) {

    static Typed nothing() {
      return new Typed("", "", "", "", false);
    }

    static Typed of(Context context) {
      return new Typed(
          query(context, NowForm.ASK),
          query(context, NowForm.AMBIENT),
          query(context, NowForm.LIGHT),
          query(context, NowForm.KIT),
          query(context, NowForm.KEEP).equals(NowForm.TIME));
    }

    private static String query(Context context, String name) {
      return Optional.ofNullable(context.queryParam(name)).orElse("").strip();
    }

    /** In the fields that programs send, so that what is wrong is told in the same words. */
    Map<String, Object> question() {
      Map<String, Object> happening = new LinkedHashMap<>();
      switch (ask) {
        case NowForm.FALLS_ONE -> happening.put("ambient_falls_stops", 1.0);
        case NowForm.FALLS_TWO -> happening.put("ambient_falls_stops", 2.0);
        case NowForm.DEAD -> happening.put("dead", light);
        default -> happening.put("ambient_ev100", typedNumber());
      }
      Map<String, Object> question = new LinkedHashMap<>();
      question.put("happening", happening);
      question.put("keep", keepsTime ? List.of("time") : List.of());
      return question;
    }

    /** A number; what is none is told as it was typed. */
    private Object typedNumber() {
      Optional<Double> number = TypedNumber.read(ambient);
      return number.isPresent() ? number.get() : ambient;
    }

    Optional<String> kitId() {
      return Optional.of(kit).filter(id -> !id.isEmpty());
    }

    String field(Problem problem) {
      if (problem.pointer().equals("/kit")) {
        return KIT_FIELD;
      }
      return ask.equals(NowForm.DEAD) ? LIGHT_FIELD : AMBIENT_FIELD;
    }
  }

  private static NowForm form(
      String action, SetupDocument setup, Map<String, String> kits, Typed typed, Wording words) {
    Map<LightId, Integer> numbers = setup.numbersInBuildOrder();
    return new NowForm(
        action,
        typed.ambient(),
        setup.lightsInBuildOrder().stream()
            .map(light -> choice(light, numbers.getOrDefault(light.id(), 0), typed, words))
            .toList(),
        kits.entrySet().stream()
            .map(
                kit ->
                    new NowForm.Choice(
                        kit.getKey(), kit.getValue(), kit.getKey().equals(typed.kit())))
            .toList(),
        typed.keepsTime());
  }

  private static NowForm.Choice choice(Light light, int number, Typed typed, Wording words) {
    String id = light.id().text();
    return new NowForm.Choice(id, words.light(number, light), id.equals(typed.light()));
  }

  /** Shows {@code …/now?ask=…}; without a question, the form alone. */
  public void show(Context context) {
    StudioId studio = Leave.studio(context.pathParam("studio"));
    SetupId id = Cataloguing.id(context.pathParam("setup"));
    Caller caller = door.caller(context);
    Catalogued setup = cataloguing.get(caller, studio, id);
    Typed typed = Typed.of(context);
    if (typed.ask().isEmpty()) {
      show(context, studio, setup, typed, FormErrors.none(), Optional.empty());
      return;
    }
    try {
      ReactionLines lines = answer(caller, studio, id, typed, layouts.words(context));
      show(context, studio, setup, typed, FormErrors.none(), Optional.of(lines));
    } catch (Refused refused) {
      if (!(refused.refusal() instanceof Refusal.Invalid(List<Problem> problems))) {
        throw refused;
      }
      context.status(HttpStatus.UNPROCESSABLE_CONTENT);
      FormErrors errors =
          new FormErrors(
              problems.stream()
                  .map(of -> new FormErrors.FormError(typed.field(of), of.message()))
                  .toList());
      show(context, studio, setup, typed, errors, Optional.empty());
    }
  }

  private ReactionLines answer(
      Caller caller, StudioId studio, SetupId id, Typed typed, Wording words) {
    ReactionQuestion question =
        switch (ReactionQuestion.FORM.read(typed.question())) {
          case Reading.Sound<ReactionQuestion>(ReactionQuestion sound) -> sound;
          case Reading.Faulty<ReactionQuestion> faulty -> throw Refused.invalid(faulty.problems());
        };
    Reacting.Reacted reacted = reacting.to(caller, studio, id, question, typed.kitId());
    return ReactionLines.of(reacted.setup().document(), reacted.reaction(), words.notation());
  }

  private void show(
      Context context,
      StudioId studio,
      Catalogued setup,
      Typed typed,
      FormErrors errors,
      Optional<ReactionLines> answer) {
    SetupDocument document = setup.document();
    Layout layout = layouts.named(context, studio, "reacting.page.of", document.title());
    templates.show(
        context,
        "now",
        new NowPage(
            layout,
            document.title(),
            SetupPages.setupPath(studio, setup.id()),
            form(
                path(studio, setup.id()),
                document,
                names(kits.names(door.caller(context), studio)),
                typed,
                layout.words()),
            errors,
            answer));
  }

  /** The studio's kits by their ids. */
  static Map<String, String> names(Map<KitId, String> kits) {
    Map<String, String> names = new LinkedHashMap<>();
    kits.forEach((id, name) -> names.put(id.text(), name));
    return names;
  }
}
