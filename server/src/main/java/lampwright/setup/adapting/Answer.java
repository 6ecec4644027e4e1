package lampwright.setup.adapting;

import java.util.List;
import lampwright.language.Said;
import lampwright.setup.LightId;

/** What came of adapting a setup to a kit. */
public sealed interface Answer {

  /**
   * The kit can make every light, each as near as its losses say.
   *
   * @param adaptations the best first; at least one
   * @param proof of the first
   */
  record Adapted(List<Adaptation> adaptations, Proof proof) implements Answer {
    public Adapted {
      adaptations = List.copyOf(adaptations);
    }
  }

  /**
   * The kit cannot make every light, or no camera setting fulfils the limits.
   *
   * @param reasons what falls short, in words
   * @param unlit the lights that no head is left for, in the setup's order
   * @param remedies what would help, smallest change first, each checked by solving again
   * @param nearest what the kit can make; empty where no camera setting is possible
   * @param proof that nothing nearer exists
   */
  record NotEnoughGear(
      List<Said> reasons,
      List<LightId> unlit,
      List<Remedy> remedies,
      List<Adaptation> nearest,
      Proof proof)
      implements Answer {
    public NotEnoughGear {
      reasons = List.copyOf(reasons);
      unlit = List.copyOf(unlit);
      remedies = List.copyOf(remedies);
      nearest = List.copyOf(nearest);
    }
  }
}
