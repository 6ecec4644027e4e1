package lampwright.setup.reacting;

import lampwright.setup.Role;
import lampwright.setup.SetupDocument;
import lampwright.setup.adapting.Weights;

/**
 * What is lost, in weighted stops: the weights with which setups are adapted to a kit, so that one
 * loss means the same everywhere.
 *
 * @param moving whether a subject moves, so that the shutter time is part of the look
 */
record Toll(Weights weights, boolean moving) {

  /** For a stop by which a light must be stronger: slower, and fewer frames; a judgement. */
  static final double POWER = 0.1;

  /** What is left of a given-up light's loss where its neighbour carries its share; a judgement. */
  static final double CARRIED = 0.5;

  static Toll of(SetupDocument setup) {
    boolean moving =
        setup.subjects().stream().flatMap(s -> s.speedMPerS().stream()).anyMatch(v -> v > 0);
    return new Toll(Weights.Preset.FEWEST_DIALS.weights(), moving);
  }

  double ambient(double missStops) {
    return weights.ambient() * Weights.ambientCount(missStops);
  }

  double depth(double stops) {
    return weights.depth() * Math.abs(stops);
  }

  double time(double stops) {
    return weights.ofTime(moving) * Math.abs(stops);
  }

  /** Of more noise than the setup's; less of it makes up for nothing. */
  double noise(double moreStops) {
    return weights.iso() * Math.max(0, moreStops);
  }

  /** Of a light by which a miss is multiplied. */
  static double ofRole(Role role) {
    return Weights.ofRole(role);
  }

  double givenUp(Role role) {
    return weights.givenUp() * Weights.ofRole(role);
  }
}
