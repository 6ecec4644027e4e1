package lampwright.web.pages;

import java.util.List;
import java.util.Map;
import lampwright.setup.Light;
import lampwright.setup.LightId;
import lampwright.setup.SetupDocument;
import lampwright.setup.figures.Figures;
import lampwright.wording.MissingInput;
import lampwright.wording.MissingWords;
import lampwright.wording.Wording;

/**
 * A setup with its figures, and its lights' names as pages print them.
 *
 * @param words of whoever reads
 * @param numbers each light's place in the build order, as on the plan
 */
record FiguresOf(
    SetupDocument setup, Figures figures, Map<LightId, Integer> numbers, Wording words) {

  static FiguresOf of(SetupDocument setup, Figures figures, Wording words) {
    return new FiguresOf(setup, figures, setup.numbersInBuildOrder(), words);
  }

  int number(LightId id) {
    return numbers.getOrDefault(id, 0);
  }

  Light light(LightId id) {
    return figures.get(id).light();
  }

  String role(LightId id) {
    return words.role(light(id).role());
  }

  /** "3 Rim". */
  String name(LightId id) {
    return words.light(number(id), light(id));
  }

  /** What is missing among the pointers that match one of the expressions, as one sentence. */
  String missing(String... wanted) {
    return missingWords().sentence(figures.needs(), wanted);
  }

  List<MissingInput> allMissing() {
    return missingWords().of(figures.needs());
  }

  MissingWords missingWords() {
    return new MissingWords(setup, words);
  }

  /** The lights as they are built. */
  List<LightId> inBuildOrder() {
    return setup.lightsInBuildOrder().stream().map(Light::id).toList();
  }
}
