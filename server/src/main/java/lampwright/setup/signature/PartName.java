package lampwright.setup.signature;

import java.util.Locale;

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

  /** What pages call it: "largest modifier". */
  public String words() {
    return name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }
}
