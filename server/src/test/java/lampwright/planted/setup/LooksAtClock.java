package lampwright.planted.setup;

import java.time.Instant;

/** Setups must be the same each time. */
record LooksAtClock(Instant instant) {
  static LooksAtClock looked() {
    return new LooksAtClock(Instant.now());
  }
}
