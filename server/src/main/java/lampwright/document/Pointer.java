package lampwright.document;

/**
 * A place in a JSON document (RFC 6901), such as {@code /lights/0/place/z_m}.
 *
 * @param text the pointer as it is written; empty for the whole document
 */
public record Pointer(String text) {

  public static Pointer root() {
    return new Pointer("");
  }

  public Pointer field(String name) {
    boolean isPlain = name.indexOf('~') < 0 && name.indexOf('/') < 0;
    return new Pointer(text + "/" + (isPlain ? name : name.replace("~", "~0").replace("/", "~1")));
  }

  public Pointer item(int index) {
    return new Pointer(text + "/" + index);
  }

  @Override
  public String toString() {
    return text;
  }
}
