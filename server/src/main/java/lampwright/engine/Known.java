package lampwright.engine;

/** How a value is known. */
public enum Known {
  /** A meter said it. */
  METERED,
  /** Somebody set it on a dial or with a tape, or it is a constant of the trade. */
  SET,
  /** Somebody judged it, or a model that is marked as such. */
  ESTIMATED,
  /** The engine computed it. */
  COMPUTED
}
