package lampwright.setup;

/** What can hurt where a setup is built; each has its plain words of warning in every language. */
public enum Danger {
  MAINS_OUTDOORS,
  WET,
  STANDS_IN_WIND,
  HEADS_OVERHEAD,
  RUNNING_SUBJECT,
  HEADS_NEAR_EYES,
  STORED_CHARGE
}
