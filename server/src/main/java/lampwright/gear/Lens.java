package lampwright.gear;

import static lampwright.document.Field.optional;
import static lampwright.document.Field.required;
import static lampwright.document.Field.usually;

import java.util.List;
import java.util.Optional;
import lampwright.document.Field;
import lampwright.document.Forms;
import lampwright.document.ObjectForm;
import lampwright.engine.exposure.FNumber;
import lampwright.engine.unit.Millimetres;

/**
 * A lens of one focal length; a zoom stands in a kit once for each focal length that is used.
 *
 * @param widest its smallest f-number
 * @param smallest its largest f-number, the smallest opening
 */
public record Lens(
    String name,
    Millimetres focalLength,
    FNumber widest,
    FNumber smallest,
    Optional<Double> weightKg,
    Optional<String> note)
    implements Piece {

  private static final Field<Lens, String> NAME =
      required("name", GearForms.name(), Lens::name, "What the studio calls it.");
  private static final Field<Lens, Millimetres> FOCAL_LENGTH =
      required(
          "focal_length_mm",
          Forms.number("mm")
              .moreThan(0)
              .atLeast(1)
              .atMost(2_000)
              .maybe(50)
              .as(Millimetres::new, Millimetres::value),
          Lens::focalLength,
          "Its focal length.");
  private static final Field<Lens, FNumber> WIDEST =
      usually(
          FNumber.ofMark(2.8),
          "widest_f_number",
          GearForms.fNumber(),
          Lens::widest,
          "Its widest aperture; usually f/2.8.");
  private static final Field<Lens, FNumber> SMALLEST =
      usually(
          FNumber.ofMark(22),
          "smallest_f_number",
          GearForms.fNumber(),
          Lens::smallest,
          "Its smallest aperture; usually f/22.");
  private static final Field<Lens, Optional<Double>> WEIGHT =
      optional(
          "weight_kg",
          Forms.number("kg").moreThan(0).atMost(100).maybe(0.6),
          Lens::weightKg,
          "What it weighs.");
  private static final Field<Lens, Optional<String>> NOTE = GearForms.note(Lens::note);

  /** The lens as it stands in a document. */
  public static final ObjectForm<Lens> FORM =
      ObjectForm.<Lens>of(
              "lens",
              "A lens. Its widest aperture must not be smaller than its smallest.",
              values ->
                  new Lens(
                      values.get(NAME),
                      values.get(FOCAL_LENGTH),
                      values.get(WIDEST),
                      values.get(SMALLEST),
                      values.get(WEIGHT),
                      values.get(NOTE)),
              List.of(NAME, FOCAL_LENGTH, WIDEST, SMALLEST, WEIGHT, NOTE))
          .checked(
              (lens, at, problems) -> {
                if (lens.widest().value() > lens.smallest().value()) {
                  problems.add(
                      at.field("widest_f_number"),
                      "Widest aperture ("
                          + lens.widest()
                          + ") must not be smaller than the smallest ("
                          + lens.smallest()
                          + "). Maybe they are swapped?");
                }
              });
}
