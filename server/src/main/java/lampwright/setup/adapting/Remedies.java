package lampwright.setup.adapting;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import lampwright.engine.light.FallOff;
import lampwright.engine.power.HeadCount;
import lampwright.engine.power.PowerSetting;
import lampwright.engine.unit.Metres;
import lampwright.engine.unit.Stops;
import lampwright.gear.Modifier;
import lampwright.setup.figures.LightFigures;

/** What would help a light that falls short, smallest change first. */
final class Remedies {

  /** Less than what a meter repeats needs no remedy. */
  private static final double WORTH_MENDING = 0.1;

  /** Nearer than this a head is in the picture or in somebody's face. */
  private static final double NEAREST_M = 0.4;

  /** Four heads on one light are the most that anybody rigs. */
  private static final double MOST_BY_HEADS_STOPS = 2;

  /** Beyond this the picture is another one. */
  private static final double MOST_BY_CAMERA_STOPS = 3;

  private Remedies() {}

  static List<String> of(LightFigures light, Modifier modifier, PowerSetting power) {
    List<String> remedies = new ArrayList<>();
    double missing = power.shortfall().value();
    if (missing > WORTH_MENDING) {
      closer(light, modifier, power.shortfall()).ifPresent(remedies::add);
      if (missing <= MOST_BY_CAMERA_STOPS) {
        remedies.add(
            "Open up or raise the ISO by "
                + stops(missing)
                + ", which lifts every light and the ambient.");
      }
      if (missing <= MOST_BY_HEADS_STOPS) {
        remedies.add(heads(HeadCount.neededFor(power.shortfall())));
      }
    }
    if (power.excess().value() > WORTH_MENDING) {
      FallOff.distanceForGain(modifier.face(), light.distance(), power.excess().negated())
          .ifPresent(
              farther ->
                  remedies.add(
                      "Move it farther away: from "
                          + metres(light.distance())
                          + " to "
                          + metres(farther)
                          + "."));
      remedies.add("A grey gel or scrim that takes " + stops(power.excess().value()) + ".");
    }
    return remedies;
  }

  private static Optional<String> closer(LightFigures light, Modifier modifier, Stops shortfall) {
    return FallOff.distanceForGain(modifier.face(), light.distance(), shortfall)
        .filter(near -> near.value() >= NEAREST_M)
        .map(
            near ->
                "Move it closer: from " + metres(light.distance()) + " to " + metres(near) + ".");
  }

  private static String heads(int count) {
    String words =
        switch (count) {
          case 2 -> "Two";
          case 3 -> "Three";
          default -> "Four";
        };
    return words + " such heads on this light.";
  }

  static String stops(double value) {
    return String.format(Locale.ROOT, "%.1f stop", value) + (Math.abs(value) < 1.05 ? "" : "s");
  }

  private static String metres(Metres distance) {
    return String.format(Locale.ROOT, "%.1f m", distance.value());
  }
}
