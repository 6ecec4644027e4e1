package lampwright.web.pages;

import java.util.List;
import java.util.Optional;

/**
 * One's tokens for programs, and a form that makes one.
 *
 * @param action where the form posts to
 * @param csrfToken what forms must carry
 * @param name what was typed
 * @param questions to choose in, in the order of the page
 * @param made the one that was just made
 * @param tokens the newest first
 */
public record TokensPage(
    Layout layout,
    String action,
    String csrfToken,
    String name,
    List<Question> questions,
    Optional<Made> made,
    List<One> tokens,
    FormErrors errors) {

  public static final String NAME = "name";
  static final String AT_MOST = "at_most";
  static final String STUDIO = "studio";
  static final String DAYS = "days";

  public TokensPage {
    questions = List.copyOf(questions);
    tokens = List.copyOf(tokens);
  }

  /**
   * A field of several choices.
   *
   * @param id of the field
   */
  public record Question(String id, String label, List<Choice> choices) {

    public Question {
      choices = List.copyOf(choices);
    }
  }

  /**
   * One answer.
   *
   * @param value as the form sends it; may be empty
   */
  public record Choice(String value, String words, boolean chosen) {}

  /**
   * What is shown once.
   *
   * @param example a line that a shell can run
   */
  public record Made(String name, String secret, String example) {

    /** No record's text may carry a secret into a log. */
    @Override
    public String toString() {
      return "Made[" + name + "]";
    }
  }

  /**
   * A token.
   *
   * @param reach what it may do, in words
   * @param life from when to when, in words
   * @param isOver whether nobody comes in by it any more
   * @param used when it was last, in words
   * @param revokePath where the form posts to that revokes it
   */
  public record One(
      String name, String reach, String life, boolean isOver, String used, String revokePath) {}
}
