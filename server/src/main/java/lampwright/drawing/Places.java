package lampwright.drawing;

import java.util.Locale;
import lampwright.engine.unit.Degrees;
import lampwright.language.Notation;
import lampwright.setup.Light;

/** How drawings and their tables say where something is, in the person's words and unit. */
record Places(Notation notation) {

  /** Nearer than this a place counts as level with the hit mark: a hand's breadth of tape. */
  private static final double NOTHING_M = 0.005;

  /** The length to camera right of the hit mark. */
  String across(double metresRight) {
    return sided(metresRight, "drawing.right", "drawing.left");
  }

  /** The length away from the camera, from the hit mark on. */
  String away(double metresAway) {
    return sided(metresAway, "drawing.beyond", "drawing.nearer");
  }

  private String sided(double metres, String plus, String minus) {
    return Math.abs(metres) < NOTHING_M
        ? notation.tape(0.0)
        : notation.say(metres > 0 ? plus : minus, notation.tape(Math.abs(metres)));
  }

  /** What a light is for, as a heading writes it: "Key". */
  String role(Light light) {
    return notation.say("drawing.role." + light.role().name().toLowerCase(Locale.ROOT));
  }

  /** A bearing as a compass says it: "007°". */
  static String bearing(Degrees bearing) {
    long whole = Math.floorMod(Math.round(bearing.value()), 360L);
    String digits = Long.toString(whole);
    return "000".substring(digits.length()) + digits + "°";
  }
}
