package lampwright.wording;

import java.util.List;
import java.util.Map;
import lampwright.language.Said;
import lampwright.setup.Light;
import lampwright.setup.LightId;
import lampwright.setup.SetupDocument;

/** Calls lights in sentences by number and role, as the tables and the plan do: "2 Key". */
public record LightNames(SetupDocument setup, Wording words) {

  /** The sentences in the person's language, with names in the place of quoted ids. */
  public List<String> say(List<Said> sentences) {
    return sentences.stream().map(this::say).toList();
  }

  /** The sentence in the person's language, with names in the place of quoted ids. */
  public String say(Said sentence) {
    return in(words.say(sentence));
  }

  /** The sentences with names in the place of quoted ids. */
  public List<String> in(List<String> sentences) {
    return sentences.stream().map(this::in).toList();
  }

  /** The sentence with names in the place of quoted ids. */
  public String in(String sentence) {
    Map<LightId, Integer> numbers = setup.numbersInBuildOrder();
    String named = sentence;
    for (Light light : setup.lights()) {
      named =
          named.replace(
              "“" + light.id() + "”", words.light(numbers.getOrDefault(light.id(), 0), light));
    }
    return named;
  }
}
