package lampwright.web.pages;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import lampwright.drawing.StopRuler;
import lampwright.drawing.Svg;
import lampwright.engine.light.LightingRatio;
import lampwright.engine.unit.Stops;
import lampwright.setup.Burning;
import lampwright.setup.Light;
import lampwright.setup.LightId;
import lampwright.setup.SetupDocument;
import lampwright.setup.figures.Figures;
import lampwright.setup.without.FaceSides;
import lampwright.setup.without.LightByLight;
import lampwright.setup.without.MeterPlace;
import lampwright.setup.without.Metered;
import lampwright.setup.without.Shift;
import lampwright.wording.Figure;
import lampwright.wording.MeterWords;
import lampwright.wording.Wording;

/** Puts on a page what the lights of a setup do, each and together. */
final class WithoutView {

  private final LightByLight lights;
  private final SetupDocument setup;
  private final Figures figures;
  private final Wording words;
  private final MeterWords meters;
  private final Map<LightId, Integer> numbers;

  WithoutView(LightByLight lights, Figures figures, Wording words) {
    this.lights = lights;
    this.setup = lights.setup();
    this.figures = figures;
    this.words = words;
    this.meters = new MeterWords(words);
    this.numbers = setup.numbersInBuildOrder();
  }

  /**
   * What somebody asks.
   *
   * @param path of the page
   * @param stage how far the setup has grown, from 1, where it is shown growing
   */
  record Asked(String setupPath, String path, Burning burning, Optional<Integer> stage) {}

  WithoutPage page(Layout layout, Asked asked, PlanView plan) {
    Optional<LightByLight.Stage> stage = asked.stage().map(at -> lights.stages().get(at - 1));
    Burning before = stage.map(WithoutView::compared).orElse(Burning.ALL);
    Burning now = asked.burning();
    WithoutStages growing = new WithoutStages(lights, figures, words);
    return new WithoutPage(
        layout,
        setup.title(),
        asked.setupPath(),
        asked.path(),
        plan,
        flat(now),
        switches(now),
        stage.map(growing::name).orElseGet(() -> state(now)),
        asked.path(),
        growing.part(asked.path(), asked.stage()),
        lights.face().map(face -> sides(face, before, now, stage.isPresent())),
        now.equals(before)
            ? Optional.empty()
            : Optional.of(changed(before, now, stage.isPresent())),
        new WithoutRows(lights, figures, words).all(now, asked.path()));
  }

  /** The ambient alone is the beginning: it is compared with nothing. */
  private static Burning compared(LightByLight.Stage stage) {
    return stage.came().isPresent() ? stage.before() : stage.after();
  }

  private String flat(Burning now) {
    List<LightId> burning = setup.lights().stream().map(Light::id).filter(now::burns).toList();
    if (!burning.isEmpty()) {
      return lights.unknown().containsAll(burning) ? words.say("without.plan.unknown") : "";
    }
    return words.say(
        now.ambient() && setup.ambient().isPresent() ? "without.plan.flat" : "without.plan.dark");
  }

  private List<WithoutPage.Switch> switches(Burning now) {
    List<WithoutPage.Switch> switches = new ArrayList<>();
    for (Light light : setup.lightsInBuildOrder()) {
      switches.add(
          new WithoutPage.Switch(
              "burns-" + number(light.id()),
              WithoutPage.ON,
              light.id().text(),
              number(light.id()),
              words.role(light.role()),
              now.burns(light.id())));
    }
    if (setup.ambient().isPresent()) {
      switches.add(
          new WithoutPage.Switch(
              "burns-ambient",
              WithoutPage.AMBIENT,
              WithoutPage.ON,
              0,
              words.say("without.ambient"),
              now.ambient()));
    }
    return switches;
  }

  private String state(Burning now) {
    List<String> on = named(now, true);
    List<String> off = named(now, false);
    if (off.isEmpty()) {
      return words.say("without.state.all");
    }
    if (on.isEmpty()) {
      return words.say("without.state.nothing");
    }
    return on.size() < off.size()
        ? words.say("without.state.only", words.listed(on))
        : words.say("without.state.without", words.listed(off));
  }

  private List<String> named(Burning now, boolean burning) {
    return Stream.concat(
            setup.lightsInBuildOrder().stream()
                .filter(light -> now.burns(light.id()) == burning)
                .map(this::name),
            setup.ambient().stream()
                .filter(_ -> now.ambient() == burning)
                .map(_ -> words.say("without.theAmbient")))
        .toList();
  }

