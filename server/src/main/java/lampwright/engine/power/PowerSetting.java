package lampwright.engine.power;

import lampwright.engine.unit.Stops;

/**
 * What a head can show for a wanted power.
 *
 * @param exact the wanted power in stops below full; negative where more than full is wanted
 * @param set the nearest power that the head can show
 * @param shortfall light that is wanted beyond full power, 0 or more
 * @param excess light that the lowest power still gives too much, 0 or more
 */
public record PowerSetting(Stops exact, Stops set, Stops shortfall, Stops excess) {

  /** Returns by how many stops the setting is brighter than wanted; minus is darker. */
  public Stops deviation() {
    return exact.minus(set);
  }

  /** Asks whether the wanted power lies within what the head can do, rounding aside. */
  public boolean isReached() {
    return shortfall.value() == 0 && excess.value() == 0;
  }
}
