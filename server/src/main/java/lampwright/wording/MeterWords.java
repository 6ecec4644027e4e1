package lampwright.wording;

import java.util.Optional;
import lampwright.engine.light.LightingRatio;
import lampwright.engine.unit.Stops;
import lampwright.setup.Light;
import lampwright.setup.Subject;
import lampwright.setup.Target;
import lampwright.setup.without.Metered;
import lampwright.setup.without.Shift;

/** What a meter gets, and where it is, in words. */
public record MeterWords(Wording words) {

  /** Asks whether a shift can be told in the person's fraction of a stop, and its levels too. */
  public boolean shows(Shift shift) {
    return !figure(shift.from()).equals(figure(shift.to()))
        && shift.change().filter(words::isNothing).isEmpty();
  }

  /** A level as tables print it, "−1.3"; in a word where it is dark. */
  public String figure(Optional<Stops> level) {
    return level.map(words::signed).orElseGet(() -> words.say("without.level.dark"));
  }

  /** "1.3 stops under", "at the shooting exposure", "dark". */
  public String level(Optional<Stops> level) {
    return level(level, "without.level.at");
  }

  /** The same as that from which something falls or rises. */
  String levelFrom(Optional<Stops> level) {
    return level(level, "without.level.from");
  }

  /** The same as that to which it falls or rises. */
  String levelTo(Optional<Stops> level) {
    return level(level, "without.level.to");
  }

  private String level(Optional<Stops> level, String atExposure) {
    if (level.isEmpty()) {
      return words.say("without.level.dark");
    }
    Stops stops = level.get();
    if (words.isNothing(stops)) {
      return words.say(atExposure);
    }
    return words.say(
        stops.value() < 0 ? "without.level.under" : "without.level.over",
        words.stops(Math.abs(stops.value())));
  }

  /** "3.2 : 1", never parted at a line's end. */
  public String ratio(LightingRatio ratio) {
    return words.fixed(ratio.litToShadow(), 1) + "\u00a0:\u00a01";
  }

  /** Where it is, to stand in a sentence: "at the face". */
  public String where(Metered at) {
    return switch (at) {
      case Metered.ForLight(Light light) -> words.where(light.target());
      case Metered.AtTarget(Target target) -> words.where(target);
      case Metered.AtSubject(Subject subject) -> words.say("without.atSubject", subject.name());
    };
  }

  /** What it is at: "face". */
  public String name(Metered at) {
    return switch (at) {
      case Metered.ForLight(Light light) -> light.target().name();
      case Metered.AtTarget(Target target) -> target.name();
      case Metered.AtSubject(Subject subject) -> subject.name();
    };
  }
}
