package lampwright.web.pages;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lampwright.document.Reading;
import lampwright.engine.unit.Stops;
import lampwright.language.Language;
import lampwright.language.LengthUnit;
import lampwright.language.Notation;
import lampwright.language.StopFraction;
import lampwright.people.Preferred;
import lampwright.tasks.Caller;
import lampwright.tasks.Preferring;
import lampwright.tasks.Refusal;
import lampwright.tasks.Refused;
import lampwright.web.http.Body;
import lampwright.web.http.Door;
import lampwright.web.http.FormFields;
import lampwright.wording.Wording;

/** The page on which one chooses how one reads. */
public final class PreferencesPages {

  static final String PATH = "/preferences";

  private static final String LANGUAGE = "language";
  private static final String LENGTHS = "lengths";
  private static final String STOPS = "stops";
  private static final String KEPT = "kept";

  /** A light's distance, and a level, that show every difference there is. */
  private static final double EXAMPLE_M = 2.36;

  private static final Stops EXAMPLE_STOPS = new Stops(-1.33);

  private final Door door;
  private final Preferring preferring;
  private final Templates templates;
  private final OwnLayouts layouts;

  public PreferencesPages(
      Door door, Preferring preferring, Templates templates, OwnLayouts layouts) {
    this.door = door;
    this.preferring = preferring;
    this.templates = templates;
    this.layouts = layouts;
  }

  /** Shows the form: {@code /preferences}. */
  public void show(Context context) {
    show(context, context.queryParam(KEPT) != null, false);
  }

  private void show(Context context, boolean kept, boolean changedSince) {
    Caller caller = door.caller(context);
    Preferring.Chosen chosen = preferring.get(caller);
    Layout layout = layouts.named(context, "pages.preferences.title");
    Wording words = layout.words();
    templates.show(
        context,
        "preferences",
        new PreferencesPage(
            layout,
            PATH,
            door.csrfToken(context),
            chosen.revision(),
            questions(chosen.preferred(), words),
            kept,
            changedSince
                ? new FormErrors(
                    List.of(
                        new FormErrors.FormError("", words.say("pages.preferences.changedSince"))))
                : FormErrors.none()));
  }

  private static List<PreferencesPage.Question> questions(Preferred chosen, Wording words) {
    return List.of(
        new PreferencesPage.Question(
            LANGUAGE, words.say("pages.preferences.language"), languages(chosen, words)),
        new PreferencesPage.Question(
            LENGTHS,
            words.say("pages.preferences.lengths"),
            Arrays.stream(LengthUnit.values())
                .map(
                    unit ->
                        choice(
                            unit.key(),
                            words.say("pages.preferences.lengths." + unit.key()),
                            new Notation(words.notation().phrases(), unit, words.notation().stops())
                                .length(EXAMPLE_M),
                            chosen.lengths() == unit))
                .toList()),
        new PreferencesPage.Question(
            STOPS,
            words.say("pages.preferences.stops"),
            Arrays.stream(StopFraction.values())
                .map(
                    fraction ->
                        choice(
                            fraction.key(),
                            words.say("pages.preferences.stops." + fraction.key()),
                            new Notation(
                                    words.notation().phrases(),
                                    words.notation().lengths(),
                                    fraction)
                                .signed(EXAMPLE_STOPS),
                            chosen.stops() == fraction))
                .toList()));
  }

  private static List<PreferencesPage.Choice> languages(Preferred chosen, Wording words) {
    List<PreferencesPage.Choice> choices = new ArrayList<>();
    choices.add(
        choice("", words.say("pages.preferences.language.asked"), "", chosen.language().isEmpty()));
    for (Language language : Language.values()) {
      choices.add(
          new PreferencesPage.Choice(
              language.tag(),
              language.ownName(),
              "",
              language.tag(),
              chosen.language().filter(language::equals).isPresent()));
    }
    return choices;
  }

  private static PreferencesPage.Choice choice(
      String value, String words, String example, boolean chosen) {
    return new PreferencesPage.Choice(value, words, example, "", chosen);
  }

  /** Takes the form. */
  public void change(Context context) {
    FormFields sent = Body.form(context);
    Map<String, Object> document = new HashMap<>();
    for (String field : List.of(LANGUAGE, LENGTHS, STOPS)) {
      Optional.of(sent.get(field))
          .filter(value -> !value.isEmpty())
          .ifPresent(value -> document.put(field, value));
    }
    Preferred preferred =
        switch (Preferring.FORM.read(document)) {
          case Reading.Sound<Preferred>(Preferred value) -> value;
          case Reading.Faulty<Preferred> faulty -> throw Refused.invalid(faulty.problems());
        };
    try {
      preferring.replace(door.caller(context), revision(sent), preferred);
      context.redirect(PATH + "?" + KEPT, HttpStatus.SEE_OTHER);
    } catch (Refused refused) {
      if (!(refused.refusal() instanceof Refusal.Stale)) {
        throw refused;
      }
      context.status(HttpStatus.PRECONDITION_FAILED);
      show(context, false, true);
    }
  }

  /** The one that was looked at; where the form does not say, none that there is. */
  private static int revision(FormFields sent) {
    String written = sent.get(PreferencesPage.REVISION);
    return written.matches("[1-9]\\d{0,8}") ? Integer.parseInt(written) : 0;
  }
}
