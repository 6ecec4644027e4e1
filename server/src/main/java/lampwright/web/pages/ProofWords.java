package lampwright.web.pages;

import lampwright.setup.adapting.Proof;

/** How sure an answer is, in a plain sentence. */
final class ProofWords {

  /** Less is no difference that anybody could tell. */
  private static final double TOLD_STOPS = 0.05;

  private ProofWords() {}

  static String of(Proof proof) {
    if (proof.isOptimal()) {
      return "No better way exists with this kit.";
    }
    String found =
        proof.gap() < TOLD_STOPS
            ? "No better way exists among those that were looked at"
            : "The best found in the time: one that costs at most "
                + Wording.stops(proof.gap())
                + " less may exist";
    return proof.unlooked()
        ? found + "; the least likely pairs of head and modifier were not looked at."
        : found + ".";
  }
}
