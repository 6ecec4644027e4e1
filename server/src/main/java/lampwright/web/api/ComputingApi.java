package lampwright.web.api;

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
import lampwright.setup.adapting.Wishes;
import lampwright.setup.figures.FiguresComputation;
import lampwright.tasks.Adapting;
import lampwright.tasks.Catalogued;
import lampwright.tasks.Cataloguing;
import lampwright.tasks.Refused;
import lampwright.web.http.Door;
import lampwright.web.http.Preconditions;

/** What is computed and not stored: figures, and setups recomputed for a kit. */
public final class ComputingApi {

  private final Door door;
  private final Cataloguing cataloguing;
  private final Adapting adapting;

  public ComputingApi(Door door, Cataloguing cataloguing, Adapting adapting) {
    this.door = door;
    this.cataloguing = cataloguing;
    this.adapting = adapting;
  }

  /** Which kit, and what else is wished, for a setup of the catalogue. */
  private record ForKit(String kit, Wishes wishes) {

    private static final Field<ForKit, String> KIT =
        required("kit", Forms.text(40), ForKit::kit, "The id of one of the studio's kits.");
    private static final WishFields<ForKit> WISHES = new WishFields<>(ForKit::wishes);

    static final ObjectForm<ForKit> FORM =
        ObjectForm.of(
            "adaptation_request",
            "Recompute a setup for a kit.",
            values -> new ForKit(values.get(KIT), WISHES.read(values)),
            WISHES.after(List.of(KIT)));
  }

  /** A setup and a kit of the caller's own. */
  private record Own(SetupDocument document, Kit kit, Wishes wishes) {

    private static final Field<Own, SetupDocument> DOCUMENT =
        required("document", SetupDocument.FORM, Own::document, "The setup.");
    private static final Field<Own, Kit> KIT = required("kit", Kit.FORM, Own::kit, "The kit.");
    private static final WishFields<Own> WISHES = new WishFields<>(Own::wishes);

    static final ObjectForm<Own> FORM =
        ObjectForm.of(
            "own_adaptation_request",
            "Recompute a setup in the body for a kit in the body.",
            values -> new Own(values.get(DOCUMENT), values.get(KIT), WISHES.read(values)),
            WISHES.after(List.of(DOCUMENT, KIT)));
  }

  /** What is read here beside the documents themselves. */
  static List<Form<?>> forms() {
    return List.of(ForKit.FORM, Own.FORM);
  }

  /** The figures of a setup of the catalogue. */
  public void figures(Context context) {
    FiguresJson.Detail detail = detail(context);
    Catalogued setup =
        cataloguing.get(door.caller(context), SetupApi.studio(context), SetupApi.setup(context));
    if (!Preconditions.isKnown(context, setup.revision())) {
      context.json(FiguresJson.of(FiguresComputation.of(setup.document()), detail));
    }
  }

  /** The figures of a document in the body. */
  public void figuresOfBody(Context context) {
    FiguresJson.Detail detail = detail(context);
    SetupDocument document = Documents.read(context, SetupDocument.FORM);
    context.json(
        FiguresJson.of(
            adapting.figures(door.caller(context), SetupApi.studio(context), document), detail));
  }

  /** The steps to each figure are told where the address ends in {@code ?workings=true}. */
  private static FiguresJson.Detail detail(Context context) {
    return switch (Optional.ofNullable(context.queryParam("workings")).orElse("false")) {
      case "true" -> FiguresJson.Detail.WORKINGS;
      case "false" -> FiguresJson.Detail.FIGURES;
      default -> throw Refused.invalid("/workings", "Workings must be true or false.");
    };
  }

  /** A setup of the catalogue, recomputed for one of the studio's kits. */
  public void adapt(Context context) {
    ForKit wanted = Documents.read(context, ForKit.FORM);
    Adapting.Adapted adapted =
        adapting.adapt(
            door.caller(context),
            SetupApi.studio(context),
            SetupApi.setup(context),
            wanted.kit(),
            wanted.wishes());
    context.json(AdaptationJson.AnswerJson.of(adapted.answer()));
  }

  /** A setup in the body, recomputed for a kit in the body. */
  public void adaptBody(Context context) {
    Own own = Documents.read(context, Own.FORM);
    context.json(
        AdaptationJson.AnswerJson.of(
            adapting.adapt(
                door.caller(context),
                SetupApi.studio(context),
                own.document(),
                own.kit(),
                own.wishes())));
  }
}
