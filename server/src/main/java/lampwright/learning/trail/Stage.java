package lampwright.learning.trail;

import static lampwright.document.Field.required;

import java.util.List;
import lampwright.document.Field;
import lampwright.document.Form;
import lampwright.document.Forms;
import lampwright.document.Forms.Kind;
import lampwright.document.ObjectForm;
import lampwright.learning.drill.DrillKind;
import lampwright.people.Ids;
import lampwright.setup.SetupId;

/** A part of a trail, to be done before the next. */
public sealed interface Stage {

  /** What it is called within the trail, and so in what is kept of somebody's way. */
  StageId id();

  /** What it is called by people. */
  String title();

  /** Something to read. */
  record ToRead(StageId id, String title, String text) implements Stage {

    private static final Field<ToRead, StageId> ID =
        required("id", StageId.FORM, ToRead::id, "What it is called within the trail.");
    private static final Field<ToRead, String> TITLE =
        required("title", Forms.text(160), ToRead::title, "What it is called.");
    private static final Field<ToRead, String> TEXT =
        required("text", Forms.text(8_000), ToRead::text, "What there is to read.");

    static final ObjectForm<ToRead> FORM =
        ObjectForm.of(
            "stage_to_read",
            "Something to read.",
            values -> new ToRead(values.get(ID), values.get(TITLE), values.get(TEXT)),
            List.of(ID, TITLE, TEXT));
  }

  /**
   * A setup to look at.
   *
   * @param lookAt what to look at in it
   */
  record ToStudy(StageId id, String title, SetupId setup, String lookAt) implements Stage {

    private static final Field<ToStudy, StageId> ID =
        required("id", StageId.FORM, ToStudy::id, "What it is called within the trail.");
    private static final Field<ToStudy, String> TITLE =
        required("title", Forms.text(160), ToStudy::title, "What it is called.");
    private static final Field<ToStudy, SetupId> SETUP =
        required("setup", setupForm(), ToStudy::setup, "The id of the setup.");
    private static final Field<ToStudy, String> LOOK_AT =
        required("look_at", Forms.text(8_000), ToStudy::lookAt, "What to look at in it.");

    static final ObjectForm<ToStudy> FORM =
        ObjectForm.of(
            "stage_to_study",
            "A setup to look at.",
            values ->
                new ToStudy(
                    values.get(ID), values.get(TITLE), values.get(SETUP), values.get(LOOK_AT)),
            List.of(ID, TITLE, SETUP, LOOK_AT));
  }

  /**
   * Drills to answer.
   *
   * @param kinds each of which is to be answered rightly
   * @param right how often each
   */
  record ToAnswer(StageId id, String title, List<DrillKind> kinds, int right) implements Stage {

    public ToAnswer {
      kinds = List.copyOf(kinds);
    }

    private static final Field<ToAnswer, StageId> ID =
        required("id", StageId.FORM, ToAnswer::id, "What it is called within the trail.");
    private static final Field<ToAnswer, String> TITLE =
        required("title", Forms.text(160), ToAnswer::title, "What it is called.");
    private static final Field<ToAnswer, List<DrillKind>> KINDS =
        required(
            "kinds",
            Forms.list(Forms.choice(DrillKind.values()), 1, DrillKind.values().length),
            ToAnswer::kinds,
            "The kinds of drill, each of which is to be answered rightly.");
    private static final Field<ToAnswer, Integer> RIGHT =
        required("right", Forms.count(1, 20), ToAnswer::right, "How often each.");

    static final ObjectForm<ToAnswer> FORM =
        ObjectForm.of(
            "stage_to_answer",
            "Drills to answer.",
            values ->
                new ToAnswer(
                    values.get(ID), values.get(TITLE), values.get(KINDS), values.get(RIGHT)),
            List.of(ID, TITLE, KINDS, RIGHT));
  }

  /**
   * A setup to build and meter, for somebody to sign off.
   *
   * @param task what is to be shown
   */
  record ToBuild(StageId id, String title, SetupId setup, String task) implements Stage {

    private static final Field<ToBuild, StageId> ID =
        required("id", StageId.FORM, ToBuild::id, "What it is called within the trail.");
    private static final Field<ToBuild, String> TITLE =
        required("title", Forms.text(160), ToBuild::title, "What it is called.");
    private static final Field<ToBuild, SetupId> SETUP =
        required("setup", setupForm(), ToBuild::setup, "The id of the setup.");
    private static final Field<ToBuild, String> TASK =
        required("task", Forms.text(8_000), ToBuild::task, "What is to be shown.");

    static final ObjectForm<ToBuild> FORM =
        ObjectForm.of(
            "stage_to_build",
            "A setup to build and meter, for an author or owner to sign off.",
            values ->
                new ToBuild(values.get(ID), values.get(TITLE), values.get(SETUP), values.get(TASK)),
            List.of(ID, TITLE, SETUP, TASK));
  }

  /** A stage as documents write it, told apart by its kind. */
  Form<Stage> FORM =
      Forms.oneOf(
          "kind",
          List.of(
              new Kind<>("reading", ToRead.class, ToRead.FORM),
              new Kind<>("study", ToStudy.class, ToStudy.FORM),
              new Kind<>("drills", ToAnswer.class, ToAnswer.FORM),
              new Kind<>("build", ToBuild.class, ToBuild.FORM)));

  private static Form<SetupId> setupForm() {
    return Forms.text(32)
        .like("^[0-9a-z]{4,32}$", Ids::isId, "a setup's id, 4 to 32 small letters and digits")
        .as(SetupId::new, SetupId::text);
  }
}
