package lampwright.web.api;

import lampwright.setup.adapting.Proof;

/**
 * How sure it is that nothing better exists.
 *
 * @param atLeastStops what no adaptation can cost less than
 * @param gapStops by how much the first one's cost may be above that
 * @param unlooked whether there were more combinations than are looked at
 */
record ProofJson(boolean optimal, double atLeastStops, double gapStops, boolean unlooked) {

  static ProofJson of(Proof proof) {
    return new ProofJson(proof.isOptimal(), proof.atLeast(), proof.gap(), proof.unlooked());
  }
}
