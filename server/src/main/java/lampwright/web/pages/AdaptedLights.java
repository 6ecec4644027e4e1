package lampwright.web.pages;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lampwright.drawing.StopRuler;
import lampwright.drawing.Svg;
import lampwright.engine.Known;
import lampwright.engine.unit.Degrees;
import lampwright.gear.Stand;
import lampwright.setup.Light;
import lampwright.setup.LightId;
import lampwright.setup.SetupDocument;
import lampwright.setup.adapting.Adaptation;
import lampwright.setup.adapting.AdaptedLight.Made;
import lampwright.setup.figures.LightFigures;
import lampwright.wording.Deviation;
import lampwright.wording.Wording;

/**
 * The lights of an adaptation beside the setup's own.
 *
 * @param asked what the address wishes, for the links that wish more
 * @param path of the page
 */
record AdaptedLights(SetupDocument setup, WishPairs asked, String path, Wording words) {

  private static final double VISIBLE_STOPS = 1.0 / 3 - 1e-9;

  /** Less is lost in the breadth of a hand on the tape. */
  private static final double MOVED_M = 0.05;

  private static final double SHOWN_DEGREES = 2;
  private static final double SHOWN_EDGE_STOPS = 0.05;

  List<AdaptedLight> of(Adaptation adaptation) {
    Map<LightId, Integer> numbers = setup.numbersInBuildOrder();
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
    String role = words.role(was.light().role());
    AdaptedPins pins = new AdaptedPins(asked, path, was.light().id(), words);
    return new AdaptedLight(
        number,
        role,
        was(was),
        adapted.made().map(made -> now(was, made)).orElseGet(this::givenUp),
        ruler(role, was, adapted.made()),
        adapted
            .made()
            .map(made -> Deviation.of(made.deviation(), words))
            .orElse(
                new Deviation(
                    "–",
                    pins.isLeftOut()
                        ? words.say("pages.adapted.leftOutLight")
                        : words.say("pages.adapted.givenUp"),
                    true)),
        adapted.made().map(made -> notes(was, made)).orElse(""),
        pins.keep(adapted.made()),
        pins.kept());
  }

  private AdaptedLight.Means givenUp() {
    return new AdaptedLight.Means(
        words.say("pages.adapted.noHead"), "–", "", "–", "", "–", Known.COMPUTED);
  }

  private AdaptedLight.Means was(LightFigures was) {
    Light light = was.light();
    return new AdaptedLight.Means(
        words.gear(light.heads(), light.head(), light.modifier(), light.gels()),
        words.power(light.head(), light.stopsDown()),
        times(light.pops()),
        words.length(was.distance()),
        "",
        was.level().map(level -> words.reading(level.reading())).orElse("–"),
        was.level().map(level -> level.known()).orElse(Known.ESTIMATED));
  }

  private AdaptedLight.Means now(LightFigures was, Made made) {
    return new AdaptedLight.Means(
        words.gear(made.heads(), made.head(), Optional.of(made.modifier()), made.gels()),
        words.notation().written(made.powerShown()),
        times(made.pops()),
        words.length(made.distance()),
        moved(made.distance().value() - was.distance().value()),
        words.reading(made.level().reading()),
        Known.COMPUTED);
  }

  private String times(int pops) {
    return pops > 1 ? words.say("pages.adapted.flashes", pops) : "";
  }

  private String moved(double byM) {
    return Math.abs(byM) < MOVED_M
        ? ""
        : words.say(
            byM < 0 ? "pages.adapted.nearer" : "pages.adapted.farther",
            words.length(Math.abs(byM)));
  }

  private Svg ruler(String role, LightFigures was, Optional<Made> made) {
    StopRuler ruler = StopRuler.of(role, words.notation());
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

  private String notes(LightFigures was, Made made) {
    List<String> notes = new ArrayList<>();
    softness(was.angularSize().value(), made.angularSize().value()).ifPresent(notes::add);
    if (made.edgeLoss().value() >= SHOWN_EDGE_STOPS) {
      notes.add(words.say("pages.adapted.edge", words.stops(made.edgeLoss().value())));
    }
    notes.addAll(words.say(made.missing()));
    made.stand()
        .map(Stand::name)
        .filter(name -> was.light().stand().map(Stand::name).filter(name::equals).isEmpty())
        .ifPresent(name -> notes.add(words.say("pages.adapted.onStand", name)));
    made.recycle().ifPresent(recycle -> notes.add(words.readyAgain(recycle)));
    made.flashesPerCharge()
        .ifPresent(frames -> notes.add(words.say("pages.adapted.frames", words.about(frames))));
    return String.join(" ", notes);
  }

  private Optional<String> softness(double before, double after) {
    return Math.abs(before - after) < SHOWN_DEGREES
        ? Optional.empty()
        : Optional.of(
            words.say(
                after > before ? "pages.adapted.softer" : "pages.adapted.harder",
                words.degrees(new Degrees(after)),
                words.degrees(new Degrees(before))));
  }
}
