package lampwright.learning.drill;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import lampwright.engine.exposure.FNumber;
import lampwright.engine.exposure.MarkedScale;
import lampwright.engine.lens.DepthOfField;
import lampwright.engine.lens.FocusedLens;
import lampwright.engine.unit.Metres;
import lampwright.engine.unit.Millimetres;
import lampwright.language.Filling;
import lampwright.language.Said;
import lampwright.setup.Camera;
import lampwright.setup.figures.OpticsFigures;

/** The widest full stop that keeps a stretch sharp. */
final class ApertureForDepth implements Maker {

  private static final double WIDEST = 1.4;
  private static final double SMALLEST = 22;

  /** The stretch must miss the next wider stop's by so much, as a share of its distance. */
  private static final double MISSES = 0.02;

  /** And lie within its own by so much: nobody computes to the centimetre. */
  private static final double HOLDS = 0.03;

  /** A stretch that goes much farther is as good as endless, and nobody measures it. */
  private static final double MOST_TIMES_FOCUS = 3;

  private static final int OPTIONS = 4;

  @Override
  public Optional<Drill> make(Material material, Dice dice) {
    return material
        .figures()
        .optics()
        .flatMap(
            optics ->
                optics.focused().flatMap(focused -> make(material, optics, focused.lens(), dice)));
  }

  private static Optional<Drill> make(
      Material material, OpticsFigures optics, FocusedLens lens, Dice dice) {
    Millimetres circle = optics.hyperfocals().getFirst().circle();
    List<FNumber> stops = onTheLens(material);
    if (stops.size() < OPTIONS) {
      return Optional.empty();
    }
    int first = dice.pick(IntStream.rangeClosed(0, stops.size() - OPTIONS).boxed().toList());
    List<FNumber> options = stops.subList(first, first + OPTIONS);
    FNumber right = dice.pick(options.subList(1, OPTIONS));
    Metres focus = new Metres(Fair.shown(lens.focus().value(), 1));
    Lens at = new Lens(lens.focal(), focus, circle);
    DepthOfField holds = at.depth(right);
    if (holds.far().isEmpty()) {
      return Optional.empty();
    }
    double near = Math.ceil(holds.near().value() * (1 + HOLDS) * 10) / 10;
    double far = Math.floor(holds.far().get().value() * (1 - HOLDS) * 10) / 10;
    FNumber wider = options.get(options.indexOf(right) - 1);
    boolean isAround = near < focus.value() && focus.value() < far;
    return isAround && far <= MOST_TIMES_FOCUS * focus.value() && at.misses(wider, near, far)
        ? Optional.of(drill(at, options, right, near, far))
        : Optional.empty();
  }

  private static List<FNumber> onTheLens(Material material) {
    Optional<lampwright.gear.Lens> lens = material.setup().camera().flatMap(Camera::lens);
    double widest = lens.map(l -> l.widest().value()).orElse(WIDEST);
    double smallest = lens.map(l -> l.smallest().value()).orElse(SMALLEST);
    return MarkedScale.APERTURE_FULL
        .marksBetween(Math.max(WIDEST, widest), Math.min(SMALLEST, smallest))
        .stream()
        .map(mark -> new FNumber(mark.exact()))
        .toList();
  }

  /** A lens whose aperture is still open. */
  private record Lens(Millimetres focal, Metres focus, Millimetres circle) {

    DepthOfField depth(FNumber aperture) {
      return new FocusedLens(focal, aperture, focus).depthOfField(circle);
    }

    /** Whether an aperture surely does not hold a stretch. */
    boolean misses(FNumber aperture, double near, double far) {
      DepthOfField depth = depth(aperture);
      return depth.near().value() > near * (1 + MISSES)
          || depth.far().filter(end -> end.value() < far * (1 - MISSES)).isPresent();
    }
  }

  private static Drill drill(
      Lens lens, List<FNumber> options, FNumber right, double near, double far) {
    FNumber shown = options.getFirst();
    return new Drill(
        DrillKind.APERTURE_FOR_DEPTH,
        List.of(
            Said.of(
                "drilling.apertureForDepth.given",
                new Filling.Rounded(lens.focal().value(), 0),
                Filling.length(lens.focus().value(), 1),
                Filling.shown(shown),
                Filling.length(
                    FocusedLens.hyperfocal(lens.focal(), shown, lens.circle()).value(), 1))),
        Said.of(
            "drilling.apertureForDepth.question", Filling.length(near, 1), Filling.length(far, 1)),
        Choosing.among(
            options,
            right,
            option -> Said.of("drilling.apertureForDepth.option", Filling.shown(option)),
            option ->
                Optional.of(
                    option.compareTo(right) < 0
                        ? sharp("drilling.apertureForDepth.slip.shallow", lens, option)
                        : Said.of("drilling.apertureForDepth.slip.deep", Filling.shown(option)))),
        List.of(sharp("drilling.apertureForDepth.why", lens, right)),
        List.of());
  }

  private static Said sharp(String key, Lens lens, FNumber aperture) {
    DepthOfField depth = lens.depth(aperture);
    return depth
        .far()
        .map(
            far ->
                Said.of(
                    key,
                    Filling.shown(aperture),
                    Filling.length(depth.near().value(), 1),
                    Filling.length(far.value(), 1)))
        .orElseThrow();
  }
}
