package lampwright.wording;

import java.util.List;
import lampwright.setup.Caution;
import lampwright.setup.Cautions;
import lampwright.setup.Light;
import lampwright.setup.SetupDocument;

/**
 * A plain word of warning as it is read.
 *
 * @param danger what can hurt: "Stands in wind"; empty for an author's own words
 * @param act what to do about it
 */
public record CautionLine(String danger, String act) {

  /** All of a setup, the gravest first. */
  public static List<CautionLine> all(SetupDocument setup, Wording words) {
    return Cautions.of(setup).stream().map(caution -> of(caution, words)).toList();
  }

  /** Those of one light, while it is set up. */
  public static List<CautionLine> ofLight(SetupDocument setup, Light light, Wording words) {
    return Cautions.ofLight(setup, light).stream().map(caution -> of(caution, words)).toList();
  }

  static CautionLine of(Caution caution, Wording words) {
    return switch (caution) {
      case Caution.Own(String text) -> new CautionLine("", text);
      case Caution.Of of ->
          new CautionLine(
              words.say("caution.danger." + Wording.key(of.danger())),
              words.say("caution.act." + Wording.key(of.danger())));
    };
  }
}
