package lampwright.web.http;

/**
 * What kind of work a request is. Each has places of its own, so that much of one kind cannot keep
 * another kind out.
 */
public enum Lane {
  /** Health, metrics and files that lie ready: never waits, never refused, not counted. */
  OPEN,
  /** Reading and writing, searches and pages: milliseconds of work. */
  LIGHT,
  /** A password to look at: slow on purpose. */
  PASSWORD,
  /** Recomputing, maps, packing. */
  COMPUTING,
  /** A printed sheet. */
  PRINTING,
  /** Pictures and archives, in and out. */
  FILES;

  /** Whether a member may ask for only so much of it. */
  boolean isCostly() {
    return this == COMPUTING || this == PRINTING || this == FILES;
  }
}
