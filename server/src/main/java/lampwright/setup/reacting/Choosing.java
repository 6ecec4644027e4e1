package lampwright.setup.reacting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Which of all ways are told, and in which order; see the package. */
final class Choosing {

  /** So many ways can be held against one another on a phone. */
  static final int MOST = 6;

  /** Each dial more must be worth so much, in weighted stops: a judgement. */
  static final double WORTH_A_DIAL = 0.1;

  /** Those that hold everything, fewest dials first, then least loss. */
  private static final Comparator<Candidate> HOLDING =
      Comparator.comparingInt(Candidate::dials)
          .thenComparingDouble(Candidate::loss)
          .thenComparingInt(Candidate::stage)
          .thenComparingLong(Candidate::dialSet);

  /** Those that leave something off, least loss first. */
  private static final Comparator<Candidate> NEAREST =
      Comparator.comparingDouble(Candidate::loss)
          .thenComparingInt(Candidate::dials)
          .thenComparingInt(Candidate::stage)
          .thenComparingLong(Candidate::dialSet);

  private Choosing() {}

  static List<Candidate> of(List<Candidate> found) {
    List<Candidate> holding = found.stream().filter(Candidate::holdsAll).toList();
    return holding.isEmpty() ? nearest(found) : best(holding);
  }

  private static List<Candidate> best(List<Candidate> found) {
    List<Candidate> all = worthTheirDials(found);
    all.sort(HOLDING);
    Set<Candidate> chosen = new LinkedHashSet<>(front(all));
    // Beside them, with no or one dial of the camera, the one with fewest and with least loss.
    Set<Long> seen = new HashSet<>();
    List<Candidate> plain = all.stream().filter(c -> c.camera().turned() <= 1).toList();
    for (Candidate candidate : plain) {
      if (seen.add(kind(candidate))) {
        chosen.add(candidate);
      }
    }
    seen.clear();
    for (Candidate candidate : plain.stream().sorted(NEAREST).toList()) {
      if (seen.add(kind(candidate))) {
        chosen.add(candidate);
      }
    }
    return chosen.stream().limit(MOST).sorted(HOLDING).toList();
  }

  /** In each stage the one with fewest dials and the one with least loss. */
  private static List<Candidate> nearest(List<Candidate> found) {
    List<Candidate> all = worthTheirDials(found);
    Set<Candidate> chosen = new LinkedHashSet<>();
    Set<Integer> seen = new HashSet<>();
    all.sort(NEAREST);
    for (Candidate candidate : all) {
      if (seen.add(candidate.stage())) {
        chosen.add(candidate);
      }
    }
    seen.clear();
    all.sort(HOLDING);
    for (Candidate candidate : all) {
      if (seen.add(candidate.stage())) {
        chosen.add(candidate);
      }
    }
    return chosen.stream().sorted(NEAREST).limit(MOST).toList();
  }

  /** Those than which no way loses less with as few dials, in order of dials. */
  private static List<Candidate> front(List<Candidate> inOrder) {
    List<Candidate> front = new ArrayList<>();
    double least = PowerChoice.NEVER;
    for (Candidate candidate : inOrder) {
      if (candidate.loss() < least - DialSearch.ROUNDING) {
        least = candidate.loss();
        front.add(candidate);
      }
    }
    return front;
  }

  /** Without those that turn more dials than another for hardly less loss. */
  private static List<Candidate> worthTheirDials(List<Candidate> found) {
    List<Candidate> left = new ArrayList<>();
    for (Candidate candidate : found) {
      boolean isIdle =
          found.stream()
              .anyMatch(
                  other ->
                      candidate.turnsMoreThan(other)
                          && other.loss()
                              <= candidate.loss()
                                  + WORTH_A_DIAL * (candidate.dials() - other.dials()));
      if (!isIdle) {
        left.add(candidate);
      }
    }
    return left;
  }

  /** A stage and a set of camera dials. */
  private static long kind(Candidate candidate) {
    return candidate.stage() * 16L + (candidate.dialSet() & 15);
  }
}
