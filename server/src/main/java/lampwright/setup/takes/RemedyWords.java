package lampwright.setup.takes;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import lampwright.engine.light.Remedy;
import lampwright.engine.unit.Stops;
import lampwright.gear.Head;
import lampwright.setup.Light;
import lampwright.setup.LightId;
import lampwright.setup.figures.LightFigures;

/** Puts a deviation and what helps into one sentence for whoever stands at the light. */
final class RemedyWords {

  private RemedyWords() {}

  static String sentence(
      LightId id, Optional<LightFigures> figures, Optional<Stops> over, Optional<Remedy> remedy) {
    String name = name(id);
    if (figures.isEmpty()) {
      return name + " is not one of the lights of the revision that was shot.";
    }
    if (over.isEmpty()) {
      return name + ": not enough is known to say what the meter should have given.";
    }
    double off = over.get().value();
    if (remedy.isEmpty()) {
      return name + " as expected.";
    }
    List<String> ways = ways(figures.get(), remedy.get());
    return String.format(
            Locale.ROOT, "%s %s %s", name, stops(Math.abs(off)), off < 0 ? "under" : "over")
        + (ways.isEmpty()
            ? ". Neither its place nor its dial alone takes that away."
            : ": " + String.join(", or ", ways) + ".");
  }

  private static List<String> ways(LightFigures figures, Remedy remedy) {
    List<String> ways = new ArrayList<>();
    remedy
        .distance()
        .ifPresent(
            to -> {
              double by = to.value() - figures.distance().value();
              ways.add(
                  String.format(
                      Locale.ROOT,
                      "about %s m %s",
                      metres(Math.abs(by)),
                      by < 0 ? "closer" : "further away"));
            });
    remedy.stopsDown().ifPresent(down -> ways.add(turned(figures.light(), down)));
    return ways;
  }

  private static String turned(Light light, Stops down) {
    Head head = light.head();
    double up = light.stopsDown().orElseThrow().value() - down.value();
    return turn(Math.abs(up))
        + (up > 0 ? " up" : " down")
        + ", to "
        + head.scale().show(down, head.energy());
  }

  /** Thirds as photographers say them, else tenths. */
  private static String turn(double stops) {
    double thirds = stops * 3;
    if (Math.abs(thirds - 1) < 0.05) {
      return "a third";
    }
    return Math.abs(thirds - 2) < 0.05 ? "two thirds" : stops(stops);
  }

  private static String stops(double size) {
    String tenths = String.format(Locale.ROOT, "%.1f", size);
    return tenths + (tenths.startsWith("0.") || tenths.equals("1.0") ? " stop" : " stops");
  }

  /** To the 5 cm that the engine gives, without a needless zero. */
  private static String metres(double size) {
    double steps = Math.rint(size * 20) / 20;
    boolean isTenths = Math.abs(steps * 10 - Math.rint(steps * 10)) < 1e-6;
    return String.format(Locale.ROOT, isTenths ? "%.1f" : "%.2f", steps);
  }

  /** "Rim left" for the light {@code rim-left}. */
  private static String name(LightId id) {
    String words = id.text().replace('-', ' ');
    return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }
}
