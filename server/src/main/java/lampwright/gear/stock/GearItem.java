package lampwright.gear.stock;

import static lampwright.document.Field.list;
import static lampwright.document.Field.required;
import static lampwright.document.Field.usually;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import lampwright.document.Field;
import lampwright.document.Form;
import lampwright.document.Forms;
import lampwright.document.Forms.Kind;
import lampwright.document.ObjectForm;
import lampwright.document.Pointer;
import lampwright.document.Problems;
import lampwright.gear.Body;
import lampwright.gear.Gel;
import lampwright.gear.Head;
import lampwright.gear.Lens;
import lampwright.gear.Modifier;
import lampwright.gear.NeutralDensity;
import lampwright.gear.Pack;
import lampwright.gear.Piece;
import lampwright.gear.Stand;
import lampwright.gear.calibration.CalibrationReading;

/**
 * Gear as a studio keeps it, once for all of its kits.
 *
 * @param count how many of it there are
 * @param outOfOrder how many of these cannot be used now
 * @param condition what was noticed of it, in the author's order
 * @param readings what was metered of it, for its calibration; only of heads and modifiers
 */
public record GearItem(
    Piece piece,
    int count,
    int outOfOrder,
    List<ConditionNote> condition,
    List<CalibrationReading> readings) {

  private static final int MOST = 99;
  private static final int MOST_NOTES = 100;

  /** As many as a calibration sheet takes. */
  private static final int MOST_READINGS = 150;

  private static final Field<GearItem, Integer> COUNT =
      usually(
          1,
          "count",
          Forms.count(1, MOST),
          GearItem::count,
          "How many of these there are; usually 1.");
  private static final Field<GearItem, Integer> OUT_OF_ORDER =
      usually(
          0,
          "out_of_order",
          Forms.count(0, MOST),
          GearItem::outOfOrder,
          "How many of these cannot be used now; usually none.");
  private static final Field<GearItem, List<ConditionNote>> CONDITION =
      list(
          "condition",
          ConditionNote.FORM,
          MOST_NOTES,
          GearItem::condition,
          "What was noticed of it.");
  private static final Field<GearItem, List<CalibrationReading>> READINGS =
      list(
          "readings",
          CalibrationReading.FORM,
          MOST_READINGS,
          GearItem::readings,
          "What a meter gave: of a head, under its own name; of a modifier, with heads by their"
              + " names, and of those heads without it.");

  /** Gear as it stands in a document, told apart by {@code kind}. */
  public static final Form<GearItem> FORM =
      Forms.oneOf(
          "kind",
          List.of(
              kind(GearKind.HEAD, Head.class, Head.FORM),
              kind(GearKind.PACK, Pack.class, Pack.FORM),
              kind(GearKind.MODIFIER, Modifier.class, Modifier.FORM),
              kind(GearKind.BODY, Body.class, Body.FORM),
              kind(GearKind.LENS, Lens.class, Lens.FORM),
              kind(GearKind.GEL, Gel.class, Gel.FORM),
              kind(GearKind.NEUTRAL_DENSITY, NeutralDensity.class, NeutralDensity.FORM),
              kind(GearKind.STAND, Stand.class, Stand.FORM)));

  /** Copies the lists. */
  public GearItem {
    condition = List.copyOf(condition);
    readings = List.copyOf(readings);
  }

  private static <P extends Piece> Kind<GearItem> kind(
      GearKind kind, Class<P> type, ObjectForm<P> form) {
    boolean metered = kind == GearKind.HEAD || kind == GearKind.MODIFIER;
    Field<GearItem, P> piece =
        required(kind.word(), form, item -> type.cast(item.piece()), "What it is.");
    List<Field<GearItem, ?>> fields = new ArrayList<>(List.of(piece, COUNT, OUT_OF_ORDER));
    fields.add(CONDITION);
    if (metered) {
      fields.add(READINGS);
    }
    return new Kind<>(
        kind.word(),
        GearItem.class,
        item -> type.isInstance(item.piece()),
        ObjectForm.<GearItem>of(
                kind.word() + "_gear",
                kind.title() + " of a studio. Not more of them are out of order than there are.",
                values ->
                    new GearItem(
                        values.get(piece),
                        values.get(COUNT),
                        values.get(OUT_OF_ORDER),
                        values.get(CONDITION),
                        metered ? values.get(READINGS) : List.of()),
                fields)
            .checked(GearItem::check));
  }

  private static void check(GearItem item, Pointer at, Problems problems) {
    if (item.outOfOrder > item.count) {
      problems.add(
          at.field("out_of_order"),
          "Out of order (%d) must be at most the count, %d."
              .formatted(item.outOfOrder, item.count));
    }
    for (int i = 0; i < item.readings.size(); i++) {
      checkReading(item, item.readings.get(i), at.field("readings").item(i), problems);
    }
  }

  private static void checkReading(
      GearItem item, CalibrationReading reading, Pointer at, Problems problems) {
    boolean ofAnotherHead = item.kind() == GearKind.HEAD && !reading.head().equals(item.name());
    if (ofAnotherHead) {
      problems.add(
          at.field("head"),
          "Head (\"%s\") must be this head's own name, \"%s\"."
              .formatted(reading.head(), item.name()));
    }
    boolean withAnother =
        item.kind() == GearKind.MODIFIER
            && reading.modifier().filter(name -> !name.equals(item.name())).isPresent();
    if (withAnother) {
      problems.add(
          at.field("modifier"),
          "Modifier must be this one's own name, \"%s\". Leave it out for the head's standard"
                  .formatted(item.name())
              + " reflector.");
    }
  }

  public GearKind kind() {
    return GearKind.of(piece);
  }

  public String name() {
    return piece.name();
  }

  /** How many of it can be used now. */
  public int inOrder() {
    return count - outOfOrder;
  }

  /** The same gear with more readings; what it has already it does not get twice. */
  public GearItem withReadings(List<CalibrationReading> more) {
    Set<CalibrationReading> all = new LinkedHashSet<>(readings);
    all.addAll(more);
    return new GearItem(piece, count, outOfOrder, condition, List.copyOf(all));
  }

  /** The same gear as another piece of its kind, such as a head with another output. */
  public GearItem withPiece(Piece other) {
    return new GearItem(other, count, outOfOrder, condition, readings);
  }
}
