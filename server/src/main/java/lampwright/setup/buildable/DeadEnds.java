package lampwright.setup.buildable;

import java.util.Arrays;

/**
 * What was left of a kit, after so many lights, where the rest of the lights did not find enough:
 * other ways to the same need not be tried again. States are told apart by 64 bits of them, which
 * two of some thousands share about once in 10^11 setups.
 */
final class DeadEnds {

  private static final int SIZE = 1 << 14;

  /** More would make it slow; then some are tried again. */
  private static final int MOST = SIZE / 2;

  private final long[] table = new long[SIZE];
  private int count;

  void clear() {
    if (count > 0) {
      Arrays.fill(table, 0);
      count = 0;
    }
  }

  /** Spreads the bits of a small number, so that sums of it tell states apart. */
  static long spread(long number) {
    long bits = (number + 1) * 0x9E3779B97F4A7C15L;
    bits = (bits ^ (bits >>> 30)) * 0xBF58476D1CE4E5B9L;
    bits = (bits ^ (bits >>> 27)) * 0x94D049BB133111EBL;
    return (bits ^ (bits >>> 31)) | 1;
  }

  boolean has(long state) {
    return table[find(state)] != 0;
  }

  void add(long state) {
    if (count < MOST) {
      int at = find(state);
      count += table[at] == 0 ? 1 : 0;
      table[at] = state;
    }
  }

  private int find(long state) {
    int at = (int) (state >>> 50);
    while (table[at] != 0 && table[at] != state) {
      at = (at + 1) & (SIZE - 1);
    }
    return at;
  }
}
