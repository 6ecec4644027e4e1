package lampwright.setup.signature;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Takes down what is missing while a signature is computed. */
final class Gaps {

  private final List<Missing> missing = new ArrayList<>();

  /** A part that cannot be told. */
  <T extends Part> Optional<T> none(PartName part, Why because, List<String> needs) {
    missing.add(new Missing(part, because, needs.stream().distinct().toList()));
    return Optional.empty();
  }

  List<Missing> all() {
    return List.copyOf(missing);
  }
}
