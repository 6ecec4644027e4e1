package lampwright.web.pages;

import java.util.Arrays;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import lampwright.wording.Wording;

/**
 * Why a take is kept or not, as it is said most often on the day (common practice, no source): one
 * tap each. What is kept of them are their words, as if they had been typed.
 */
enum TakeReason {
  MOMENT(true),
  FACE(true),
  EYES(false),
  FOCUS(false),
  EARLY(false),
  LATE(false),
  MISFIRE(false),
  FRAME(false);

  private final boolean isForIt;

  TakeReason(boolean isForIt) {
    this.isForIt = isForIt;
  }

  /** The field of a form that is sent where it was chosen. */
  private String field() {
    return "reason-" + Wording.key(this);
  }

  private String say(Wording words) {
    return words.say("pages.takes.reason." + Wording.key(this));
  }

  /** Those that speak for a take, or those against it, as a form shows them. */
  static List<TakeForm.Reason> choices(
      boolean isForIt, UnaryOperator<String> typed, Wording words) {
    return Arrays.stream(values())
        .filter(reason -> reason.isForIt == isForIt)
        .map(
            reason ->
                new TakeForm.Reason(
                    reason.field(), reason.say(words), !typed.apply(reason.field()).isEmpty()))
        .toList();
  }

  /** Those that were chosen, and what was typed behind them, in one line. */
  static String why(UnaryOperator<String> typed, String freely, Wording words) {
    return String.join(
        " ",
        Stream.concat(
                Arrays.stream(values())
                    .filter(reason -> !typed.apply(reason.field()).isEmpty())
                    .map(reason -> reason.say(words) + "."),
                Stream.of(freely).filter(text -> !text.isEmpty()))
            .toList());
  }
}
