package lampwright.gear;

import static lampwright.document.Field.optional;
import static lampwright.document.Field.required;
import static lampwright.document.Field.usually;

import java.util.List;
import java.util.Optional;
import lampwright.document.Field;
import lampwright.document.Forms;
import lampwright.document.ObjectForm;
import lampwright.engine.unit.Seconds;
import lampwright.engine.unit.WattSeconds;

/**
 * A generator that heads hang on: one store of energy, which its outlets share in each flash.
 *
 * @param energy of one flash at full power, all outlets together
 * @param outlets how many heads can hang on it at once
 * @param recycle from a flash of all its energy to ready
 * @param flashesPerCharge of all its energy, from one battery; absent for a pack that hangs on the
 *     mains
 * @param batteries charged ones for each such pack, the one in it included; says nothing of a pack
 *     that hangs on the mains
 */
public record Pack(
    String name,
    WattSeconds energy,
    int outlets,
    Optional<Seconds> recycle,
    Optional<Integer> flashesPerCharge,
    int batteries,
    Head.Feed feed,
    Optional<Double> weightKg,
    Optional<String> note)
    implements Piece {

  private static final Field<Pack, String> NAME =
      required("name", GearForms.name(), Pack::name, "What the studio calls it; its heads say it.");
  private static final Field<Pack, WattSeconds> ENERGY =
      required(
          "energy_ws",
          GearForms.energy(1_200),
          Pack::energy,
          "Stored energy at full power, in watt-seconds, which its outlets share in one flash.");
  private static final Field<Pack, Integer> OUTLETS =
      required(
          "outlets", Forms.count(1, 8), Pack::outlets, "How many heads can hang on it at once.");
  private static final Field<Pack, Optional<Seconds>> RECYCLE =
      optional(
          "recycle_s",
          GearForms.recycle(2),
          Pack::recycle,
          "Seconds from a flash of all its energy to ready.");
  private static final Field<Pack, Optional<Integer>> FLASHES =
      optional(
          "flashes_per_charge",
          GearForms.flashesPerCharge(),
          Pack::flashesPerCharge,
          "Flashes of all its energy from one charge.");
  private static final Field<Pack, Integer> BATTERIES =
      usually(
          1,
          "batteries",
          GearForms.batteries(),
          Pack::batteries,
          "How many charged batteries each of these packs has with it, the one in it included;"
              + " usually 1. Without meaning for a pack on the mains.");
  private static final Field<Pack, Head.Feed> FEED =
      usually(
          Head.Feed.BATTERY,
          "feed",
          Forms.choice(Head.Feed.values()),
          Pack::feed,
          "Where its energy comes from; usually a battery.");
  private static final Field<Pack, Optional<Double>> WEIGHT =
      optional(
          "weight_kg",
          Forms.number("kg").moreThan(0).atMost(100).maybe(6),
          Pack::weightKg,
          "What it weighs, battery and cable included.");
  private static final Field<Pack, Optional<String>> NOTE = GearForms.note(Pack::note);

  /** The pack as it stands in a document. */
  public static final ObjectForm<Pack> FORM =
      ObjectForm.of(
          "pack",
          "A generator whose energy the heads that hang on it share.",
          values ->
              new Pack(
                  values.get(NAME),
                  values.get(ENERGY),
                  values.get(OUTLETS),
                  values.get(RECYCLE),
                  values.get(FLASHES),
                  values.get(BATTERIES),
                  values.get(FEED),
                  values.get(WEIGHT),
                  values.get(NOTE)),
          List.of(NAME, ENERGY, OUTLETS, RECYCLE, FLASHES, BATTERIES, FEED, WEIGHT, NOTE));
}
