package lampwright.web.pages;

/** Which of the two themes a page is drawn in. */
public enum Theme {
  /** What the person's device prefers. */
  DEVICE(""),
  /** Ink on warm paper. */
  DAY("day"),
  /** Cream on near-black, for a dark studio. */
  DIM("dim");

  /** The cookie that {@code theme.js} writes when somebody chooses; it holds {@link #key}. */
  public static final String COOKIE = "lampwright_theme";

  private final String key;

  Theme(String key) {
    this.key = key;
  }

  /** The value in the cookie and in the page's {@code data-theme}; empty for {@link #DEVICE}. */
  public String key() {
    return key;
  }

  /** The theme of a cookie's value; what is unknown is left to the device. */
  public static Theme of(String cookie) {
    return switch (cookie) {
      case "day" -> DAY;
      case "dim" -> DIM;
      default -> DEVICE;
    };
  }
}
