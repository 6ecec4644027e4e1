package lampwright.setup.signature;

import lampwright.document.Form;
import lampwright.document.Forms;
import lampwright.engine.unit.Bounds;
import lampwright.engine.unit.Degrees;
import lampwright.engine.unit.Metres;
import lampwright.engine.unit.Stops;

/** How a signature keeps and says its numbers. */
final class Numbers {

  private static final double MILLIONTH = 1e6;

  private Numbers() {}

  /**
   * To a millionth: a scene that is turned or mirrored has the same signature in spite of the last
   * bits, and what is read back from the database equals what was computed.
   */
  static double tidy(double value) {
    // Adding zero makes a negative zero, which the database does not know, a plain one.
    return Math.rint(value * MILLIONTH) / MILLIONTH + 0.0;
  }

  static Stops tidy(Stops stops) {
    return new Stops(tidy(stops.value()));
  }

  static Degrees tidy(Degrees angle) {
    return new Degrees(tidy(angle.value()));
  }

  static Form<Stops> stops() {
    return Forms.number("stops").as(Stops::new, Stops::value);
  }

  static Form<Degrees> degrees() {
    return Forms.number("°").as(Degrees::new, Degrees::value);
  }

  static Form<Metres> metres() {
    return Forms.number("m").atLeast(0).as(Metres::new, Metres::value);
  }

  /** Without its sign: "1.0 stop", "2.3 stops". */
  static String size(Stops stops) {
    String size = Bounds.fixed(Math.abs(stops.value()), 1);
    return size + (Double.parseDouble(size) <= 1 ? " stop" : " stops");
  }

  /** "40°", without its sign. */
  static String size(Degrees angle) {
    return Bounds.rounded(Math.abs(angle.value()), 0) + "°";
  }

  /** "1.2 stops over", "0.3 stop under", "level with". */
  static String against(Stops stops) {
    if (Bounds.fixed(Math.abs(stops.value()), 1).equals("0.0")) {
      return "level with";
    }
    return size(stops) + (stops.value() > 0 ? " over" : " under");
  }
}
