package lampwright.web.pages;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import lampwright.engine.unit.Stops;
import lampwright.setup.LightId;
import lampwright.setup.SetupDocument;
import lampwright.setup.ShootingExposure;
import lampwright.setup.adapting.Adaptation;
import lampwright.setup.adapting.AdaptedLight;
import lampwright.setup.figures.Figures;
import lampwright.setup.figures.PowerFigures;
import lampwright.web.pages.Comparison.Cell;
import lampwright.wording.Figure;
import lampwright.wording.KeyFigures;
import lampwright.wording.Wording;

/** Lays the ways side by side. */
final class AdaptedComparison {

  private static final double SHOWN_SHARE = 0.005;
  private static final double SHOWN_DOUBLINGS = 0.15;

  private final SetupDocument setup;
  private final Figures original;
  private final List<Adaptation> ways;
  private final Wording words;
  private final AdaptedCosts costs;
  private final Map<LightId, Integer> numbers;

  AdaptedComparison(SetupDocument setup, Figures original, List<Adaptation> ways, Wording words) {
    this.setup = setup;
    this.words = words;
    this.costs = new AdaptedCosts(words);
    this.original = original;
    this.ways = ways;
    this.numbers = setup.numbersInBuildOrder();
  }

  Comparison of(WishPairs asked, String path, int shown) {
    List<Comparison.Way> names = new ArrayList<>();
    for (int i = 0; i < ways.size(); i++) {
      names.add(
          new Comparison.Way(
              String.valueOf((char) ('A' + i)),
              asked.with(WishPairs.WAY, Integer.toString(i + 1)).address(path),
              i == shown));
    }
    return new Comparison(names, rows(), strengths());
  }

  private List<Comparison.Row> rows() {
    List<Comparison.Row> rows = new ArrayList<>(camera());
    rows.add(row(words.say("pages.costs.depth"), "", way -> depth(way.depthChange())));
    rows.add(row(words.say("pages.costs.framing"), "", this::framing));
    blur(original)
        .ifPresent(
            blur ->
                rows.add(
                    row(
                        words.say("pages.adapted.blur"),
                        blur.value() + " " + blur.unit(),
                        this::blur)));
    rows.add(row(words.say("pages.adapted.farthest"), "", this::farthestOff));
    rows.add(row(words.say("pages.adapted.softness"), "", this::softness));
    rows.add(
        row(words.say("pages.adapted.ready"), pace(original), way -> cell(pace(way.figures()))));
    rows.add(
        row(
            words.say("pages.adapted.framesCharge"),
            charge(original),
            way -> cell(charge(way.figures()))));
    rows.add(row(words.say("pages.adapted.carry"), "", this::carried));
    rows.add(row(words.say("pages.adapted.cost"), "", way -> cell(costs.tenths(way.cost()))));
    return rows.stream().filter(row -> !saysNothing(row)).toList();
  }

  private List<Comparison.Row> camera() {
    ShootingExposure was = setup.exposure();
    return List.of(
        row(
            words.say("pages.common.aperture"),
            words.aperture(was.fNumber()),
            way -> cell(words.aperture(now(way).fNumber()))),
        row(
            words.say("pages.common.time"),
            words.notation().written(was.time().toString()),
            way -> cell(words.notation().written(now(way).time().toString()))),
        row(
            words.say("pages.common.iso"),
            words.iso(was.iso()),
            way -> cell(words.iso(now(way).iso()))),
        row(
            words.say("pages.adapted.greyStops"),
            filter(was.neutralDensity()),
            way -> cell(filter(now(way).neutralDensity()))),
        row(
            words.say("pages.adapted.ambientStops"),
            original.ambient().map(a -> words.signed(a.offset())).orElse(""),
            this::ambient));
  }

  private static ShootingExposure now(Adaptation way) {
    return way.document().exposure();
  }

  private String filter(Stops density) {
    return density.value() == 0 ? words.say("pages.common.none") : words.signed(density.negated());
  }

  private static Cell cell(String value) {
    return new Cell(value, "");
  }

  private Comparison.Row row(String name, String shot, Function<Adaptation, Cell> of) {
    List<Cell> cells = ways.stream().map(of).toList();
    return new Comparison.Row(name, shot, cells, cells.stream().distinct().count() > 1);
  }

  /** What no way and no setup has a word for is no row. */
  private boolean saysNothing(Comparison.Row row) {
    return !row.differs()
        && (row.shot().isEmpty() || row.shot().equals(words.say("pages.common.none")))
        && List.of(words.say("pages.common.none"), words.notKnown())
            .contains(row.cells().getFirst().value());
  }

