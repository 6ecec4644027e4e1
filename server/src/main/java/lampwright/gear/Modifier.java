package lampwright.gear;

import static lampwright.document.Field.optional;
import static lampwright.document.Field.required;
import static lampwright.document.Field.usually;

import java.util.List;
import java.util.Optional;
import lampwright.document.Field;
import lampwright.document.Forms;
import lampwright.document.ObjectForm;
import lampwright.document.Pointer;
import lampwright.document.Problems;
import lampwright.engine.Working;
import lampwright.engine.beam.CandelaTable;
import lampwright.engine.light.EmittingFace;
import lampwright.engine.light.ModifierEffect;
import lampwright.engine.unit.Degrees;
import lampwright.engine.unit.Metres;
import lampwright.engine.unit.Stops;

/**
 * What shapes a head's light.
 *
 * @param face what the light leaves by; its size makes the light soft and bends the inverse square
 * @param loss on axis against the head's standard reflector, as somebody found it; without one it
 *     is modelled, see {@link #isLossModelled}
 * @param lossAt the distance at which the loss was found, or is modelled
 * @param spread the full angle at half the peak
 * @param transmission share of the head's light that leaves the front, before grid or snoot
 * @param gridDepthToWidth depth of a grid's cell over its width
 * @param candela measured intensities, which go before {@code spread}
 * @param cutOff of a snoot, from the axis to the middle of its soft edge
 * @param mount what it fits on, in the studio's own word; absent where it fits on everything
 * @param takesHeads how many heads it takes at once
 */
