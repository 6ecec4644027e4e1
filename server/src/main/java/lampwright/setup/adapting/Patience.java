package lampwright.setup.adapting;

import java.util.function.BooleanSupplier;
import java.util.function.Supplier;

/**
 * How long somebody waits. What is asked now and then says yes once that was long enough; the best
 * that was found so far is then taken.
 *
 * @param search while adaptations are looked for; where it ends the search, the answer tells the
 *     gap to what could still be better
 * @param remedies begins the wait for what would help where something falls short; what was not
 *     tried by its end is not offered
 */
public record Patience(BooleanSupplier search, Supplier<BooleanSupplier> remedies) {

  /** However long it takes; deterministic. */
  public static Patience endless() {
    return new Patience(() -> false, () -> () -> false);
  }
}
