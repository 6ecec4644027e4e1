package lampwright.learning.drill;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import lampwright.language.Said;

/** Puts things before somebody to choose one from. */
final class Choosing {

  private Choosing() {}

  /**
   * An answer by choice.
   *
   * @param options in the order in which they are shown
   * @param slip what is wrong about an option that is not the right one
   */
  static <T> Answer.OfChoice among(
      List<T> options, T right, Function<T, Said> text, Function<T, Optional<Said>> slip) {
    return new Answer.OfChoice(
        options.stream()
            .map(
                option ->
                    new Answer.Option(
                        text.apply(option),
                        option.equals(right) ? Optional.empty() : slip.apply(option)))
            .toList(),
        options.indexOf(right));
  }
}
