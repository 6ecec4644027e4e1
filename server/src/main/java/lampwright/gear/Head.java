package lampwright.gear;

import static lampwright.document.Field.optional;
import static lampwright.document.Field.required;
import static lampwright.document.Field.usually;

import java.util.List;
import java.util.Optional;
import lampwright.document.Field;
import lampwright.document.Forms;
import lampwright.document.ObjectForm;
import lampwright.engine.power.PowerScale;
import lampwright.engine.unit.Kelvin;
import lampwright.engine.unit.Seconds;
import lampwright.engine.unit.Stops;
import lampwright.engine.unit.WattSeconds;

/**
 * A flash unit: one with a supply of its own, or one that hangs on a {@link Pack}.
 *
 * @param energy at full power; of a head on a pack the most that one outlet gives it
 * @param output what it gives at full power with its standard reflector
 * @param mount what fits on it, in the studio's own word; absent where everything fits
 * @param range how many stops its power can be turned down
 * @param step the smallest step of its dial
 * @param scale how its dial shows power
 * @param pack name of the kit's pack that it takes its energy from, whose feed, recycle time and
 *     charge then count; absent for a head with a supply of its own. A setup knows no packs: there
 *     the name is a note.
 * @param durationT05 t0.5 at full power
 * @param recycle from a flash at full power to ready
 * @param flashesPerCharge at full power; absent for a head that hangs on the mains
 * @param batteries charged ones for each such head, the one in it included; says nothing of a head
 *     that hangs on the mains or on a pack
 * @param longBurstEfficiency what the flat burst for times shorter than sync gives of the light of
 *     one flash, above 0 up to 1; absent for a head that has no long burst
 * @param temperature of its flash without a gel
 * @param modellingW watts of its modelling lamp
 */
