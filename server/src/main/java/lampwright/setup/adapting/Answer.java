package lampwright.setup.adapting;

import java.util.List;
import lampwright.setup.LightId;

/** What came of adapting a setup to a kit. */
public sealed interface Answer {

  /**
   * The kit can make every light, each as near as its losses say.
   *
   * @param adaptations the best first; at least one
   */
  record Adapted(List<Adaptation> adaptations) implements Answer {
    public Adapted {
      adaptations = List.copyOf(adaptations);
    }
  }

  /**
   * The kit cannot make every light, or no camera setting fulfils the limits.
   *
   * @param reasons what falls short, in words
   * @param unlit the lights that no head is left for, in the setup's order
   * @param remedies what would help, smallest change first, in words
   * @param nearest what the kit can make; empty where no camera setting is possible
   */
  record NotEnoughGear(
      List<String> reasons, List<LightId> unlit, List<String> remedies, List<Adaptation> nearest)
      implements Answer {
    public NotEnoughGear {
      reasons = List.copyOf(reasons);
      unlit = List.copyOf(unlit);
      remedies = List.copyOf(remedies);
      nearest = List.copyOf(nearest);
    }
  }
}
