package lampwright.setup.buildable;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lampwright.engine.unit.Stops;
import lampwright.gear.Head;

/**
 * What a shutter leaves of every head's powers at one time.
 *
 * @param clear whether it takes nothing from any of them
 * @param models in the kit's order
 * @param leastLoss the least that it takes from any head at any power, in stops
 * @param mostLoss the most
 */
record ShutterReach(boolean clear, List<Model> models, double leastLoss, double mostLoss) {

  /** Less is rounding. */
  private static final double ROUNDING = 1e-9;

  /** The powers of one model, in stops below full, with what the shutter takes on top. */
  static final class Model {
    private final double[] down;
    private final boolean rising;

    private Model(double[] down) {
      this.down = down;
      boolean up = true;
      for (int i = 1; i < down.length; i++) {
        up &= down[i] > down[i - 1];
      }
      this.rising = up;
    }

    /** By how much the best power misses; infinite where the time and the head do not go. */
    double miss(double exact, int first) {
      double least = Double.POSITIVE_INFINITY;
      if (!rising) {
        for (int i = first; i < down.length; i++) {
          least = Math.min(least, Math.abs(exact - down[i]));
        }
        return least;
      }
      int low = first;
      int high = down.length;
      while (low < high) {
        int middle = (low + high) >>> 1;
        if (down[middle] < exact) {
          low = middle + 1;
        } else {
          high = middle;
        }
      }
      if (low < down.length) {
        least = down[low] - exact;
      }
      return low > first ? Math.min(least, exact - down[low - 1]) : least;
    }
  }

  static ShutterReach of(List<Optional<List<Double>>> losses, List<Head> heads) {
    List<Model> models = new ArrayList<>();
    double least = Double.POSITIVE_INFINITY;
    double most = 0;
    boolean clear = true;
    for (int h = 0; h < heads.size(); h++) {
      if (losses.get(h).isEmpty()) {
        models.add(new Model(new double[0]));
        clear = false;
        continue;
      }
      List<Double> taken = losses.get(h).get();
      List<Stops> powers = HeadReach.powers(heads.get(h));
      double[] down = new double[taken.size()];
      for (int i = 0; i < down.length; i++) {
        down[i] = powers.get(i).value() + taken.get(i);
        least = Math.min(least, taken.get(i));
        most = Math.max(most, taken.get(i));
      }
      models.add(new Model(down));
    }
    clear &= most < ROUNDING;
    return new ShutterReach(clear, models, least, most);
  }
}
