package lampwright.setup.adapting;

import java.util.ArrayList;
import java.util.List;
import lampwright.gear.Several;

/** A kit's counted pieces as single ones, because each piece can be in one place only. */
final class GearUnits {

  private GearUnits() {}

  /**
   * Each piece by itself.
   *
   * @param most of a kind that can be of use, which keeps a kit of a hundred stands small
   */
  static <G> List<G> of(List<Several<G>> counted, int most) {
    List<G> units = new ArrayList<>();
    for (Several<G> several : counted) {
      for (int i = 0; i < Math.min(several.count(), most); i++) {
        units.add(several.item());
      }
    }
    return units;
  }
}
