package lampwright.web.pages;

import java.util.List;

/**
 * How one reads: a form of three choices.
 *
 * @param action where the form posts to
 * @param csrfToken what the form must carry
 * @param revision the one that was looked at
 * @param questions in the order of the page
 * @param kept whether a change was just kept
 * @param errors why it was not
 */
public record PreferencesPage(
    Layout layout,
    String action,
    String csrfToken,
    int revision,
    List<Question> questions,
    boolean kept,
    FormErrors errors) {

  public static final String REVISION = "revision";

  public PreferencesPage {
    questions = List.copyOf(questions);
  }

  /**
   * One matter to choose in.
   *
   * @param name of the field
   * @param words what is asked
   */
  public record Question(String name, String words, List<Choice> choices) {

    public Question {
      choices = List.copyOf(choices);
    }
  }

  /**
   * One answer.
   *
   * @param value as the form sends it; empty for none
   * @param example how something reads so; may be empty
   * @param language of its words, where they are in another than the page; may be empty
   */
  public record Choice(
      String value, String words, String example, String language, boolean chosen) {}
}
