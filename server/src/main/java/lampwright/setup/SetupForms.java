package lampwright.setup;

import static lampwright.document.Field.required;

import java.util.List;
import lampwright.document.Field;
import lampwright.document.Form;
import lampwright.document.Forms;
import lampwright.document.ObjectForm;
import lampwright.engine.Known;
import lampwright.engine.light.Point;
import lampwright.engine.unit.Kelvin;

/** Forms that several parts of the setup document have in common. */
final class SetupForms {

  /** As long as a paragraph may be. */
  static final int PARAGRAPH = 8_000;

  /** As long as a line may be. */
  static final int LINE = 400;

  /** As many lights as one setup may have. */
  static final int MOST_LIGHTS = 40;

  /** Nothing of a setup stands farther from the hit mark than this, in metres. */
  private static final double FARTHEST_M = 500;

  private SetupForms() {}

  private static final Field<Point, Double> X =
      required(
          "x_m",
          Forms.number("m").atLeast(-FARTHEST_M).atMost(FARTHEST_M),
          Point::x,
          "Metres to camera-right of the hit mark.");
  private static final Field<Point, Double> Y =
      required(
          "y_m",
          Forms.number("m").atLeast(-FARTHEST_M).atMost(FARTHEST_M),
          Point::y,
          "Metres beyond the hit mark, away from the camera.");
  private static final Field<Point, Double> Z =
      required(
          "z_m",
          Forms.number("m").atLeast(-20).atMost(100).maybe(1.6),
          Point::z,
          "Metres above the ground of the hit mark.");

  private static final ObjectForm<Point> POINT =
      ObjectForm.of(
          "point",
          "A point in metres as the camera sees it; the origin is the hit mark on the ground.",
          values -> new Point(values.get(X), values.get(Y), values.get(Z)),
          List.of(X, Y, Z));

  static Form<Point> point() {
    return POINT;
  }

  /** What a camera's white balance is set to. */
  static Form<Kelvin> whiteBalance() {
    return Forms.number("K")
        .atLeast(1_500)
        .atMost(20_000)
        .maybe(5_600)
        .as(Kelvin::new, Kelvin::value);
  }

  static Form<String> line() {
    return Forms.text(LINE);
  }

  static Form<String> paragraph() {
    return Forms.text(PARAGRAPH);
  }

  /** How a value that came from outside is known; only the engine computes. */
  static Form<Known> known() {
    return Forms.choice(new Known[] {Known.METERED, Known.SET, Known.ESTIMATED});
  }
}
