package lampwright.search;

import java.util.Comparator;

/**
 * A place in the order of hits: rank down, then id up.
 *
 * @param document of the view of the index that was asked
 */
record Place(long rank, String setup, int document) {

  static final Comparator<Place> ORDER =
      Comparator.comparingLong(Place::rank).reversed().thenComparing(Place::setup);

  /** Scores are compared in steps of this size, so that the order of a sum cannot move a page. */
  private static final double STEPS = 100_000;

  static long ofScore(double score) {
    return Math.round(score * STEPS);
  }

  double score() {
    return rank / STEPS;
  }
}
