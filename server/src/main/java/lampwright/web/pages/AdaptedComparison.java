package lampwright.web.pages;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
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

/** Lays the ways side by side. */
final class AdaptedComparison {

  private static final String NONE = "none";
  private static final String NOT_KNOWN = "not known";
  private static final String AS_SHOT = "as shot";
  private static final double SHOWN_SHARE = 0.005;
  private static final double SHOWN_DOUBLINGS = 0.15;

  private final SetupDocument setup;
  private final Figures original;
  private final List<Adaptation> ways;
  private final Map<LightId, Integer> numbers;

  AdaptedComparison(SetupDocument setup, Figures original, List<Adaptation> ways) {
    this.setup = setup;
    this.original = original;
    this.ways = ways;
    this.numbers = SetupView.numbers(setup);
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
    rows.add(row("Depth of field", "", way -> depth(way.depthChange())));
    rows.add(row("Framing", "", AdaptedComparison::framing));
    MovementView.inStrip(original.movements())
        .ifPresent(
            blur ->
                rows.add(row("Blur by the flash", blur.value() + " " + blur.unit(), this::blur)));
    rows.add(row("Farthest off, stops", "", this::farthestOff));
    rows.add(row("Softness", "", this::softness));
    rows.add(row("Ready again", pace(original), way -> cell(pace(way.figures()))));
    rows.add(row("Frames a charge", charge(original), way -> cell(charge(way.figures()))));
    rows.add(row("To carry", "", AdaptedComparison::carried));
    rows.add(row("Cost, in stops", "", way -> cell(AdaptedCosts.tenths(way.cost()))));
    return rows.stream().filter(row -> !saysNothing(row)).toList();
  }

  private List<Comparison.Row> camera() {
    ShootingExposure was = setup.exposure();
    return List.of(
        row("Aperture", was.fNumber().toString(), way -> cell(now(way).fNumber().toString())),
        row("Time", was.time().toString(), way -> cell(now(way).time().toString())),
        row("ISO", SetupFigures.iso(was), way -> cell(SetupFigures.iso(now(way)))),
        row(
            "Grey filter, stops",
            filter(was.neutralDensity()),
            way -> cell(filter(now(way).neutralDensity()))),
        row(
            "Ambient, stops",
            original.ambient().map(a -> Wording.signed(a.offset())).orElse(""),
            AdaptedComparison::ambient));
  }

  private static ShootingExposure now(Adaptation way) {
    return way.document().exposure();
  }

  private static String filter(Stops density) {
    return density.value() == 0 ? NONE : Wording.signed(density.negated());
  }

  private static Cell cell(String value) {
    return new Cell(value, "");
  }

  private Comparison.Row row(String name, String shot, Function<Adaptation, Cell> of) {
    List<Cell> cells = ways.stream().map(of).toList();
    return new Comparison.Row(name, shot, cells, cells.stream().distinct().count() > 1);
  }

  /** What no way and no setup has a word for is no row. */
  private static boolean saysNothing(Comparison.Row row) {
    return !row.differs()
        && (row.shot().isEmpty() || row.shot().equals(NONE))
        && List.of(NONE, NOT_KNOWN).contains(row.cells().getFirst().value());
  }

  private static Cell ambient(Adaptation way) {
    return way.ambientOffset()
        .map(
            offset ->
                new Cell(
                    Wording.signed(offset),
                    way.ambientChange()
                        .filter(change -> !Wording.signed(change).equals("0.0"))
                        .map(
                            change ->
                                Wording.stops(Math.abs(change.value()))
                                    + (change.value() > 0 ? " brighter" : " darker"))
                        .orElse("")))
        .orElse(cell(NOT_KNOWN));
  }

  private static Cell depth(Stops change) {
    String signed = Wording.signed(change);
    return signed.equals("0.0")
        ? cell(AS_SHOT)
        : new Cell(
            Wording.stops(Math.abs(change.value())), change.value() > 0 ? "deeper" : "shallower");
  }

  private static Cell framing(Adaptation way) {
    return way.framingChange()
        .map(
            change ->
                Math.abs(change) < SHOWN_SHARE
                    ? cell(AS_SHOT)
                    : new Cell(
                        String.format(Locale.ROOT, "%.0f %%", Math.abs(change) * 100),
                        change > 0 ? "more shown" : "less shown"))
        .orElse(cell(NOT_KNOWN));
  }

  private Cell blur(Adaptation way) {
    return MovementView.inStrip(way.figures().movements())
        .map(figure -> cell(figure.value() + " " + figure.unit()))
        .orElse(cell(NOT_KNOWN));
  }

  private Cell farthestOff(Adaptation way) {
    Optional<AdaptedLight> unlit =
        way.lights().stream().filter(light -> light.made().isEmpty()).findFirst();
    if (unlit.isPresent()) {
      return new Cell("given up", name(unlit.get()));
    }
    return way.lights().stream()
        .max(Comparator.comparingDouble(light -> Math.abs(off(light))))
        .map(
            light ->
                new Cell(
                    Wording.signed(new Stops(off(light))),
                    Wording.signed(new Stops(off(light))).equals("0.0") ? "" : name(light)))
        .orElse(cell(NOT_KNOWN));
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
                    ? cell(AS_SHOT)
                    : new Cell(
                        String.format(Locale.ROOT, "× %.1f", StrictMath.pow(2, softer(light))),
                        name(light) + (softer(light) > 0 ? ", softer" : ", harder")))
        .orElse(cell(NOT_KNOWN));
  }

  private static double softer(AdaptedLight light) {
    return light.made().map(AdaptedLight.Made::softer).orElse(0.0);
  }

  private static String pace(Figures figures) {
    return figures
        .power()
        .pace()
        .map(pace -> String.format(Locale.ROOT, "%.1f s", pace.betweenFrames().value()))
        .orElse(NOT_KNOWN);
  }

  private static String charge(Figures figures) {
    return figures
        .power()
        .charge()
        .map(PowerFigures.Charge::frames)
        .map(Wording::about)
        .orElse(NOT_KNOWN);
  }

  private static Cell carried(Adaptation way) {
    int unknown = way.carried().withoutWeight().size();
    return new Cell(
        String.format(Locale.ROOT, "%.1f kg", way.carried().kg()),
        unknown == 0 ? "" : unknown + (unknown == 1 ? " piece" : " pieces") + " not weighed");
  }

  private List<Comparison.Strengths> strengths() {
    List<Comparison.Strengths> all = new ArrayList<>();
    for (Adaptation way : ways) {
      all.add(
          new Comparison.Strengths(
              all.isEmpty()
                  ? List.of("The best by what matters.")
                  : way.betterIn().stream().map(AdaptedCosts::name).toList()));
    }
    return all;
  }

  private String name(AdaptedLight light) {
    return WishWords.light(numbers, light.original().light());
  }
}
