package lampwright.setup;

/** How a value is known. */
public enum Known {
  /** A meter said it. */
  METERED,
  /** Somebody set it on a dial or with a tape. */
  SET,
  /** Somebody judged it. */
  ESTIMATED,
  /** The engine computed it. */
  COMPUTED
}
