package lampwright.setup.takes;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import lampwright.engine.light.Remedy;
import lampwright.engine.unit.Stops;
import lampwright.gear.Head;
import lampwright.language.Filling;
import lampwright.language.Said;
import lampwright.setup.Light;
import lampwright.setup.LightId;
import lampwright.setup.figures.LightFigures;

/** Puts a deviation and what helps into one sentence for whoever stands at the light. */
final class RemedyWords {

  private RemedyWords() {}

  static Said sentence(
      LightId id, Optional<LightFigures> figures, Optional<Stops> over, Optional<Remedy> remedy) {
    Filling name = Filling.text(name(id));
    if (figures.isEmpty()) {
      return Said.of("taking.reading.noLight", name);
    }
    if (over.isEmpty()) {
      return Said.of("taking.reading.notKnown", name);
    }
    if (remedy.isEmpty()) {
      return Said.of("taking.reading.asExpected", name);
    }
    double off = over.get().value();
    Filling by = Filling.stops(Math.abs(off));
    List<Filling> ways = ways(figures.get(), remedy.get());
    String key = off < 0 ? "taking.reading.under" : "taking.reading.over";
    return switch (ways.size()) {
      case 0 -> Said.of(key + ".noWay", name, by);
      case 1 -> Said.of(key + ".oneWay", name, by, ways.getFirst());
      default -> Said.of(key + ".twoWays", name, by, ways.getFirst(), ways.getLast());
    };
  }

  private static List<Filling> ways(LightFigures figures, Remedy remedy) {
    List<Filling> ways = new ArrayList<>();
    remedy
        .distance()
        .ifPresent(
            to -> {
              double by = to.value() - figures.distance().value();
              ways.add(
                  Said.of(
                          by < 0 ? "taking.reading.closer" : "taking.reading.farther",
                          metres(Math.abs(by)))
                      .asFilling());
            });
    remedy.stopsDown().ifPresent(down -> ways.add(turned(figures.light(), down).asFilling()));
    return ways;
  }

  private static Said turned(Light light, Stops down) {
    Head head = light.head();
    double up = light.stopsDown().orElseThrow().value() - down.value();
    return Said.of(
        up > 0 ? "taking.reading.up" : "taking.reading.down",
        turn(Math.abs(up)),
        Filling.shown(head.scale().show(down, head.energy())));
  }

  /** Thirds as photographers say them, else tenths. */
  private static Filling turn(double stops) {
    double thirds = stops * 3;
    if (Math.abs(thirds - 1) < 0.05) {
      return Said.of("taking.reading.aThird").asFilling();
    }
    return Math.abs(thirds - 2) < 0.05
        ? Said.of("taking.reading.twoThirds").asFilling()
        : Filling.stops(stops);
  }

  /** To the 5 cm that the engine gives, without a needless zero. */
  private static Filling metres(double size) {
    double steps = Math.rint(size * 20) / 20;
    boolean isTenths = Math.abs(steps * 10 - Math.rint(steps * 10)) < 1e-6;
    return Filling.length(steps, isTenths ? 1 : 2);
  }

  /** "Rim left" for the light {@code rim-left}. */
  private static String name(LightId id) {
    String words = id.text().replace('-', ' ');
    return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }
}
