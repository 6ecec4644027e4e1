package lampwright.store;

/** A revision that tells what was really used, beside the one that was planned. */
public record UsedRevision(StoredRevision planned, StoredRevision used) {}
