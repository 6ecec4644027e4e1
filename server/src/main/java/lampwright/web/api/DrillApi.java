package lampwright.web.api;

import static lampwright.document.Field.optional;
import static lampwright.document.Field.required;

import io.javalin.http.Context;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import lampwright.document.Field;
import lampwright.document.Form;
import lampwright.document.Forms;
import lampwright.document.ObjectForm;
import lampwright.learning.drill.DrillKind;
import lampwright.setup.SetupId;
import lampwright.tasks.Cataloguing;
import lampwright.tasks.Drilling;
import lampwright.tasks.Refused;
import lampwright.web.http.Door;

/** Drills: asked, answered, and how far one is. */
public final class DrillApi {

  private static final String KIND = "kind";
  private static final String SETUP = "setup";
  private static final String SEED = "seed";

  private final Door door;
  private final Drilling drilling;

  public DrillApi(Door door, Drilling drilling) {
    this.door = door;
    this.drilling = drilling;
  }

  /** An answer as programs send it. */
  private record Sent(
      DrillKind kind,
      String setup,
      int seed,
      String question,
      Optional<Double> number,
      Optional<Integer> option) {

    private static final Field<Sent, DrillKind> KIND_FIELD =
        required(KIND, Forms.choice(DrillKind.values()), Sent::kind, "The kind that was asked.");
    private static final Field<Sent, String> SETUP_FIELD =
        required(SETUP, Forms.text(40), Sent::setup, "The id of the setup it was made from.");
    private static final Field<Sent, Integer> SEED_FIELD =
        required(SEED, seedForm(), Sent::seed, "The seed it was made with.");
    private static final Field<Sent, String> QUESTION =
        required("question", Forms.text(40), Sent::question, "What names the question.");
    private static final Field<Sent, Optional<Double>> NUMBER =
        optional(
            "number",
            Forms.number("").atLeast(-1e9).atMost(1e9),
            Sent::number,
            "The answer, where a number is asked for, in the measure that was asked.");
    private static final Field<Sent, Optional<Integer>> OPTION =
        optional(
            "option",
            Forms.count(0, 20),
            Sent::option,
            "The place of the option, from 0, where there are some.");

    static final ObjectForm<Sent> FORM =
        ObjectForm.of(
            "drill_answer",
            "An answer to a drill, with either a number or an option.",
            values ->
                new Sent(
                    values.get(KIND_FIELD),
                    values.get(SETUP_FIELD),
                    values.get(SEED_FIELD),
                    values.get(QUESTION),
                    values.get(NUMBER),
                    values.get(OPTION)),
            List.of(KIND_FIELD, SETUP_FIELD, SEED_FIELD, QUESTION, NUMBER, OPTION));

    Drilling.Given given() {
      return option
          .<Drilling.Given>map(Drilling.Given.OfOption::new)
          .or(() -> number.map(Drilling.Given.OfNumber::new))
          .orElseThrow(
              () ->
                  Refused.invalid(
                      "/number",
                      "Number is missing: send one, or an option where the drill has some."));
    }
  }

  private static Form<Integer> seedForm() {
    return Forms.count(0, Drilling.LARGEST_SEED);
  }

  /** What is read here. */
  static Form<?> form() {
    return Sent.FORM;
  }

  /** Asks one: {@code ?kind=&setup=&seed=}, each as it comes where left out. */
  public void ask(Context context) {
    Query query = new Query(context, Set.of(KIND, SETUP, SEED));
    Optional<DrillKind> kind = query.text(KIND, Forms.choice(DrillKind.values()));
    Optional<String> setup = query.text(SETUP, Forms.text(40));
    Optional<Integer> seed = query.number(SEED, seedForm());
    query.mustBeSound();
    context.json(
        DrillJson.Asked.of(
            drilling.ask(
                door.caller(context),
                SetupApi.studio(context),
                new Drilling.Wish(kind, setup.map(Cataloguing::id), seed))));
  }

  /** Judges an answer and keeps it. */
  public void answer(Context context) {
    Sent sent = Documents.read(context, Sent.FORM);
    SetupId setup = Cataloguing.id(sent.setup());
    context.json(
        DrillJson.Judged.of(
            drilling.answer(
                door.caller(context),
                SetupApi.studio(context),
                new Drilling.Answered(
                    sent.kind(), setup, sent.seed(), sent.question(), sent.given()))));
  }

  /** How far the caller is. */
  public void progress(Context context) {
    context.json(
        DrillJson.Progress.of(drilling.progress(door.caller(context), SetupApi.studio(context))));
  }
}
