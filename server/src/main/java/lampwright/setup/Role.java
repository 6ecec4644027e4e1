package lampwright.setup;

/** What a light is for. */
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
