package lampwright.learning.drill;

import java.util.ArrayList;
import java.util.List;
import lampwright.setup.Light;

/** What keeps drills fair. */
final class Fair {

  private Fair() {}

  /**
   * An answer by number with those slips that cannot be mistaken for it or for each other; the
   * first of two that are near each other stays.
   */
  static Answer.OfNumber number(Measure measure, double value, Answer.Slip... slips) {
    List<Answer.Slip> told = new ArrayList<>();
    for (Answer.Slip slip : slips) {
      if (!measure.isNear(value, slip.value())
          && told.stream().noneMatch(other -> measure.isNear(other.value(), slip.value()))) {
        told.add(slip);
      }
    }
    return new Answer.OfNumber(measure, value, told);
  }

  /** The id of a light as sentences have it, to be replaced by its name. */
  static String quoted(Light light) {
    return "“" + light.id() + "”";
  }

  /** The number as it is shown with so many decimals: people compute with what they see. */
  static double shown(double value, int decimals) {
    double scale = 1;
    for (int i = 0; i < decimals; i++) {
      scale *= 10;
    }
    return Math.rint(value * scale) / scale;
  }
}
