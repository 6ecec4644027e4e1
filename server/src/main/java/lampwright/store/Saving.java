package lampwright.store;

/** What became of a change that was based on a revision. */
public sealed interface Saving {

  /** Kept, as this revision. */
  record Saved(int revision) implements Saving {}

  /** Not kept: somebody has changed it since, and this is the revision now. */
  record Stale(int currentRevision) implements Saving {}

  /** Not kept: there is no such thing in the studio, or no longer. */
  record Absent() implements Saving {}
}
