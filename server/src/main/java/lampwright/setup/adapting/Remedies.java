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

  private Remedies() {}

  static List<String> of(LightFigures light, Modifier modifier, PowerSetting power) {
    List<String> remedies = new ArrayList<>();
    double missing = power.shortfall().value();
    if (missing > WORTH_MENDING) {
      closer(light, modifier, power.shortfall()).ifPresent(remedies::add);
      int heads = HeadCount.neededFor(power.shortfall());
      if (heads <= 4) {
        remedies.add(heads + " such heads on this light.");
      }
      remedies.add(
          stops(missing) + " more ISO or aperture, which lifts every light and the ambient.");
    }
    if (power.excess().value() > WORTH_MENDING) {
      FallOff.distanceForGain(modifier.face(), light.distance(), power.excess().negated())
          .ifPresent(
              farther ->
                  remedies.add(
                      "Farther away: from "
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
        .map(near -> "Closer: from " + metres(light.distance()) + " to " + metres(near) + ".");
  }

  static String stops(double value) {
    return String.format(Locale.ROOT, "%.1f stop", value) + (Math.abs(value) < 1.05 ? "" : "s");
  }

  private static String metres(Metres distance) {
    return String.format(Locale.ROOT, "%.1f m", distance.value());
  }
}
