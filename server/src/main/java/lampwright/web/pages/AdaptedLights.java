package lampwright.web.pages;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import lampwright.drawing.StopRuler;
import lampwright.drawing.Svg;
import lampwright.gear.Stand;
import lampwright.setup.Light;
import lampwright.setup.LightId;
import lampwright.setup.SetupDocument;
import lampwright.setup.adapting.Adaptation;
import lampwright.setup.adapting.AdaptedLight.Made;
import lampwright.setup.figures.LightFigures;

/**
 * The lights of an adaptation beside the setup's own.
 *
 * @param asked what the address wishes, for the links that wish more
 * @param path of the page
 */
record AdaptedLights(SetupDocument setup, WishPairs asked, String path) {

  private static final double VISIBLE_STOPS = 1.0 / 3 - 1e-9;

  /** Less is lost in the breadth of a hand on the tape. */
  private static final double MOVED_M = 0.05;

  private static final double SHOWN_DEGREES = 2;
  private static final double SHOWN_EDGE_STOPS = 0.05;

  private static final AdaptedLight.Means GIVEN_UP =
      new AdaptedLight.Means("no head", "–", "", "–", "", "–", Known.COMPUTED);

  List<AdaptedLight> of(Adaptation adaptation) {
    Map<LightId, Integer> numbers = SetupView.numbers(setup);
    return setup.lightsInBuildOrder().stream()
        .map(light -> light(numbers.getOrDefault(light.id(), 0), find(adaptation, light.id())))
        .toList();
  }

  private static lampwright.setup.adapting.AdaptedLight find(Adaptation adaptation, LightId id) {
    return adaptation.lights().stream()
        .filter(one -> one.original().light().id().equals(id))
        .findFirst()
        .orElseThrow();
  }

  /** Asks whether it is given up, or off by what shows. */
  static boolean isOff(lampwright.setup.adapting.AdaptedLight light) {
    return light
        .made()
        .filter(made -> Math.abs(made.deviation().value()) < VISIBLE_STOPS)
        .isEmpty();
  }

  private AdaptedLight light(int number, lampwright.setup.adapting.AdaptedLight adapted) {
    LightFigures was = adapted.original();
    String role = Wording.role(was.light().role());
    AdaptedPins pins = new AdaptedPins(asked, path, was.light().id());
    return new AdaptedLight(
        number,
        role,
        was(was),
        adapted.made().map(made -> now(was, made)).orElse(GIVEN_UP),
        ruler(role, was, adapted.made()),
        adapted
            .made()
            .map(made -> Deviation.ofTenths(made.deviation().value()))
            .orElse(new Deviation("–", pins.isLeftOut() ? "left out" : "given up", true)),
        adapted.made().map(made -> notes(was, made)).orElse(""),
        pins.keep(adapted.made()),
        pins.kept());
  }

  private static AdaptedLight.Means was(LightFigures was) {
    Light light = was.light();
    return new AdaptedLight.Means(
        Wording.gear(light.heads(), light.head(), light.modifier(), light.gels()),
        Wording.power(light.head(), light.stopsDown()),
        times(light.pops()),
        Wording.metres(was.distance()),
        "",
        was.level().map(level -> level.reading().tenthsText()).orElse("–"),
        was.level().map(level -> Wording.known(level.known())).orElse(Known.ESTIMATED));
  }

  private static AdaptedLight.Means now(LightFigures was, Made made) {
    return new AdaptedLight.Means(
        Wording.gear(made.heads(), made.head(), Optional.of(made.modifier()), made.gels()),
        made.powerShown(),
        times(made.pops()),
        Wording.metres(made.distance()),
        moved(made.distance().value() - was.distance().value()),
        made.level().reading().tenthsText(),
        Known.COMPUTED);
  }

  private static String times(int pops) {
    return pops > 1 ? pops + " flashes" : "";
  }

  private static String moved(double byM) {
    return Math.abs(byM) < MOVED_M
        ? ""
        : Wording.metres(Math.abs(byM)) + (byM < 0 ? " nearer" : " farther");
  }

  private static Svg ruler(String role, LightFigures was, Optional<Made> made) {
    StopRuler ruler = StopRuler.of(role);
    if (was.level().isPresent()) {
      ruler = ruler.withDot(was.level().get().fromShooting().value());
    }
    if (made.isPresent()) {
      ruler =
          ruler
              .withBar(made.get().level().fromShooting().value())
              .withBand(made.get().level().uncertainty().value());
    }
    return ruler.svg();
  }

  private static String notes(LightFigures was, Made made) {
    List<String> notes = new ArrayList<>();
    softness(was.angularSize().value(), made.angularSize().value()).ifPresent(notes::add);
    if (made.edgeLoss().value() >= SHOWN_EDGE_STOPS) {
      notes.add("The shutter takes " + Wording.stops(made.edgeLoss().value()) + " from an edge.");
    }
    notes.addAll(made.missing());
    made.stand()
        .map(Stand::name)
        .filter(name -> was.light().stand().map(Stand::name).filter(name::equals).isEmpty())
        .ifPresent(name -> notes.add("On the " + name + "."));
    made.recycle().ifPresent(recycle -> notes.add(Wording.readyAgain(recycle)));
    made.flashesPerCharge()
        .ifPresent(frames -> notes.add("About " + Wording.about(frames) + " frames a charge."));
    return String.join(" ", notes);
  }

  private static Optional<String> softness(double before, double after) {
    return Math.abs(before - after) < SHOWN_DEGREES
        ? Optional.empty()
        : Optional.of(
            String.format(
                Locale.ROOT,
                "%s: it looks %.0f° wide from the target instead of %.0f°.",
                after > before ? "Softer" : "Harder",
                after,
                before));
  }
}
