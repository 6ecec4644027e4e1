package lampwright.web.api;

import static lampwright.document.Field.optional;
import static lampwright.document.Field.required;
import static lampwright.document.Field.usually;

import io.javalin.http.Context;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import lampwright.document.Field;
import lampwright.document.Form;
import lampwright.document.Forms;
import lampwright.document.ObjectForm;
import lampwright.engine.exposure.Ev100;
import lampwright.gear.Kit;
import lampwright.setup.SetupDocument;
import lampwright.setup.adapting.Limits;
import lampwright.setup.adapting.WeightChanges;
import lampwright.setup.adapting.Weights;
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
  private record ForKit(String kit, Adapting.Wishes wishes) {

    private static final Field<ForKit, String> KIT =
        required("kit", Forms.text(40), ForKit::kit, "The id of one of the studio's kits.");
    private static final Field<ForKit, Optional<Ev100>> AMBIENT = ambient(ForKit::wishes);
    private static final Field<ForKit, Limits> LIMITS = limits(ForKit::wishes);
    private static final Field<ForKit, Weights.Preset> PRESET = preset(ForKit::wishes);
    private static final Field<ForKit, WeightChanges> WEIGHTS = weights(ForKit::wishes);

    static final ObjectForm<ForKit> FORM =
        ObjectForm.of(
            "adaptation_request",
            "Recompute a setup for a kit.",
            values ->
                new ForKit(
                    values.get(KIT),
                    new Adapting.Wishes(
                        values.get(AMBIENT),
                        values.get(LIMITS),
                        values.get(PRESET),
                        values.get(WEIGHTS))),
            List.of(KIT, AMBIENT, LIMITS, PRESET, WEIGHTS));
  }

  /** A setup and a kit of the caller's own. */
  private record Own(SetupDocument document, Kit kit, Adapting.Wishes wishes) {

    private static final Field<Own, SetupDocument> DOCUMENT =
        required("document", SetupDocument.FORM, Own::document, "The setup.");
    private static final Field<Own, Kit> KIT = required("kit", Kit.FORM, Own::kit, "The kit.");
    private static final Field<Own, Optional<Ev100>> AMBIENT = ambient(Own::wishes);
    private static final Field<Own, Limits> LIMITS = limits(Own::wishes);
    private static final Field<Own, Weights.Preset> PRESET = preset(Own::wishes);
    private static final Field<Own, WeightChanges> WEIGHTS = weights(Own::wishes);

    static final ObjectForm<Own> FORM =
        ObjectForm.of(
            "own_adaptation_request",
            "Recompute a setup in the body for a kit in the body.",
            values ->
                new Own(
                    values.get(DOCUMENT),
                    values.get(KIT),
                    new Adapting.Wishes(
                        values.get(AMBIENT),
                        values.get(LIMITS),
                        values.get(PRESET),
                        values.get(WEIGHTS))),
            List.of(DOCUMENT, KIT, AMBIENT, LIMITS, PRESET, WEIGHTS));
  }

  /** What is read here beside the documents themselves. */
  static List<Form<?>> forms() {
    return List.of(ForKit.FORM, Own.FORM);
  }

  private static <T> Field<T, Optional<Ev100>> ambient(Function<T, Adapting.Wishes> wishes) {
    return optional(
        "ambient_ev100",
        Forms.number("EV").atLeast(-10).atMost(20).maybe(10).as(Ev100::new, Ev100::value),
        of -> wishes.apply(of).ambient(),
        "The ambient to shoot in, where it is not the setup's.");
  }

  private static <T> Field<T, Limits> limits(Function<T, Adapting.Wishes> wishes) {
    return usually(
        Limits.none(),
        "limits",
        Limits.FORM,
        of -> wishes.apply(of).limits(),
        "What the adaptation must not do.");
  }

  private static <T> Field<T, Weights.Preset> preset(Function<T, Adapting.Wishes> wishes) {
    return usually(
        Weights.Preset.CLOSEST_LOOK,
        "preset",
        Forms.choice(Weights.Preset.values()),
        of -> wishes.apply(of).preset(),
        "What matters most; usually the closest look.");
  }

  private static <T> Field<T, WeightChanges> weights(Function<T, Adapting.Wishes> wishes) {
    return usually(
        WeightChanges.none(),
        "weights",
        WeightChanges.FORM,
        of -> wishes.apply(of).changes(),
        "Weights that differ from the preset's.");
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
