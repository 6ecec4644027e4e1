package lampwright.web.api;

import static lampwright.document.Field.optional;
import static lampwright.document.Field.required;

import io.javalin.http.Context;
import java.util.List;
import java.util.Optional;
import lampwright.document.Field;
import lampwright.document.Form;
import lampwright.document.Forms;
import lampwright.document.ObjectForm;
import lampwright.gear.Kit;
import lampwright.setup.SetupDocument;
import lampwright.setup.reacting.CameraDial;
import lampwright.setup.reacting.Happening;
import lampwright.setup.reacting.ReactionQuestion;
import lampwright.tasks.Reacting;
import lampwright.web.http.Door;

/** What to change when something happens to a setup that stands; computed, not stored. */
public final class ReactionApi {

  private final Door door;
  private final Reacting reacting;

  public ReactionApi(Door door, Reacting reacting) {
    this.door = door;
    this.reacting = reacting;
  }

  /** What happened to a setup of the catalogue, and which kit stands by. */
  private record Stored(ReactionQuestion question, Optional<String> kit) {

    private static final Field<Stored, Happening> HAPPENING =
        ReactionQuestion.happeningField(Stored::question);
    private static final Field<Stored, List<CameraDial>> KEEP =
        ReactionQuestion.keepField(Stored::question);
    private static final Field<Stored, Optional<String>> KIT =
        optional(
            "kit",
            Forms.text(40),
            Stored::kit,
            "The id of one of the studio's kits, whose spare heads and filters stand by.");

    static final ObjectForm<Stored> FORM =
        ObjectForm.of(
            "reaction_request",
            "What happened to a setup of the catalogue.",
            values ->
                new Stored(
                    new ReactionQuestion(values.get(HAPPENING), values.get(KEEP)), values.get(KIT)),
            List.of(HAPPENING, KEEP, KIT));
  }

  /** The same of the caller's own setup and kit. */
  private record Own(SetupDocument document, ReactionQuestion question, Optional<Kit> kit) {

    private static final Field<Own, SetupDocument> DOCUMENT =
        required("document", SetupDocument.FORM, Own::document, "The setup.");
    private static final Field<Own, Happening> HAPPENING =
        ReactionQuestion.happeningField(Own::question);
    private static final Field<Own, List<CameraDial>> KEEP =
        ReactionQuestion.keepField(Own::question);
    private static final Field<Own, Optional<Kit>> KIT =
        optional("kit", Kit.FORM, Own::kit, "The kit whose spare heads and filters stand by.");

    static final ObjectForm<Own> FORM =
        ObjectForm.of(
            "own_reaction_request",
            "What happened to a setup in the body.",
            values ->
                new Own(
                    values.get(DOCUMENT),
                    new ReactionQuestion(values.get(HAPPENING), values.get(KEEP)),
                    values.get(KIT)),
            List.of(DOCUMENT, HAPPENING, KEEP, KIT));
  }

  /** What is read here beside the documents themselves. */
  static List<Form<?>> forms() {
    return List.of(Stored.FORM, Own.FORM);
  }

  /** What to change at a setup of the catalogue. */
  public void react(Context context) {
    Stored asked = Documents.read(context, Stored.FORM);
    Reacting.Reacted reacted =
        reacting.to(
            door.caller(context),
            SetupApi.studio(context),
            SetupApi.setup(context),
            asked.question(),
            asked.kit());
    context.json(ReactionJson.of(reacted.setup().document(), reacted.reaction()));
  }

  /** What to change at a document in the body. */
  public void reactBody(Context context) {
    Own own = Documents.read(context, Own.FORM);
    context.json(
        ReactionJson.of(
            own.document(),
            reacting.to(
                door.caller(context),
                SetupApi.studio(context),
                own.document(),
                own.question(),
                own.kit())));
  }
}
