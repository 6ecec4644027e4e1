package lampwright.picture;

/**
 * A file that no picture can be made of.
 *
 * @param reason of what kind the trouble is
 * @param sentence about this file, for whoever sent it: what is wrong and what to do
 */
public record Unusable(Reason reason, String sentence)
    implements PictureReading, PictureExamination {

  /** The kinds of trouble. */
  public enum Reason {
    /** It is none of the formats that are taken. */
    NOT_A_PICTURE,
    /** It would have more pixels than are decoded here. */
    TOO_MANY_PIXELS,
    /** It ends before it is complete. */
    TRUNCATED,
    /** It is of a format that is taken, and broken or of a kind that is not read. */
    UNREADABLE
  }

  /** How parsers leave off; it never leaves the package. */
  static final class Found extends Exception {
    private static final long serialVersionUID = 1L;

    private final transient Unusable unusable;

    Found(Reason reason, String sentence) {
      super(sentence, null, false, false);
      this.unusable = new Unusable(reason, sentence);
    }

    Unusable unusable() {
      return unusable;
    }
  }

  static Found truncated() {
    return new Found(
        Reason.TRUNCATED, "The file ends before the picture is complete. Send it again.");
  }

  static Found unreadable(String what) {
    return new Found(
        Reason.UNREADABLE, what + " Open it in an editor for pictures and save it anew.");
  }
}
