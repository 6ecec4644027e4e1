package lampwright.document;

/**
 * One thing that is wrong with a document.
 *
 * @param pointer where, as a JSON Pointer (RFC 6901); empty for the whole document
 * @param message what is wrong and what to do, for the person who wrote the document
 */
public record Problem(String pointer, String message) {}
