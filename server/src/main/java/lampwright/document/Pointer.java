package lampwright.document;

import org.jspecify.annotations.Nullable;

/**
 * A place in a JSON document (RFC 6901), such as {@code /lights/0/place/z_m}. Its text is put
 * together when somebody asks: of the places that a reading comes by, hardly any has a problem.
 */
public final class Pointer {

  private static final int NO_ITEM = -1;

  private final @Nullable Pointer owner;

  /** The name of a field, or all of the text where there is no owner. */
  private final String name;

  private final int index;

  private Pointer(@Nullable Pointer owner, String name, int index) {
    this.owner = owner;
    this.name = name;
    this.index = index;
  }

  /**
   * A place that is known by its text.
   *
   * @param text the pointer as it is written; empty for the whole document
   */
  public Pointer(String text) {
    this(null, text, NO_ITEM);
  }

  public static Pointer root() {
    return new Pointer("");
  }

  public Pointer field(String field) {
    return new Pointer(this, field, NO_ITEM);
  }

  public Pointer item(int item) {
    return new Pointer(this, "", item);
  }

  /** The pointer as it is written; empty for the whole document. */
  public String text() {
    StringBuilder text = new StringBuilder();
    writeTo(text);
    return text.toString();
  }

  private void writeTo(StringBuilder text) {
    if (owner == null) {
      text.append(name);
      return;
    }
    owner.writeTo(text);
    text.append('/');
    if (index == NO_ITEM) {
      text.append(name.replace("~", "~0").replace("/", "~1"));
    } else {
      text.append(index);
    }
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Pointer pointer && text().equals(pointer.text());
  }

  @Override
  public int hashCode() {
    return text().hashCode();
  }

  @Override
  public String toString() {
    return text();
  }
}
