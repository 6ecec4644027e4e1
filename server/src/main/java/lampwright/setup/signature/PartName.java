package lampwright.setup.signature;

import java.util.Locale;
import lampwright.language.Said;

/** The parts of a signature, in the order in which they are told. */
public enum PartName {
  LIGHTS,
  KEY,
  SOFTNESS,
  RATIO,
  BALANCE,
  AMBIENT,
  SUN,
  FREEZING,
  ENERGY,
  LARGEST_MODIFIER;

  /** What pages call it: "Largest modifier". */
  public Said words() {
    return Said.of("signature.part." + name().toLowerCase(Locale.ROOT));
  }
}
