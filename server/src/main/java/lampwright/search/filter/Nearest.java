package lampwright.search.filter;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Finds the word that was meant: the fewest slips of the pen away, at most one in three letters.
 */
public final class Nearest {

  private static final int LONGEST = 80;

  private record Candidate(String word, int slips) {}

  private Nearest() {}

  /** The nearest of the known words, of equally near ones the first; empty where none is near. */
  public static Optional<String> find(String written, List<String> known) {
    if (written.length() > LONGEST) {
      return Optional.empty();
    }
    return known.stream()
        .filter(word -> word.length() <= LONGEST)
        .map(word -> new Candidate(word, slips(written, word)))
        .filter(near -> near.slips() <= Math.max(1, written.length() / 3))
        .min(Comparator.comparingInt(Candidate::slips))
        .map(Candidate::word);
  }

  /** Letters changed, left out, put in, or swapped with their neighbour (restricted edits). */
  static int slips(String a, String b) {
    int[][] least = new int[a.length() + 1][b.length() + 1];
    for (int i = 0; i <= a.length(); i++) {
      for (int j = 0; j <= b.length(); j++) {
        if (i == 0 || j == 0) {
          least[i][j] = i + j;
          continue;
        }
        int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
        int best =
            Math.min(least[i - 1][j - 1] + change, Math.min(least[i - 1][j], least[i][j - 1]) + 1);
        boolean swapped =
            i > 1
                && j > 1
                && a.charAt(i - 1) == b.charAt(j - 2)
                && a.charAt(i - 2) == b.charAt(j - 1);
        least[i][j] = swapped ? Math.min(best, least[i - 2][j - 2] + 1) : best;
      }
    }
    return least[a.length()][b.length()];
  }
}
