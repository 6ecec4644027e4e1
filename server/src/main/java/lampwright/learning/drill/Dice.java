package lampwright.learning.drill;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;

/**
 * Chance that comes out the same for the same seed: {@link Random}, because its numbers are written
 * down in its documentation and so do not change with a new Java.
 */
final class Dice {

  private final Random random;

  Dice(long seed) {
    this.random = new Random(seed);
  }

  <T> T pick(List<T> things) {
    return things.get(random.nextInt(things.size()));
  }

  boolean flip() {
    return random.nextBoolean();
  }

  <T> List<T> shuffled(List<T> things) {
    List<T> mixed = new ArrayList<>(things);
    Collections.shuffle(mixed, random);
    return List.copyOf(mixed);
  }
}
