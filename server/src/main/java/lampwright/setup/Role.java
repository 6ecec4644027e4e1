package lampwright.setup;

/**
 * What a light is for, in the order in which lights are set where nobody says otherwise: the key,
 * against which the others are measured; the fill, which opens what it leaves dark; what comes from
 * behind; then what hardly reaches the subject (common practice, no source).
 */
public enum Role {
  KEY,
  FILL,
  BACK,
  RIM,
  KICKER,
  HAIR,
  BACKGROUND,
  ACCENT
}
