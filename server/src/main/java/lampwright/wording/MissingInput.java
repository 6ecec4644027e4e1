package lampwright.wording;

import java.util.List;

/**
 * What the setup does not say about one thing.
 *
 * @param of about what ("Camera")
 * @param inputs what is missing ("its place", "the recycle time of lights 2 and 3")
 * @param sentence the same as one sentence: "Needs its place and its aim."
 */
public record MissingInput(String of, List<String> inputs, String sentence) {

  public MissingInput {
    inputs = List.copyOf(inputs);
  }
}
