package lampwright.web.pages;

import java.util.List;

/**
 * What the setup does not say about one thing.
 *
 * @param of about what ("Camera")
 * @param inputs what is missing ("its place", "the recycle time of lights 2 and 3")
 */
public record MissingInput(String of, List<String> inputs) {

  public MissingInput {
    inputs = List.copyOf(inputs);
  }

  /** As one sentence: "Needs its place and its aim." */
  public String sentence() {
    return "Needs " + listed(inputs) + ".";
  }

  /** "a", "a and b", "a, b and c". */
  static String listed(List<String> words) {
    if (words.size() < 2) {
      return String.join("", words);
    }
    return String.join(", ", words.subList(0, words.size() - 1)) + " and " + words.getLast();
  }
}
