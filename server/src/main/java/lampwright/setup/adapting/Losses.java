package lampwright.setup.adapting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import lampwright.engine.exposure.ExposureSettings;
import lampwright.engine.unit.Degrees;
import lampwright.engine.unit.Stops;
import lampwright.gear.Gel;
import lampwright.gear.Modifier;
import lampwright.setup.SetupDocument;

/**
 * What an adaptation loses against the setup, in words: levels before softness, softness before
 * what the camera does.
 */
record Losses(
    SetupDocument setup,
    ExposureSettings settings,
    Optional<Stops> ambientChange,
    Stops depthChange,
    Optional<Double> framingChange,
    List<AdaptedLight> lights,
    Weights weights) {

  /** A third of a stop is just visible side by side; common practice, no source. */
  private static final double VISIBLE_STOPS = 1.0 / 3 - 1e-9;

  private static final double NOTICED_FRAMING = 0.03;

  /** A shift that is just visible side by side; common practice, no source. */
  static final double SEEN_MIRED = 10;

  private static final double SEEN_AT_AN_EDGE = 0.1;

  /** Half a doubling of a face's size changes the edge of a shadow; common practice, no source. */
  private static final double NOTICED_DOUBLINGS = 0.5;

  private static final double NOTICED_ISO_STOPS = 1 - 1e-9;

  List<String> inWords() {
    List<String> losses = new ArrayList<>();
    List<AdaptedLight> weightiestFirst =
        lights.stream().sorted(Comparator.comparingDouble(this::weight).reversed()).toList();
    weightiestFirst.forEach(light -> ofLevel(light, losses));
    ambientChange
        .filter(change -> Math.abs(change.value()) >= VISIBLE_STOPS)
        .ifPresent(change -> losses.add("The ambient is " + brighterOrDarker(change) + "."));
    weightiestFirst.forEach(light -> ofShape(light, losses));
    weightiestFirst.forEach(light -> ofColour(light, losses));
    weightiestFirst.forEach(light -> ofEdge(light, losses));
    ofCamera(losses);
    framingChange
        .filter(change -> Math.abs(change) >= NOTICED_FRAMING)
        .ifPresent(change -> losses.add(framing(change)));
    return losses;
  }

  private double weight(AdaptedLight light) {
    return Weights.ofRole(light.original().light().role())
        * light.made().map(made -> Math.abs(made.deviation().value())).orElse(weights.givenUp());
  }

  private static String name(AdaptedLight light) {
    return "“" + light.original().light().id() + "”";
  }

  private static void ofLevel(AdaptedLight light, List<String> losses) {
    if (light.made().isEmpty()) {
      losses.add(name(light) + " is given up.");
    } else if (Math.abs(light.made().get().deviation().value()) >= VISIBLE_STOPS) {
      losses.add(name(light) + " is " + brighterOrDarker(light.made().get().deviation()) + ".");
    }
  }

  private static void ofShape(AdaptedLight light, List<String> losses) {
    if (light.made().isEmpty()) {
      return;
    }
    AdaptedLight.Made made = light.made().get();
    Degrees before = light.original().angularSize();
    double doublings = Likeness.doublings(before, made.angularSize());
    if (Math.abs(doublings) >= NOTICED_DOUBLINGS) {
      losses.add(
          name(light)
              + (doublings > 0 ? " is softer" : " is harder")
              + ": seen from its target it is "
              + degrees(made.angularSize())
              + " wide instead of "
              + degrees(before)
              + ".");
    }
    ofBeam(name(light), light.original().light().modifierOrStandard(), made.modifier(), losses);
  }

  /** Where the light goes besides its target: a snoot's pool is not a reflector's. */
  private static void ofBeam(String name, Modifier before, Modifier now, List<String> losses) {
    boolean narrow = before.grid() || before.kind() == Modifier.Kind.SNOOT;
    boolean stillNarrow = now.grid() || now.kind() == Modifier.Kind.SNOOT;
    if (narrow && !stillNarrow) {
      losses.add(
          name
              + " spills: "
              + now.name()
              + " instead of "
              + before.name()
              + ". Flag off what it must not reach.");
    }
  }

  private static void ofColour(AdaptedLight light, List<String> losses) {
    if (light.made().isEmpty()) {
      return;
    }
    double change = shift(light.made().get().gels()) - shift(light.original().light().gels());
    if (Math.abs(change) > SEEN_MIRED) {
      losses.add(
          String.format(
              Locale.ROOT,
              "%s is %.0f mired %s: the kit's gels come no nearer.",
              name(light),
              Math.abs(change),
              change > 0 ? "warmer" : "cooler"));
    }
  }

  private static double shift(List<Gel> gels) {
    return gels.stream().mapToDouble(gel -> gel.shift().value()).sum();
  }

  private static void ofEdge(AdaptedLight light, List<String> losses) {
    light
        .made()
        .map(AdaptedLight.Made::edgeLoss)
        .filter(loss -> loss.value() > SEEN_AT_AN_EDGE)
        .ifPresent(
            loss ->
                losses.add(
                    name(light)
                        + " lasts longer than the whole frame is open: the edge that is exposed"
                        + " first loses "
                        + stops(loss.value())
                        + "."));
  }

  private void ofCamera(List<String> losses) {
    double depth = depthChange.value();
    if (Math.abs(depth) >= VISIBLE_STOPS) {
      losses.add(
          depth > 0
              ? "More is sharp, as if closed down by " + stops(depth) + "."
              : "Less is sharp, as if opened up by " + stops(-depth) + ".");
    }
    double time = settings.time().stopsOver(setup.exposure().time()).value();
    if (Math.abs(time) >= VISIBLE_STOPS) {
      losses.add(
          settings.time()
              + " instead of "
              + setup.exposure().time()
              + ": movement in the ambient smears "
              + (time > 0 ? "more." : "less."));
    }
    if (settings.iso().stopsOver(setup.exposure().iso()).value() >= NOTICED_ISO_STOPS) {
      losses.add(settings.iso() + " instead of " + setup.exposure().iso() + ": more noise.");
    }
  }

  static String stops(double value) {
    return String.format(Locale.ROOT, "%.1f stop", value) + (Math.abs(value) < 1.05 ? "" : "s");
  }

  private static String brighterOrDarker(Stops change) {
    return stops(Math.abs(change.value()))
        + (change.value() > 0 ? " brighter than in the setup" : " darker than in the setup");
  }

  private static String degrees(Degrees size) {
    return size.value() < 1 ? "less than 1°" : String.format(Locale.ROOT, "%.0f°", size.value());
  }

  private static String framing(double change) {
    return String.format(
        Locale.ROOT,
        "The lens takes in %.0f %% %s at the subject.",
        Math.abs(change) * 100,
        change > 0 ? "more" : "less");
  }
}
