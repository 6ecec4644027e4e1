package lampwright.learning.glossary;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** What some terms are about, in the order in which one would learn them. */
public enum TermGroup {
  LIGHT_AND_EXPOSURE,
  LIGHTS_AND_ROLES,
  SHAPE_AND_SOFTNESS,
  FLASH,
  AMBIENT_AND_SUN,
  COLOUR,
  DEPTH_AND_MOVEMENT,
  POWER_AND_SAFETY,
  OUR_OWN_WORDS;

  /** As keys of phrases write it: "depth_and_movement". */
  public String key() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** As addresses write it: "depth-and-movement". */
  public String anchor() {
    return key().replace('_', '-');
  }

  /** Its terms, at least one. */
  public List<Term> terms() {
    return Arrays.stream(Term.values()).filter(term -> term.group() == this).toList();
  }
}
