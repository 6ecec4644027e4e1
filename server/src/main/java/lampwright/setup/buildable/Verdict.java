package lampwright.setup.buildable;

import lampwright.engine.unit.Stops;

/** Whether a kit makes a setup as nearly as is asked for. */
public sealed interface Verdict {

  /** It does. */
  record Within() implements Verdict {}

  /**
   * It does not.
   *
   * @param howFarOff the fewest stops within which it would
   */
  record Beyond(Stops howFarOff) implements Verdict {}

  /** It does not, however much levels and ambient may differ. */
  record Never(Reason reason) implements Verdict {}

  /** What is missing, the first that is found. */
  enum Reason {
    LEVEL_NOT_KNOWN("The level of a light is not known."),
    NO_STAND_SO_HIGH("Too few stands of the kit reach as high."),
    NO_MODIFIER_OF_THAT_SIZE("No modifier of the kit makes a light as soft."),
    NO_LIGHT_REACHES("A light does not reach its target as the meter is held there."),
    NO_HEAD_LASTS("No head that fits lasts or recycles as the plan needs."),
    TOO_FEW_HEADS("The kit has too few heads."),
    TOO_FEW_MODIFIERS("The kit has too few heads and modifiers that go together."),
    NO_CAMERA_SETTING("No setting of the camera takes the flash of all heads that are needed.");

    private final String words;

    Reason(String words) {
      this.words = words;
    }

    /** The reason as a sentence. */
    public String words() {
      return words;
    }
  }
}
