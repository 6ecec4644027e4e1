package lampwright.setup.adapting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import lampwright.engine.exposure.ExposureSettings;
import lampwright.engine.unit.Degrees;
import lampwright.engine.unit.Stops;
import lampwright.gear.Gel;
import lampwright.gear.Modifier;
import lampwright.language.Filling;
import lampwright.language.Said;
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

  List<Said> inWords() {
    List<Said> losses = new ArrayList<>();
    List<AdaptedLight> weightiestFirst =
        lights.stream().sorted(Comparator.comparingDouble(this::weight).reversed()).toList();
    weightiestFirst.forEach(light -> ofLevel(light, losses));
    ambientChange
        .filter(change -> Math.abs(change.value()) >= VISIBLE_STOPS)
        .ifPresent(
            change ->
                losses.add(
                    Said.of(
                        change.value() > 0
                            ? "adapting.loss.ambientBrighter"
                            : "adapting.loss.ambientDarker",
                        Filling.stops(Math.abs(change.value())))));
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

  private static Filling name(AdaptedLight light) {
    return Filling.text(light.original().light().id());
  }

  private static void ofLevel(AdaptedLight light, List<Said> losses) {
    if (light.made().isEmpty()) {
      losses.add(Said.of("adapting.loss.givenUp", name(light)));
    } else if (Math.abs(light.made().get().deviation().value()) >= VISIBLE_STOPS) {
      double off = light.made().get().deviation().value();
      losses.add(
          Said.of(
              off > 0 ? "adapting.loss.brighter" : "adapting.loss.darker",
              name(light),
              Filling.stops(Math.abs(off))));
    }
  }

  private static void ofShape(AdaptedLight light, List<Said> losses) {
    if (light.made().isEmpty()) {
      return;
    }
    AdaptedLight.Made made = light.made().get();
    Degrees before = light.original().angularSize();
    double doublings = Likeness.doublings(before, made.angularSize());
    if (Math.abs(doublings) >= NOTICED_DOUBLINGS) {
      losses.add(
          Said.of(
              doublings > 0 ? "adapting.loss.softer" : "adapting.loss.harder",
              name(light),
              degrees(made.angularSize()),
              degrees(before)));
    }
    ofBeam(name(light), light.original().light().modifierOrStandard(), made.modifier(), losses);
  }

  /** Where the light goes besides its target: a snoot's pool is not a reflector's. */
  private static void ofBeam(Filling name, Modifier before, Modifier now, List<Said> losses) {
    boolean narrow = before.grid() || before.kind() == Modifier.Kind.SNOOT;
    boolean stillNarrow = now.grid() || now.kind() == Modifier.Kind.SNOOT;
    if (narrow && !stillNarrow) {
      losses.add(
          Said.of(
              "adapting.loss.spills", name, Filling.text(now.name()), Filling.text(before.name())));
    }
  }

  private static void ofColour(AdaptedLight light, List<Said> losses) {
    if (light.made().isEmpty()) {
      return;
    }
    double change = shift(light.made().get().gels()) - shift(light.original().light().gels());
    if (Math.abs(change) > SEEN_MIRED) {
      losses.add(
          Said.of(
              change > 0 ? "adapting.loss.warmer" : "adapting.loss.cooler",
              name(light),
              Filling.number(Math.abs(change), 0)));
    }
  }

  private static double shift(List<Gel> gels) {
    return gels.stream().mapToDouble(gel -> gel.shift().value()).sum();
  }

  private static void ofEdge(AdaptedLight light, List<Said> losses) {
    light
        .made()
        .map(AdaptedLight.Made::edgeLoss)
        .filter(loss -> loss.value() > SEEN_AT_AN_EDGE)
        .ifPresent(
            loss ->
                losses.add(
                    Said.of("adapting.loss.edge", name(light), Filling.stops(loss.value()))));
  }

  private void ofCamera(List<Said> losses) {
    double depth = depthChange.value();
    if (Math.abs(depth) >= VISIBLE_STOPS) {
      losses.add(
          Said.of(
              depth > 0 ? "adapting.loss.moreSharp" : "adapting.loss.lessSharp",
              Filling.stops(Math.abs(depth))));
    }
    double time = settings.time().stopsOver(setup.exposure().time()).value();
    if (Math.abs(time) >= VISIBLE_STOPS) {
      losses.add(
          Said.of(
              time > 0 ? "adapting.loss.smearsMore" : "adapting.loss.smearsLess",
              Filling.shown(settings.time()),
              Filling.shown(setup.exposure().time())));
    }
    if (settings.iso().stopsOver(setup.exposure().iso()).value() >= NOTICED_ISO_STOPS) {
      losses.add(
          Said.of(
              "adapting.loss.noise",
              Filling.shown(settings.iso()),
              Filling.shown(setup.exposure().iso())));
    }
  }

  private static Filling degrees(Degrees size) {
    return (size.value() < 1
            ? Said.of("adapting.loss.underADegree")
            : Said.of("adapting.loss.degrees", Filling.number(size.value(), 0)))
        .asFilling();
  }

  private static Said framing(double change) {
    return Said.of(
        change > 0 ? "adapting.loss.framesMore" : "adapting.loss.framesLess",
        Filling.number(Math.abs(change) * 100, 0));
  }
}