public record Modifier(
    String name,
    Kind kind,
    EmittingFace face,
    Optional<Stops> loss,
    Metres lossAt,
    Optional<Degrees> spread,
    Optional<Double> transmission,
    boolean grid,
    Optional<Double> gridDepthToWidth,
    Optional<CandelaTable> candela,
    Optional<Degrees> cutOff,
    Optional<String> mount,
    int takesHeads,
    Optional<Double> weightKg,
    Optional<String> note)
    implements Piece {

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
  private static final Field<Modifier, Optional<Stops>> LOSS =
      optional(
          "loss_stops",
          GearForms.stops(-3, 10),
          Modifier::loss,
          "Loss on axis against the head's standard reflector, as metered; a gain is negative."
              + " Left out it is modelled; of a plain reflector it is 0.");
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
  private static final Field<Modifier, Optional<Double>> TRANSMISSION =
      optional(
          "transmission",
          Forms.number("").moreThan(0).atLeast(0.001).atMost(1.5).maybe(0.7),
          Modifier::transmission,
          "Share of the head's light that leaves the front, before a grid or snoot cuts any off;"
              + " usually what is common for its kind.");
  private static final Field<Modifier, Boolean> GRID =
      usually(
          false, "grid", Forms.flag(), Modifier::grid, "Whether a grid is fitted; usually not.");
  private static final Field<Modifier, Optional<Double>> GRID_DEPTH =
      optional(
          "grid_depth_to_width",
          Forms.number("").atLeast(0.05).atMost(50).maybe(2),
          Modifier::gridDepthToWidth,
          "Depth of the grid's cells over their width; only with a grid.");
  private static final Field<Modifier, Optional<CandelaTable>> CANDELA =
      optional(
          "candela",
          CandelaForm.FORM,
          Modifier::candela,
          "Measured intensities by direction; they go before spread_deg.");
  private static final Field<Modifier, Optional<Degrees>> CUT_OFF =
      optional(
          "cutoff_deg",
          Forms.number("°")
              .moreThan(0)
              .atLeast(0.1)
              .atMost(90)
              .maybe(10)
              .as(Degrees::new, Degrees::value),
          Modifier::cutOff,
          "Of a snoot the angle from the axis to the middle of its soft edge; only of a snoot.");
  private static final Field<Modifier, Optional<String>> MOUNT =
      optional(
          "mount",
          GearForms.name(),
          Modifier::mount,
          "What it fits on: the studio's own word for the bayonet or adapter; left out where it"
              + " fits on everything.");
  private static final Field<Modifier, Integer> TAKES_HEADS =
      usually(
          1,
          "takes_heads",
          Forms.count(1, 12),
          Modifier::takesHeads,
          "How many heads it takes at once; usually 1.");
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
                      values.get(TRANSMISSION),
                      values.get(GRID),
                      values.get(GRID_DEPTH),
                      values.get(CANDELA),
                      values.get(CUT_OFF),
                      values.get(MOUNT),
                      values.get(TAKES_HEADS),
                      values.get(WEIGHT),
                      values.get(NOTE)),
              List.of(
                  NAME,
                  KIND,
                  FACE,
                  LOSS,
                  LOSS_AT,
                  SPREAD,
                  TRANSMISSION,
                  GRID,
                  GRID_DEPTH,
                  CANDELA,
                  CUT_OFF,
                  MOUNT,
                  TAKES_HEADS,
                  WEIGHT,
                  NOTE))
          .checked(Modifier::check);

  private static void check(Modifier modifier, Pointer at, Problems problems) {
    if (modifier.gridDepthToWidth.isPresent() && !modifier.grid) {
      problems.add(
          at.field("grid_depth_to_width"),
          "Grid depth to width must only stand with a grid. Maybe say grid: true?");
    }
    if (modifier.cutOff.isPresent() && modifier.kind != Kind.SNOOT) {
      problems.add(
          at.field("cutoff_deg"), "Cutoff must only stand with a snoot. Maybe give spread_deg?");
    }
  }

  /**
   * Asks whether it goes on this head: their mounts are the same word, in small letters or
   * capitals, or one of them says nothing of its mount.
   */
  public boolean fits(Head head) {
    return mount.isEmpty()
        || head.mount().isEmpty()
        || mount.get().equalsIgnoreCase(head.mount().get());
  }

  /** How the engine sees it: with its metered loss, else with the modelled one. */
  public ModifierEffect effect() {
    if (isLossModelled()) {
      return UsualLight.flux(this).effectAt(lossAt);
    }
    return new ModifierEffect(face, UsualLight.spread(this), loss.orElse(Stops.ZERO), lossAt);
  }

  /**
   * Asks whether nobody metered the loss, so that it comes from the head's flux, the face and the
   * spread, and is sure to a stop only. A plain reflector without a word about its beam counts as
   * the standard one, which loses nothing by definition.
   */
  public boolean isLossModelled() {
    return loss.isEmpty() && !isStandardReflector();
  }

  private boolean isStandardReflector() {
    return kind == Kind.REFLECTOR
        && !grid
        && spread.isEmpty()
        && transmission.isEmpty()
        && candela.isEmpty();
  }

  /** The steps to the modelled loss; empty where it is not modelled. */
  public Optional<Working> findLossWorking() {
    return isLossModelled()
        ? Optional.of(UsualLight.flux(this).lossWorking(lossAt))
        : Optional.empty();
  }

  /** The same modifier with a loss that somebody found at a distance. */
  public Modifier withLoss(Stops found, Metres at) {
    return new Modifier(
        name,
        kind,
        face,
        Optional.of(found),
        at,
        spread,
        transmission,
        grid,
        gridDepthToWidth,
        candela,
        cutOff,
        mount,
        takesHeads,
        weightKg,
        note);
  }

  /** How many such modifiers so many heads need. */
  public int piecesFor(int heads) {
    return (heads + takesHeads - 1) / takesHeads;
  }

  /** The head's own standard reflector, for a light that names no modifier. */
  public static Modifier standardReflector() {
    return new Modifier(
        "standard reflector",
        Kind.REFLECTOR,
        new EmittingFace.PointSource(),
        Optional.empty(),
        new Metres(2),
        Optional.empty(),
        Optional.empty(),
        false,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        1,
        Optional.empty(),
        Optional.empty());
  }
}
