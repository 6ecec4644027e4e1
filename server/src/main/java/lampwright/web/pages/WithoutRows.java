package lampwright.web.pages;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lampwright.setup.Ambient;
import lampwright.setup.Burning;
import lampwright.setup.Light;
import lampwright.setup.LightId;
import lampwright.setup.SetupDocument;
import lampwright.setup.figures.Figures;
import lampwright.setup.without.LightByLight;
import lampwright.setup.without.Shift;
import lampwright.wording.MeterWords;
import lampwright.wording.MissingWords;
import lampwright.wording.TurningWords;
import lampwright.wording.Wording;

/** What each light of a setup does, and the ambient, as rows. */
final class WithoutRows {

  private final LightByLight lights;
  private final SetupDocument setup;
  private final Figures figures;
  private final Wording words;
  private final TurningWords turning;
  private final MeterWords meters;
  private final Map<LightId, Integer> numbers;

  WithoutRows(LightByLight lights, Figures figures, Wording words) {
    this.lights = lights;
    this.setup = lights.setup();
    this.figures = figures;
    this.words = words;
    this.turning = new TurningWords(lights, words);
    this.meters = new MeterWords(words);
    this.numbers = setup.numbersInBuildOrder();
  }

  /** In build order, the ambient last. */
  List<WithoutPage.Row> all(Burning now, String path) {
    List<WithoutPage.Row> rows = new ArrayList<>();
    for (Light light : setup.lightsInBuildOrder()) {
      rows.add(row(light, now, path));
    }
    setup.ambient().ifPresent(ambient -> rows.add(row(ambient, now, path)));
    return rows;
  }

  private WithoutPage.Row row(Light light, Burning now, String path) {
    LightId id = light.id();
    Optional<Shift> shift =
        lights.own(id).map(own -> own.shift(Burning.ALL, Burning.ALL.without(id)));
    List<String> lines = new ArrayList<>(turning.without(id));
    if (shift.isEmpty()) {
      String needs = new MissingWords(setup, words).sentence(figures.get(id).needs(), ".*");
      if (!needs.isEmpty()) {
        lines.add(needs);
      }
    }
    return new WithoutPage.Row(
        "light-" + number(id),
        number(id),
        words.role(light.role()),
        light.target().name(),
        light.reason().orElse(""),
        shift.map(
            of ->
                WithoutView.ruler(
                    words.light(number(id), light),
                    of,
                    words.say("without.with"),
                    words.say("without.without"),
                    words)),
        shift.map(of -> meters.figure(of.from())).orElse(""),
        shift.map(of -> meters.figure(of.to())).orElse(""),
        lines,
        now.burns(id),
        WithoutPages.path(path, Burning.noLightOf(setup).with(id).withoutAmbient(), setup),
        WithoutPages.path(path, Burning.ALL.without(id), setup));
  }

  private WithoutPage.Row row(Ambient ambient, Burning now, String path) {
    return new WithoutPage.Row(
        "light-ambient",
        0,
        words.say("without.ambient"),
        "",
        ambient.how().orElse(""),
        Optional.empty(),
        "",
        "",
        turning.withoutAmbient(),
        now.ambient(),
        WithoutPages.path(path, Burning.noLightOf(setup), setup),
        WithoutPages.path(path, Burning.ALL.withoutAmbient(), setup));
  }

  private int number(LightId id) {
    return numbers.getOrDefault(id, 0);
  }
}
