package lampwright.store;

/**
 * A document as it once was.
 *
 * @param document JSON
 */
public record StoredRevision(Revision revision, String label, String document) {}
