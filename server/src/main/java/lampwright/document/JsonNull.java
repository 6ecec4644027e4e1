package lampwright.document;

/** JSON's {@code null}, so that no Java {@code null} stands in a parsed document. */
public enum JsonNull {
  NULL
}
