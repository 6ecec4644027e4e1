package lampwright.setup.signature;

import lampwright.language.Said;

/** One fact of a signature, which can say itself. */
public sealed interface Part
    permits AmbientOffset,
        FlashBalance,
        FrameEnergy,
        Freezing,
        KeyLight,
        KeyToFill,
        LargestModifier,
        LightCounts,
        Softness,
        SunInSetup {

  /** Which one it is. */
  PartName part();

  /** It in a few words, such as "fairly soft". */
  Said words();

  /** It in one plain sentence, with how it was found. */
  Said sentence();
}
