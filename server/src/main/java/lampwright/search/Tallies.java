package lampwright.search;

import java.util.SortedMap;
import java.util.TreeMap;
import org.apache.lucene.util.NumericUtils;

/**
 * How often numbers came up, without an object for each: a table with open addresses (D. Knuth,
 * "The Art of Computer Programming", volume 3, section 6.4), at most half full.
 */
final class Tallies {

  /** As the index keeps them, see {@link NumericUtils#doubleToSortableLong}. */
  private long[] numbers = new long[32];

  /** One for each; 0 where the place is free. */
  private long[] counts = new long[32];

  private int different;

  void add(long number) {
    int place = place(number);
    if (counts[place]++ == 0) {
      numbers[place] = number;
      different++;
      if (2 * different > numbers.length) {
        grow();
      }
    }
  }

  private int place(long number) {
    int last = numbers.length - 1;
    // The high bits of a number with few decimals differ, the low ones do not.
    int place = Long.hashCode(number * 0x9E3779B97F4A7C15L) & last;
    while (counts[place] != 0 && numbers[place] != number) {
      place = (place + 1) & last;
    }
    return place;
  }

  private void grow() {
    long[] oldNumbers = numbers;
    long[] oldCounts = counts;
    numbers = new long[2 * oldNumbers.length];
    counts = new long[2 * oldNumbers.length];
    for (int i = 0; i < oldNumbers.length; i++) {
      if (oldCounts[i] != 0) {
        int place = place(oldNumbers[i]);
        numbers[place] = oldNumbers[i];
        counts[place] = oldCounts[i];
      }
    }
  }

  /** The smallest first. */
  SortedMap<Double, Long> byNumber() {
    SortedMap<Double, Long> byNumber = new TreeMap<>();
    for (int i = 0; i < numbers.length; i++) {
      if (counts[i] != 0) {
        byNumber.put(NumericUtils.sortableLongToDouble(numbers[i]), counts[i]);
      }
    }
    return byNumber;
  }
}