public record Head(
    String name,
    WattSeconds energy,
    Output output,
    Optional<String> mount,
    Stops range,
    Stops step,
    PowerScale scale,
    Feed feed,
    Optional<String> pack,
    FlashControl control,
    Optional<Seconds> durationT05,
    Optional<Seconds> recycle,
    Optional<Integer> flashesPerCharge,
    int batteries,
    Optional<Double> longBurstEfficiency,
    Optional<Kelvin> temperature,
    Optional<Double> modellingW,
    Optional<Double> weightKg,
    Optional<String> note)
    implements Piece {

  /** Where a head's or a pack's energy comes from. */
  public enum Feed {
    BATTERY,
    MAINS
  }

  /** How a head makes less than full power, which decides what happens to the flash's duration. */
  public enum FlashControl {
    /** The flash is cut off: shorter at lower power. */
    CUT,
    /** The capacitor is charged less: not shorter, rather longer, at lower power. */
    VOLTAGE
  }

  private static final Field<Head, String> NAME =
      required("name", GearForms.name(), Head::name, "What the studio calls it.");
  private static final Field<Head, WattSeconds> ENERGY =
      required(
          "energy_ws",
          GearForms.energy(400),
          Head::energy,
          "Stored energy at full power, in watt-seconds; of a head on a pack the most that one"
              + " outlet gives it.");
  private static final Field<Head, Output> OUTPUT =
      required("output", Output.FORM, Head::output, "What it gives at full power.");
  private static final Field<Head, Optional<String>> MOUNT =
      optional(
          "mount",
          GearForms.name(),
          Head::mount,
          "What fits on it: the studio's own word for the bayonet or adapter; left out where"
              + " everything fits.");
  private static final Field<Head, Stops> RANGE =
      usually(
          new Stops(6),
          "range_stops",
          GearForms.stops(0, 14),
          Head::range,
          "How many stops its power can be turned down; usually 6.");
  private static final Field<Head, Stops> STEP =
      usually(
          new Stops(0.1),
          "step_stops",
          Forms.number("stops").atLeast(0.05).atMost(1).maybe(0.1).as(Stops::new, Stops::value),
          Head::step,
          "The smallest step of its dial; usually a tenth.");
  private static final Field<Head, PowerScale> SCALE =
      usually(
          PowerScale.FRACTIONS,
          "scale",
          Forms.choice(PowerScale.values()),
          Head::scale,
          "How its dial shows power; usually fractions of full power.");
  private static final Field<Head, Feed> FEED =
      usually(
          Feed.BATTERY,
          "feed",
          Forms.choice(Feed.values()),
          Head::feed,
          "Where its energy comes from; usually a battery.");
  private static final Field<Head, Optional<String>> PACK =
      optional(
          "pack",
          GearForms.name(),
          Head::pack,
          "The name of the kit's pack that it takes its energy from; left out for a head with a"
              + " supply of its own.");
  private static final Field<Head, FlashControl> CONTROL =
      usually(
          FlashControl.CUT,
          "control",
          Forms.choice(FlashControl.values()),
          Head::control,
          "How it makes less than full power; usually by cutting the flash off.");
  private static final Field<Head, Optional<Seconds>> DURATION =
      optional(
          "duration_t05_ms",
          GearForms.milliseconds(100, 1.25),
          Head::durationT05,
          "t0.5 at full power, in milliseconds.");
  private static final Field<Head, Optional<Seconds>> RECYCLE =
      optional(
          "recycle_s",
          GearForms.recycle(1.6),
          Head::recycle,
          "Seconds from a flash at full power to ready.");
  private static final Field<Head, Optional<Integer>> FLASHES =
      optional(
          "flashes_per_charge",
          GearForms.flashesPerCharge(),
          Head::flashesPerCharge,
          "Flashes at full power from one charge.");
  private static final Field<Head, Integer> BATTERIES =
      usually(
          1,
          "batteries",
          GearForms.batteries(),
          Head::batteries,
          "How many charged batteries each of these heads has with it, the one in it included;"
              + " usually 1. Without meaning for a head on the mains or on a pack.");
  private static final Field<Head, Optional<Double>> LONG_BURST =
      optional(
          "long_burst_efficiency",
          Forms.number("").moreThan(0).atLeast(0.05).atMost(1).maybe(0.7),
          Head::longBurstEfficiency,
          "What its long burst, for times shorter than sync, gives of the light of one flash: 0.5"
              + " to 1; left out for a head without one.");
  private static final Field<Head, Optional<Kelvin>> TEMPERATURE =
      optional(
          "temperature_k",
          Forms.number("K")
              .atLeast(2_000)
              .atMost(20_000)
              .maybe(5_500)
              .as(Kelvin::new, Kelvin::value),
          Head::temperature,
          "The colour temperature of its flash without a gel; 5500 K is taken where it is left"
              + " out.");
  private static final Field<Head, Optional<Double>> MODELLING =
      optional(
          "modelling_w",
          Forms.number("W").atLeast(0).atMost(2_000).maybe(150),
          Head::modellingW,
          "Watts of its modelling lamp.");
  private static final Field<Head, Optional<Double>> WEIGHT =
      optional(
          "weight_kg",
          Forms.number("kg").moreThan(0).atMost(100).maybe(2.5),
          Head::weightKg,
          "What it weighs, battery and cable included.");
  private static final Field<Head, Optional<String>> NOTE = GearForms.note(Head::note);

  /** The head as it stands in a document. */
  public static final ObjectForm<Head> FORM =
      ObjectForm.of(
          "head",
          "A flash unit.",
          values ->
              new Head(
                  values.get(NAME),
                  values.get(ENERGY),
                  values.get(OUTPUT),
                  values.get(MOUNT),
                  values.get(RANGE),
                  values.get(STEP),
                  values.get(SCALE),
                  values.get(FEED),
                  values.get(PACK),
                  values.get(CONTROL),
                  values.get(DURATION),
                  values.get(RECYCLE),
                  values.get(FLASHES),
                  values.get(BATTERIES),
                  values.get(LONG_BURST),
                  values.get(TEMPERATURE),
                  values.get(MODELLING),
                  values.get(WEIGHT),
                  values.get(NOTE)),
          List.of(
              NAME,
              ENERGY,
              OUTPUT,
              MOUNT,
              RANGE,
              STEP,
              SCALE,
              FEED,
              PACK,
              CONTROL,
              DURATION,
              RECYCLE,
              FLASHES,
              BATTERIES,
              LONG_BURST,
              TEMPERATURE,
              MODELLING,
              WEIGHT,
              NOTE));

  /** The same head that gives another output. */
  public Head withOutput(Output other) {
    return new Head(
        name,
        energy,
        other,
        mount,
        range,
        step,
        scale,
        feed,
        pack,
        control,
        durationT05,
        recycle,
        flashesPerCharge,
        batteries,
        longBurstEfficiency,
        temperature,
        modellingW,
        weightKg,
        note);
  }
}
