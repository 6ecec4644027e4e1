package lampwright.learning.drill;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import lampwright.language.Said;

/** The answer to a drill, as it is judged. */
public sealed interface Answer {

  /**
   * A number.
   *
   * @param value the right one, computed by the engine
   * @param slips wrong ones that people come to, each with what is wrong about it; none is near the
   *     right one
   */
  record OfNumber(Measure measure, double value, List<Slip> slips) implements Answer {
    public OfNumber {
      slips = List.copyOf(slips);
    }

    /** What is to be said of a number. */
    public Verdict judge(double answer) {
      if (measure.isNear(value, answer)) {
        return new Verdict.Right();
      }
      return new Verdict.Wrong(
          slips.stream()
              .filter(slip -> measure.isNear(slip.value(), answer))
              .min(Comparator.comparingDouble(slip -> measure.off(slip.value(), answer)))
              .map(Slip::why));
    }
  }

  /** A wrong number that people come to. */
  record Slip(double value, Said why) {}

  /**
   * One of several.
   *
   * @param right its place among the options, from 0
   */
  record OfChoice(List<Option> options, int right) implements Answer {
    public OfChoice {
      options = List.copyOf(options);
    }

    /**
     * What is to be said of an option.
     *
     * @param option its place, from 0 to less than there are
     */
    public Verdict judge(int option) {
      return option == right ? new Verdict.Right() : new Verdict.Wrong(options.get(option).slip());
    }
  }

  /**
   * One that can be chosen.
   *
   * @param slip what is wrong about it, where there is something to say
   */
  record Option(Said text, Optional<Said> slip) {}

  /** Whether an answer was right. */
  sealed interface Verdict {

    /** It was, within the trade's tolerance. */
    record Right() implements Verdict {}

    /**
     * It was not.
     *
     * @param slip the likely slip, where the answer tells
     */
    record Wrong(Optional<Said> slip) implements Verdict {}
  }
}
