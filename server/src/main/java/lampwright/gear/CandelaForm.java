package lampwright.gear;

import static lampwright.document.Field.required;

import java.util.List;
import java.util.Optional;
import lampwright.document.Field;
import lampwright.document.Form;
import lampwright.document.Forms;
import lampwright.document.ObjectForm;
import lampwright.document.Pointer;
import lampwright.document.Problems;
import lampwright.engine.beam.CandelaTable;
import lampwright.engine.unit.Degrees;

/** A table of intensities as it stands in a document. */
public final class CandelaForm {

  private CandelaForm() {}

  /** The numbers before anyone knows whether they make a table. */
  private record Numbers(
      List<Degrees> vertical, List<Degrees> horizontal, List<List<Double>> candela) {

    static Numbers of(CandelaTable table) {
      return new Numbers(table.vertical(), table.horizontal(), table.rowsCandela());
    }

    CandelaTable toTable() {
      return CandelaTable.of(vertical, horizontal, candela);
    }
  }

  private static final Field<Numbers, List<Degrees>> VERTICAL =
      required(
          "vertical_deg",
          Forms.list(angle(180), 2, CandelaTable.MOST_ANGLES),
          Numbers::vertical,
          "Angles from the axis, ascending, from 0 straight ahead to 180 straight back.");

  private static final Field<Numbers, List<Degrees>> HORIZONTAL =
      required(
          "horizontal_deg",
          Forms.list(angle(360), 1, CandelaTable.MOST_ANGLES),
          Numbers::horizontal,
          "Angles about the axis from the modifier's own up, clockwise from behind it, from 0 to 0"
              + " (the same all around), 90 (in every quarter), 180 (in both halves) or 360.");

  private static final Field<Numbers, List<List<Double>>> CANDELA =
      required(
          "candela",
          Forms.list(
              Forms.list(
                  Forms.number("cd").atLeast(0).atMost(CandelaTable.LARGEST_CANDELA),
                  2,
                  CandelaTable.MOST_ANGLES),
              1,
              CandelaTable.MOST_ANGLES),
          Numbers::candela,
          "For each horizontal angle a row with an intensity for each vertical angle.");

  /** The table; only the proportions of its intensities count, so candela seconds do as well. */
  public static final Form<CandelaTable> FORM =
      ObjectForm.of(
              "candela_table",
              "Measured intensities by direction; more than 0 straight ahead, at most "
                  + CandelaTable.MOST_INTENSITIES
                  + " of them.",
              values ->
                  new Numbers(values.get(VERTICAL), values.get(HORIZONTAL), values.get(CANDELA)),
              List.of(VERTICAL, HORIZONTAL, CANDELA))
          .checked(CandelaForm::check)
          .as(Numbers::toTable, Numbers::of);

  private static Form<Degrees> angle(double most) {
    return Forms.number("°").atLeast(0).atMost(most).as(Degrees::new, Degrees::value);
  }

  private static void check(Numbers numbers, Pointer at, Problems problems) {
    Optional<CandelaTable.Fault> fault =
        CandelaTable.findFault(numbers.vertical(), numbers.horizontal(), numbers.candela());
    if (fault.isPresent()) {
      String field =
          switch (fault.get().part()) {
            case VERTICAL -> "vertical_deg";
            case HORIZONTAL -> "horizontal_deg";
            case INTENSITIES -> "candela";
          };
      problems.add(at.field(field), fault.get().message());
    } else if (numbers.toTable().isDarkOnAxis()) {
      problems.add(
          at.field("candela"),
          "Candela straight ahead must be more than a millionth of the peak. Maybe turn the"
              + " table?");
    }
  }
}
