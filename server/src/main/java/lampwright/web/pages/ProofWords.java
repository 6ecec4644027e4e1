package lampwright.web.pages;

import lampwright.setup.adapting.Proof;
import lampwright.wording.Wording;

/** How sure an answer is, in a plain sentence. */
final class ProofWords {

  /** Less is no difference that anybody could tell. */
  private static final double TOLD_STOPS = 0.05;

  private ProofWords() {}

  static String of(Proof proof, Wording words) {
    if (proof.isOptimal()) {
      return words.say("pages.proof.best");
    }
    String found =
        proof.gap() < TOLD_STOPS
            ? words.say("pages.proof.looked")
            : words.say("pages.proof.time", words.stops(proof.gap()));
    return proof.unlooked()
        ? words.say("pages.proof.unlooked", found)
        : words.say("pages.proof.all", found);
  }
}
