package lampwright.drawing;

import java.util.Optional;
import lampwright.engine.unit.Stops;
import lampwright.setup.takes.ComparedReading;
import lampwright.wording.Deviation;
import lampwright.wording.Wording;

/**
 * One reading of the day beside what was expected.
 *
 * @param light its name: "Rim left"
 * @param uncertainty "±0.3"; empty where none is known
 * @param off by how much it is off; absent where that cannot be said
 * @param ruler an open dot where it was metered, a bar where it was expected
 * @param sentence what is off, and what helps; empty where nothing is off
 */
public record MeteredLine(
    String light,
    String metered,
    String expected,
    String uncertainty,
    Optional<Deviation> off,
    Svg ruler,
    String sentence) {

  /** Puts a comparison into words. */
  public static MeteredLine of(ComparedReading of, Wording words) {
    String name = Wording.capital(of.reading().light().text().replace('-', ' '));
    StopRuler ruler =
        StopRuler.of(name, words.notation())
            .withNames(words.say("taking.metered"), words.say("taking.expected"));
    ruler = of.metered().map(at -> at.fromShooting().value()).map(ruler::withDot).orElse(ruler);
    ruler = of.expected().map(at -> at.fromShooting().value()).map(ruler::withBar).orElse(ruler);
    ruler = of.uncertainty().map(Stops::value).map(ruler::withBand).orElse(ruler);
    return new MeteredLine(
        name,
        words.reading(of.reading().meter().fNumber()),
        of.expected().map(level -> words.reading(level.reading())).orElseGet(words::notKnown),
        of.uncertainty().map(words::giveOrTake).orElse(""),
        of.over().map(over -> Deviation.of(over, words)),
        ruler.svg(),
        of.over().isPresent() && of.remedy().isEmpty() ? "" : words.say(of.sentence()));
  }
}
