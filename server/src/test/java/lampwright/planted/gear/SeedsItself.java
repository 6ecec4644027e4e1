package lampwright.planted.gear;

import java.util.Random;

/** Dice need a seed handed in. */
record SeedsItself(Random random) {
  static SeedsItself unseeded() {
    return new SeedsItself(new Random());
  }
}
