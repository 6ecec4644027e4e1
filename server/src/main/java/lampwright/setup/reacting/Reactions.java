package lampwright.setup.reacting;

import lampwright.setup.SetupDocument;

/** Finds what to change when something happened to a setup that stands. */
public final class Reactions {

  private Reactions() {}

  /** What to change with the setup's own gear and every dial free; see the other. */
  public static Reaction to(SetupDocument setup, Happening happening) {
    return to(setup, happening, Means.ofSetup());
  }

  /**
   * What to change; deterministic.
   *
   * @throws IllegalArgumentException where the happening names a light that the setup does not have
   */
  public static Reaction to(SetupDocument setup, Happening happening, Means means) {
    throw new UnsupportedOperationException("The search is not built yet.");
  }
}
