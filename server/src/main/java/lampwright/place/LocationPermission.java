package lampwright.place;

import static lampwright.document.Field.optional;
import static lampwright.document.Field.required;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import lampwright.document.Field;
import lampwright.document.Forms;
import lampwright.document.ObjectForm;

/**
 * Somebody's leave to work at a location.
 *
 * @param validUntil the last day on which it holds; absent where it has no end
 */
public record LocationPermission(String text, Optional<LocalDate> validUntil) {

  private static final Field<LocationPermission, String> TEXT =
      required("text", PlaceForms.paragraph(), LocationPermission::text, "Who allowed what.");
  private static final Field<LocationPermission, Optional<LocalDate>> VALID_UNTIL =
      optional(
          "valid_until",
          Forms.date(),
          LocationPermission::validUntil,
          "The last day on which it holds; left out where it has no end.");

  static final ObjectForm<LocationPermission> FORM =
      ObjectForm.of(
          "location_permission",
          "Somebody's leave to work at a location.",
          values -> new LocationPermission(values.get(TEXT), values.get(VALID_UNTIL)),
          List.of(TEXT, VALID_UNTIL));

  /** Whether it no longer holds on a day. */
  public boolean isOver(LocalDate day) {
    return validUntil.filter(day::isAfter).isPresent();
  }
}
