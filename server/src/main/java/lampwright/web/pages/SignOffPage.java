package lampwright.web.pages;

import java.util.Optional;

/**
 * A build that was handed in, to be judged.
 *
 * @param by who built it
 * @param trail the trail's name, and the stage's title where it still has it
 * @param task what was to be shown; empty where the trail no longer says
 * @param form where it is judged; absent for who may not
 * @param judged what was said of it; empty before
 */
public record SignOffPage(
    Layout layout,
    String by,
    String trail,
    String task,
    Link setup,
    TakesPage.TakeCard take,
    Optional<Form> form,
    String judged,
    String words,
    FormErrors errors,
    String learningPath) {

  public static final String VERDICT = "verdict";
  public static final String SIGN_OFF = "sign_off";
  public static final String WORDS = "words";

  /** Where it is judged. */
  public record Form(String action, String csrf, String typed) {}
}