  private Cell ambient(Adaptation way) {
    return way.ambientOffset()
        .map(
            offset ->
                new Cell(
                    words.signed(offset),
                    way.ambientChange()
                        .filter(change -> !words.isNothing(change))
                        .map(
                            change ->
                                words.say(
                                    change.value() > 0
                                        ? "pages.adapted.brighter"
                                        : "pages.adapted.darker",
                                    words.stops(Math.abs(change.value()))))
                        .orElse("")))
        .orElse(cell(words.notKnown()));
  }

  private Cell depth(Stops change) {
    return words.isNothing(change)
        ? cell(words.say("pages.legend.asShot"))
        : new Cell(
            words.stops(Math.abs(change.value())),
            change.value() > 0
                ? words.say("pages.adapted.deeper")
                : words.say("pages.adapted.shallower"));
  }

  private Cell framing(Adaptation way) {
    return way.framingChange()
        .map(
            change ->
                Math.abs(change) < SHOWN_SHARE
                    ? cell(words.say("pages.legend.asShot"))
                    : new Cell(
                        words.fixed(Math.abs(change) * 100, 0) + " %",
                        change > 0
                            ? words.say("pages.adapted.more")
                            : words.say("pages.adapted.less")))
        .orElse(cell(words.notKnown()));
  }

  private Optional<Figure> blur(Figures figures) {
    return figures.movements().stream()
        .findFirst()
        .flatMap(KeyFigures::longest)
        .map(flash -> KeyFigures.blur(flash.tenthTime(), "", words));
  }

  private Cell blur(Adaptation way) {
    return blur(way.figures())
        .map(figure -> cell(figure.value() + " " + figure.unit()))
        .orElse(cell(words.notKnown()));
  }

  private Cell farthestOff(Adaptation way) {
    Optional<AdaptedLight> unlit =
        way.lights().stream().filter(light -> light.made().isEmpty()).findFirst();
    if (unlit.isPresent()) {
      return new Cell(words.say("pages.adapted.givenUp"), name(unlit.get()));
    }
    return way.lights().stream()
        .max(Comparator.comparingDouble(light -> Math.abs(off(light))))
        .map(
            light ->
                new Cell(
                    words.signed(new Stops(off(light))),
                    words.isNothing(new Stops(off(light))) ? "" : name(light)))
        .orElse(cell(words.notKnown()));
  }

  private static double off(AdaptedLight light) {
    return light.made().map(made -> made.deviation().value()).orElse(0.0);
  }

  /** The light whose face changed most, as its target sees it. */
  private Cell softness(Adaptation way) {
    return way.lights().stream()
        .filter(light -> light.made().isPresent())
        .max(Comparator.comparingDouble(light -> Math.abs(softer(light))))
        .map(
            light ->
                Math.abs(softer(light)) < SHOWN_DOUBLINGS
                    ? cell(words.say("pages.legend.asShot"))
                    : new Cell(
                        "× " + words.fixed(StrictMath.pow(2, softer(light)), 1),
                        words.say(
                            softer(light) > 0 ? "pages.adapted.isSofter" : "pages.adapted.isHarder",
                            name(light))))
        .orElse(cell(words.notKnown()));
  }

  private static double softer(AdaptedLight light) {
    return light.made().map(AdaptedLight.Made::softer).orElse(0.0);
  }

  private String pace(Figures figures) {
    return figures
        .power()
        .pace()
        .map(pace -> words.fixed(pace.betweenFrames().value(), 1) + " s")
        .orElse(words.notKnown());
  }

  private String charge(Figures figures) {
    return figures
        .power()
        .charge()
        .map(PowerFigures.Charge::frames)
        .map(words::about)
        .orElse(words.notKnown());
  }

  private Cell carried(Adaptation way) {
    int unknown = way.carried().withoutWeight().size();
    return new Cell(
        words.fixed(way.carried().kg(), 1) + " kg",
        unknown == 0 ? "" : words.count("pages.adapted.notWeighed", unknown));
  }

  private List<Comparison.Strengths> strengths() {
    List<Comparison.Strengths> all = new ArrayList<>();
    for (Adaptation way : ways) {
      all.add(
          new Comparison.Strengths(
              all.isEmpty()
                  ? List.of(words.say("pages.adapted.bestBy"))
                  : way.betterIn().stream().map(costs::name).toList()));
    }
    return all;
  }

  private String name(AdaptedLight light) {
    return words.light(
        numbers.getOrDefault(light.original().light().id(), 0), light.original().light());
  }
}
