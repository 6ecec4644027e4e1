package lampwright.setup.signature;

import java.util.Locale;
import lampwright.document.Form;
import lampwright.document.Forms;
import lampwright.engine.unit.Bounds;
import lampwright.engine.unit.Degrees;
import lampwright.engine.unit.Metres;
import lampwright.engine.unit.Stops;
import lampwright.language.Filling;
import lampwright.language.Said;

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

  /** "40°", without its sign. */
  static Filling size(Degrees angle) {
    return Said.of("signature.degrees", Filling.number(Math.abs(angle.value()), 0)).asFilling();
  }

  /** Whether an angle is written as none. */
  static boolean isLevel(Degrees angle) {
    return Math.abs(angle.value()) < 0.5;
  }

  /** "1.2 stops over", "0.3 stop under", "level with". */
  static Filling against(Stops stops) {
    if (Bounds.fixed(Math.abs(stops.value()), 1).equals("0.0")) {
      return Said.of("signature.against.level").asFilling();
    }
    return Said.of(
            stops.value() > 0 ? "signature.against.over" : "signature.against.under",
            Filling.stops(Math.abs(stops.value())))
        .asFilling();
  }

  /** A constant's name as phrases' keys end in it. */
  static String key(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT);
  }
}
