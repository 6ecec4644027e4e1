package lampwright.learning.drill;

import java.util.Optional;

/** Makes drills of one kind. */
interface Maker {

  /**
   * A drill, as the dice fall; empty where this throw leads to none that is fair, or the material
   * has nothing for it.
   */
  Optional<Drill> make(Material material, Dice dice);
}
