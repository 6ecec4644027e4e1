package lampwright.setup;

import static lampwright.document.Field.optional;
import static lampwright.document.Field.required;
import static lampwright.document.Field.usually;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import lampwright.document.Field;
import lampwright.document.Forms;
import lampwright.document.ObjectForm;
import lampwright.engine.light.Point;
import lampwright.engine.unit.Degrees;

/**
 * The point that a light is for and where its reading is taken.
 *
 * @param surfaceFacing where a surface at the target faces, from the direction subject to camera,
 *     positive to camera-right; 0 faces the camera
 */
public record Target(String name, Point at, Held held, Optional<Degrees> surfaceFacing) {

  /** How the meter is held at the target. */
  public enum Held {
    /** Pointing at the light. */
    TOWARD_LIGHT,
    /** Pointing at the camera. */
    TOWARD_CAMERA,
    /** Flat on an upright surface that is lit. */
    ON_SURFACE
  }

  /** Words that a name can begin with so that it says where it is by itself. */
  private static final Set<String> SAY_WHERE =
      Set.of(
          "above",
          "across",
          "along",
          "among",
          "around",
          "at",
          "before",
          "behind",
          "below",
          "beneath",
          "beside",
          "between",
          "beyond",
          "in",
          "inside",
          "near",
          "on",
          "opposite",
          "over",
          "past",
          "under",
          "within");

  /** Words before which no article stands. */
  private static final Set<String> NEED_NO_ARTICLE =
      Set.of("a", "an", "both", "each", "every", "her", "his", "its", "my", "our", "the", "their");

  /** Where it is, to stand after a reading: "at the face", "between their shoulders". */
  public String where() {
    int end = name.indexOf(' ');
    String first = (end < 0 ? name : name.substring(0, end)).toLowerCase(Locale.ROOT);
    // One word alone is a thing, whatever it is: "inside", "the past".
    if (end > 0 && SAY_WHERE.contains(first)) {
      return name;
    }
    return (NEED_NO_ARTICLE.contains(first) ? "at " : "at the ") + name;
  }

  private static final Field<Target, String> NAME =
      required("name", SetupForms.line(), Target::name, "What it is: face, hands, wall.");
  private static final Field<Target, Point> AT =
      required("at", SetupForms.point(), Target::at, "Where it is.");
  private static final Field<Target, Held> HELD =
      usually(
          Held.TOWARD_LIGHT,
          "held",
          Forms.choice(Held.values()),
          Target::held,
          "How the meter is held there; usually toward the light.");
  private static final Field<Target, Optional<Degrees>> FACING =
      optional(
          "surface_facing_deg",
          Forms.number("°").atLeast(-180).atMost(180).maybe(0).as(Degrees::new, Degrees::value),
          Target::surfaceFacing,
          "Where the surface faces, from the direction subject to camera, positive to"
              + " camera-right; 0 faces the camera.");

  static final ObjectForm<Target> FORM =
      ObjectForm.of(
          "target",
          "The point that a light is for and where its reading is taken.",
          values ->
              new Target(values.get(NAME), values.get(AT), values.get(HELD), values.get(FACING)),
          List.of(NAME, AT, HELD, FACING));
}
