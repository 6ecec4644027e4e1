package lampwright.gear;

import static lampwright.document.Field.optional;
import static lampwright.document.Field.required;
import static lampwright.document.Field.usually;

import java.util.List;
import java.util.Optional;
import lampwright.document.Field;
import lampwright.document.Forms;
import lampwright.document.ObjectForm;
import lampwright.engine.light.EmittingFace;
import lampwright.engine.light.ModifierEffect;
import lampwright.engine.unit.Degrees;
import lampwright.engine.unit.Metres;
import lampwright.engine.unit.Stops;

/**
 * What shapes a head's light.
 *
 * @param face what the light leaves by; its size makes the light soft and bends the inverse square
 * @param loss on axis against the head's standard reflector
 * @param lossAt the distance at which the loss was found
 * @param spread the full angle at half the peak
 */
public record Modifier(
    String name,
    Kind kind,
    EmittingFace face,
    Stops loss,
    Metres lossAt,
    Optional<Degrees> spread,
    boolean grid,
    Optional<Double> weightKg,
    Optional<String> note) {

  /** The trade's kinds of modifier. */
  public enum Kind {
    REFLECTOR,
    SOFTBOX,
    OCTAGON,
    STRIP,
    UMBRELLA,
    DISH,
    SNOOT,
    BARN_DOORS,
    SCRIM,
    BARE
  }

  private static final Field<Modifier, String> NAME =
      required("name", GearForms.name(), Modifier::name, "What the studio calls it.");
  private static final Field<Modifier, Kind> KIND =
      required("kind", Forms.choice(Kind.values()), Modifier::kind, "What kind of modifier it is.");
  private static final Field<Modifier, EmittingFace> FACE =
      usually(
          new EmittingFace.PointSource(),
          "face",
          GearForms.face(),
          Modifier::face,
          "The face that the light leaves by; usually so small that it counts as a point.");
  private static final Field<Modifier, Stops> LOSS =
      usually(
          new Stops(0),
          "loss_stops",
          GearForms.stops(-3, 10),
          Modifier::loss,
          "Loss on axis against the head's standard reflector; a gain is negative; usually 0.");
  private static final Field<Modifier, Metres> LOSS_AT =
      usually(
          new Metres(2),
          "loss_at_m",
          GearForms.length(50, 2),
          Modifier::lossAt,
          "The distance at which the loss was found; usually 2 m.");
  private static final Field<Modifier, Optional<Degrees>> SPREAD =
      optional(
          "spread_deg",
          Forms.number("°")
              .moreThan(0)
              .atLeast(0.1)
              .atMost(180)
              .maybe(65)
              .as(Degrees::new, Degrees::value),
          Modifier::spread,
          "Full angle at half the peak.");
  private static final Field<Modifier, Boolean> GRID =
      usually(
          false, "grid", Forms.flag(), Modifier::grid, "Whether a grid is fitted; usually not.");
  private static final Field<Modifier, Optional<Double>> WEIGHT =
      optional(
          "weight_kg",
          Forms.number("kg").moreThan(0).atMost(100).maybe(1.2),
          Modifier::weightKg,
          "What it weighs.");
  private static final Field<Modifier, Optional<String>> NOTE = GearForms.note(Modifier::note);

  /** The modifier as it stands in a document. */
  public static final ObjectForm<Modifier> FORM =
      ObjectForm.of(
          "modifier",
          "What shapes a head's light.",
          values ->
              new Modifier(
                  values.get(NAME),
                  values.get(KIND),
                  values.get(FACE),
                  values.get(LOSS),
                  values.get(LOSS_AT),
                  values.get(SPREAD),
                  values.get(GRID),
                  values.get(WEIGHT),
                  values.get(NOTE)),
          List.of(NAME, KIND, FACE, LOSS, LOSS_AT, SPREAD, GRID, WEIGHT, NOTE));

  /** How the engine sees it. */
  public ModifierEffect effect() {
    return ModifierEffect.of(face, loss, lossAt);
  }

  /** The head's own standard reflector, for a light that names no modifier. */
  public static Modifier standardReflector() {
    return new Modifier(
        "standard reflector",
        Kind.REFLECTOR,
        new EmittingFace.PointSource(),
        new Stops(0),
        new Metres(2),
        Optional.empty(),
        false,
        Optional.empty(),
        Optional.empty());
  }
}