  private WithoutPage.Sides sides(FaceSides face, Burning before, Burning now, boolean growing) {
    List<Figure> shown = new ArrayList<>();
    shown.add(level(words.say("without.lit"), face.lit(before), face.lit(now), growing));
    shown.add(level(words.say("without.shadow"), face.shadow(before), face.shadow(now), growing));
    shown.add(
        figure(
            words.say("without.apart"),
            face.apart(before).map(this::size),
            face.apart(now).map(this::size),
            words.stopsUnit(),
            growing));
    shown.add(
        figure(
            face.ratio(now)
                .map(ratio -> words.say("without.ratioAndContrast", contrast(ratio)))
                .orElseGet(() -> words.say("without.ratio")),
            face.ratio(before).map(meters::ratio),
            face.ratio(now).map(meters::ratio),
            "",
            growing));
    return new WithoutPage.Sides(words.say("without.face", meters.where(face.face().at())), shown);
  }

  private Figure level(String name, Optional<Stops> before, Optional<Stops> now, boolean growing) {
    return figure(
        name,
        Optional.of(meters.figure(before)),
        Optional.of(meters.figure(now)),
        now.isPresent() ? words.stopsUnit() : "",
        growing);
  }

  /** A figure with what it was in small beside its name, where that is another. */
  private Figure figure(
      String name, Optional<String> before, Optional<String> now, String unit, boolean growing) {
    return Figure.of(
        now.orElse("–"),
        now.isPresent() ? unit : "",
        before.equals(now)
            ? name
            : words.say(growing ? "without.before" : "without.was", name, before.orElse("–")));
  }

  private String size(Stops stops) {
    return words.notation().size(Math.abs(stops.value()));
  }

  private String contrast(LightingRatio ratio) {
    return words.stops(ratio.contrast().value());
  }

  private WithoutPage.Changed changed(Burning before, Burning now, boolean growing) {
    List<WithoutPage.Level> levels = new ArrayList<>();
    List<String> same = new ArrayList<>();
    for (MeterPlace place :
        Stream.concat(lights.own().stream(), lights.subjects().stream()).toList()) {
      Shift shift = place.shift(before, now);
      if (meters.shows(shift)) {
        levels.add(level(place, shift, growing));
      } else {
        same.add(nameOf(place));
      }
    }
    return new WithoutPage.Changed(
        words.say(growing ? "without.changed.rulerStage" : "without.changed.ruler"),
        words.say(growing ? "without.changed.before" : "without.changed.all"),
        levels,
        levels.isEmpty()
            ? words.say("without.changed.nothing")
            : same.isEmpty() ? "" : words.say("without.changed.same", words.listed(same)));
  }

  private String nameOf(MeterPlace place) {
    return place.at() instanceof Metered.ForLight(Light light)
        ? name(light)
        : meters.name(place.at());
  }

  private WithoutPage.Level level(MeterPlace place, Shift shift, boolean growing) {
    boolean isLight = place.at() instanceof Metered.ForLight;
    return new WithoutPage.Level(
        place.at() instanceof Metered.ForLight(Light light) ? number(light.id()) : 0,
        place.at() instanceof Metered.ForLight(Light light)
            ? words.role(light.role())
            : Wording.capital(meters.name(place.at())),
        isLight ? meters.where(place.at()) : "",
        ruler(
            nameOf(place),
            shift,
            words.say(growing ? "without.changed.before" : "without.changed.all"),
            words.say("without.changed.now"),
            words),
        meters.figure(shift.from()),
        meters.figure(shift.to()),
        shift.change().map(words::signed).orElse("–"));
  }

  /** The level before as a ring, the one after as a bar. */
  static Svg ruler(String what, Shift shift, String ring, String bar, Wording words) {
    StopRuler ruler = StopRuler.of(what, words.notation()).withNames(ring, bar);
    if (shift.from().isPresent()) {
      ruler = ruler.withDot(shift.from().get().value());
    }
    if (shift.to().isPresent()) {
      ruler = ruler.withBar(shift.to().get().value());
    }
    return ruler.svg();
  }

  private int number(LightId id) {
    return numbers.getOrDefault(id, 0);
  }

  private String name(Light light) {
    return words.light(number(light.id()), light);
  }
}
