package lampwright.engine.sun;

/** A half of a solar day. */
public enum HalfDay {
  /** From the lowest sun to noon, the sun in the east at most places. */
  RISING,
  /** From noon to the next lowest sun. */
  SETTING
}
