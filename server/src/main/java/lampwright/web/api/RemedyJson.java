package lampwright.web.api;

import java.util.Optional;
import lampwright.engine.unit.Stops;
import lampwright.setup.LightId;
import lampwright.setup.adapting.Remedy;

/**
 * A change that would help, checked by solving again with it.
 *
 * @param kind in small letters: {@code closer}, {@code more_heads}
 * @param light the light it is for; absent where it is for all
 * @param leavesStops by how much the light still misses its level with it; absent where it is given
 *     up
 */
record RemedyJson(String kind, Optional<String> light, String words, Optional<Double> leavesStops) {

  static RemedyJson of(Remedy remedy) {
    return new RemedyJson(
        FiguresJson.word(remedy.kind()),
        remedy.light().map(LightId::text),
        InEnglish.say(remedy.words()),
        remedy.leaves().map(Stops::value));
  }
}
