package lampwright.web.pages;

import java.util.List;
import java.util.Optional;
import lampwright.wording.WorkingStep;

/**
 * A drill: asked, or answered.
 *
 * @param kind what it trains
 * @param setup that it was made from
 * @param plan the setup drawn, where one looks at it to answer
 * @param judged what is said of an answer; absent before it is given
 * @param learningPath where one stands
 * @param trailPath the trail that one came from; empty for none
 * @param another the same kind once more
 */
public record DrillPage(
    Layout layout,
    String kind,
    Link setup,
    List<String> given,
    String asks,
    Form form,
    FormErrors errors,
    Optional<Svg> plan,
    Optional<Judged> judged,
    String learningPath,
    String trailPath,
    String another) {

  public DrillPage {
    given = List.copyOf(given);
  }

  public static final String KIND = "kind";
  public static final String SETUP = "setup";
  public static final String SEED = "seed";
  public static final String QUESTION = "question";
  public static final String TRAIL = "trail";
  public static final String ANSWER = "answer";

  /**
   * What is sent with an answer, and how it is given.
   *
   * @param kind the kind's word
   * @param question names the question
   * @param trail the id of the trail that one came from; empty for none
   * @param typed what was answered
   * @param unit of a number; empty where one of the options is chosen
   * @param options empty where a number is asked for
   */
  public record Form(
      String action,
      String csrf,
      String kind,
      String setup,
      int seed,
      String question,
      String trail,
      String typed,
      String unit,
      List<Option> options) {
    public Form {
      options = List.copyOf(options);
    }
  }

  /** One that can be chosen, by its place. */
  public record Option(String place, String text, boolean isChosen, boolean isRight) {}

  /**
   * What is said of an answer.
   *
   * @param typed the answer in words
   * @param slip what is likely wrong about it; empty where there is nothing to say
   * @param right the right one in words
   */
  public record Judged(
      boolean isRight,
      String typed,
      String slip,
      String right,
      List<String> why,
      List<WorkingStep> workings) {
    public Judged {
      why = List.copyOf(why);
      workings = List.copyOf(workings);
    }
  }

  /** A drawing's markup. */
  public record Svg(String markup) {}
}
