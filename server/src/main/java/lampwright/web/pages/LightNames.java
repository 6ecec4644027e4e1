package lampwright.web.pages;

import java.util.List;
import java.util.Map;
import lampwright.setup.Light;
import lampwright.setup.LightId;
import lampwright.setup.SetupDocument;

/** Calls lights in sentences by number and role, as the tables and the plan do: "2 Key". */
record LightNames(SetupDocument setup) {

  /** The sentences with names in the place of quoted ids. */
  List<String> in(List<String> sentences) {
    return sentences.stream().map(this::in).toList();
  }

  String in(String sentence) {
    Map<LightId, Integer> numbers = SetupView.numbers(setup);
    String named = sentence;
    for (Light light : setup.lights()) {
      named = named.replace("“" + light.id() + "”", WishWords.light(numbers, light));
    }
    return named;
  }
}
