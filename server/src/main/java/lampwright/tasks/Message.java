package lampwright.tasks;

/**
 * Why somebody changed a setup, in their own words; kept with the revision.
 *
 * @param text may be empty
 */
public record Message(String text) {

  /** Characters that are kept. */
  public static final int LONGEST = 1_000;

  /**
   * Checks the length.
   *
   * @throws Refused Invalid at {@code /message} where it is longer than is kept
   */
  public Message {
    int length = text.codePointCount(0, text.length());
    if (length > LONGEST) {
      throw Refused.invalid(
          "/message",
          "Message (%d characters) must have at most %d. Shorten it.".formatted(length, LONGEST));
    }
  }

  /** Says nothing. */
  public static Message none() {
    return new Message("");
  }
}
