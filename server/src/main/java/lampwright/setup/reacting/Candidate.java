package lampwright.setup.reacting;

import java.util.List;

/**
 * Places of all dials within a stage, found by the search.
 *
 * @param stage its number
 * @param steps of each of the stage's lights, by number; {@link #LEFT} where it is not turned
 * @param dialSet what is turned, a bit each: the camera's, then the lights'
 * @param dials how many things a hand turns, heads that are moved included
 * @param loss in weighted stops
 * @param holdsAll whether nothing is given up and everything within a third of where it was
 */
record Candidate(
    int stage,
    CameraSettings.Places camera,
    List<Integer> steps,
    long dialSet,
    int dials,
    double loss,
    boolean holdsAll) {

  /** Of a light that is not turned. */
  static final int LEFT = -1;

  Candidate {
    steps = List.copyOf(steps);
  }

  /** Asks whether another of the same stage turns only some of this one's dials. */
  boolean turnsMoreThan(Candidate other) {
    return stage == other.stage
        && dialSet != other.dialSet
        && (dialSet & other.dialSet) == other.dialSet;
  }
}
