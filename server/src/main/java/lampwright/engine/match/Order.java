package lampwright.engine.match;

/** Orders of positions by their values, without boxes. Stable: equal values keep their order. */
final class Order {

  private Order() {}

  /** Returns 0, 1, 2 and so on. */
  static int[] asTheyAre(int size) {
    int[] order = new int[size];
    for (int i = 0; i < size; i++) {
      order[i] = i;
    }
    return order;
  }

  /** Returns the positions of the first values by rising value (merge sort). */
  static int[] rising(double[] values, int size) {
    int[] from = asTheyAre(size);
    int[] to = new int[size];
    for (int width = 1; width < size; width *= 2) {
      for (int start = 0; start < size; start += 2 * width) {
        merge(
            values,
            from,
            to,
            start,
            Math.min(size, start + width),
            Math.min(size, start + 2 * width));
      }
      int[] swap = from;
      from = to;
      to = swap;
    }
    return from;
  }

  private static void merge(double[] values, int[] from, int[] to, int start, int middle, int end) {
    int left = start;
    int right = middle;
    for (int i = start; i < end; i++) {
      boolean takesLeft =
          left < middle && (right == end || values[from[left]] <= values[from[right]]);
      to[i] = takesLeft ? from[left++] : from[right++];
    }
  }

  /** Sorts some positions by rising value in place (insertion sort: for few). */
  static void rise(int[] positions, int size, double[] values) {
    for (int i = 1; i < size; i++) {
      int moved = positions[i];
      int at = i;
      while (at > 0 && values[positions[at - 1]] > values[moved]) {
        positions[at] = positions[at - 1];
        at--;
      }
      positions[at] = moved;
    }
  }
}
