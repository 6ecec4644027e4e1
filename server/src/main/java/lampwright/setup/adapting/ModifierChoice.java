package lampwright.setup.adapting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lampwright.engine.match.Assignment;
import lampwright.engine.unit.Degrees;
import lampwright.engine.unit.Metres;
import lampwright.engine.unit.Stops;
import lampwright.gear.Kit;
import lampwright.gear.Modifier;
import lampwright.setup.Light;
import lampwright.setup.figures.LightFigures;

/**
 * Gives each light the modifier of the kit that is most like its own, each piece once, at the least
 * unlikeness over all lights. A head's standard reflector is always there.
 */
final class ModifierChoice {

  /** A bare reflector's size, for comparing how soft a point and a box are. */
  private static final Degrees LEAST_SIZE = new Degrees(1);

  private static final double OTHER_KIND = 0.5;
  private static final double GRID_DIFFERS = 0.5;
  private static final double PER_DOUBLING_OF_SPREAD = 0.3;

  private ModifierChoice() {}

  static List<Modifier> of(List<LightFigures> lights, Kit kit, Weights weights) {
    List<Modifier> units = new ArrayList<>(GearUnits.of(kit.modifiers(), lights.size()));
    for (int i = 0; i < lights.size(); i++) {
      units.add(Modifier.standardReflector());
    }
    double[][] cost = new double[lights.size()][units.size()];
    for (int i = 0; i < lights.size(); i++) {
      for (int j = 0; j < units.size(); j++) {
        cost[i][j] =
            Weights.ofRole(lights.get(i).light().role())
                * unlikeness(lights.get(i), units.get(j), weights);
      }
    }
    List<Integer> columns = Assignment.leastCost(cost).columnOfRow();
    List<Modifier> chosen = new ArrayList<>();
    for (int column : columns) {
      chosen.add(units.get(column));
    }
    return chosen;
  }

  private static double unlikeness(LightFigures figures, Modifier other, Weights weights) {
    Light light = figures.light();
    Modifier own = light.modifierOrStandard();
    double size = softer(figures.distance(), own, other);
    double kind = own.kind() == other.kind() ? 0 : OTHER_KIND;
    double grid = own.grid() == other.grid() ? 0 : GRID_DIFFERS;
    double spread = PER_DOUBLING_OF_SPREAD * spreadDiffers(own.spread(), other.spread());
    double carried = weights.carryPerKg() * other.weightKg().orElse(0.0);
    return weights.softness() * Math.abs(size) + kind + grid + spread + carried;
  }

  /** By how many doublings the other modifier looks larger from the target. */
  static double softer(Metres distance, Modifier own, Modifier other) {
    return doublings(own.face().angularSize(distance), other.face().angularSize(distance));
  }

  /** By how many doublings a size is larger than another, both taken to be a degree at least. */
  static double doublings(Degrees from, Degrees to) {
    double before = Math.max(LEAST_SIZE.value(), from.value());
    return Stops.ofRatio(Math.max(LEAST_SIZE.value(), to.value()) / before).value();
  }

  private static double spreadDiffers(Optional<Degrees> own, Optional<Degrees> other) {
    if (own.isEmpty() || other.isEmpty()) {
      return 0;
    }
    return Math.abs(Stops.ofRatio(other.get().value() / own.get().value()).value());
  }
}
