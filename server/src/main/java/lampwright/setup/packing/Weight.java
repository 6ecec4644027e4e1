package lampwright.setup.packing;

import java.util.List;

/**
 * What is carried in all, as far as it is known.
 *
 * @param kg of all pieces whose weight is known, ballast aside
 * @param withoutWeight how many pieces there are besides whose weight nobody wrote down; gels and
 *     filters aside
 */
public record Weight(double kg, int withoutWeight) {

  static Weight of(List<PackedKind> kinds) {
    double kg = 0;
    int without = 0;
    for (PackedKind kind : kinds) {
      kg += kind.kg().orElse(0.0);
      if (kind.isWeighed() && kind.eachKg().isEmpty()) {
        without += kind.count();
      }
    }
    return new Weight(kg, without);
  }
}
