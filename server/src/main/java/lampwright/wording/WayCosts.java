package lampwright.wording;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lampwright.engine.Known;
import lampwright.engine.lens.DepthOfField;
import lampwright.engine.unit.Metres;
import lampwright.engine.unit.Stops;
import lampwright.setup.LightId;
import lampwright.setup.SetupDocument;
import lampwright.setup.figures.Figures;
import lampwright.setup.figures.Level;
import lampwright.setup.figures.OpticsFigures;
import lampwright.setup.figures.PowerFigures;
import lampwright.setup.reacting.Turn;
import lampwright.setup.reacting.Way;

/**
 * Says what a way to react costs besides what it leaves off: blur, depth of field, noise, waiting.
 *
 * @param setup as it was
 * @param before its figures
 */
record WayCosts(SetupDocument setup, Figures before, Wording words) {

  /** Less is not told, in stops: what a dial's smallest step is. */
  private static final double TOLD = 0.15;

  /** A change of waiting or frames by less than this ratio is not told. */
  private static final double TOLD_RATIO = 1.1;

  /** The costs, one sentence each; what is a gain is said too where it is plain. */
  List<String> of(Way way) {
    List<String> said = new ArrayList<>();
    blur(way).ifPresent(said::add);
    hand(way).ifPresent(said::add);
    depth(way).ifPresent(said::add);
    noise(way.price().noisier()).ifPresent(said::add);
    recycle(way).ifPresent(said::add);
    pace(way).ifPresent(said::add);
    frames(way).ifPresent(said::add);
    for (Turn turn : way.turns()) {
      if (turn instanceof Turn.Replacement of && isComputed(way.figures(), of.light())) {
        said.add(words.say("reacting.cost.meter", name(of.light())));
      }
    }
    return said;
  }

  private Optional<String> blur(Way way) {
    double longer = way.price().longer().value();
    boolean moves =
        setup.subjects().stream().flatMap(s -> s.speedMPerS().stream()).anyMatch(v -> v > 0);
    if (!moves || Math.abs(longer) < TOLD || setup.ambient().isEmpty()) {
      return Optional.empty();
    }
    if (Math.abs(longer - 1) < 0.05) {
      return Optional.of(words.say("reacting.cost.blurTwice"));
    }
    if (Math.abs(longer + 1) < 0.05) {
      return Optional.of(words.say("reacting.cost.blurHalf"));
    }
    return Optional.of(
        words.say(
            "reacting.cost.blurTimes",
            words.notation().rounded(way.price().longer().toFactor(), 1)));
  }

  /** By the rule of one over the focal length on 36 by 24 mm: common practice, no source. */
  private Optional<String> hand(Way way) {
    double seconds = way.document().exposure().time().seconds();
    return way.figures()
        .optics()
        .map(OpticsFigures::equivalents)
        .filter(list -> !list.isEmpty())
        .map(list -> list.getFirst().focal().value())
        .filter(
            focal ->
                way.price().longer().value() > TOLD
                    && seconds * focal > 1.01
                    && setup.exposure().time().seconds() * focal <= 1.01)
        .map(_ -> words.say("reacting.cost.hand"));
  }

  private Optional<String> depth(Way way) {
    double deeper = way.price().deeper().value();
    if (Math.abs(deeper) < TOLD) {
      return Optional.empty();
    }
    Optional<Metres> was = depth(before);
    Optional<Metres> is = depth(way.figures());
    if (was.isPresent() && is.isPresent()) {
      return Optional.of(
          words.say("reacting.cost.depth", words.length(is.get()), words.length(was.get())));
    }
    return Optional.of(
        words.say(
            deeper > 0 ? "reacting.cost.deeper" : "reacting.cost.shallower",
            words.stops(Math.abs(deeper))));
  }

  /** By the usual circle of confusion; absent where it has no end. */
  private static Optional<Metres> depth(Figures figures) {
    return figures
        .optics()
        .flatMap(OpticsFigures::focused)
        .map(OpticsFigures.Focused::depths)
        .filter(depths -> !depths.isEmpty())
        .map(List::getFirst)
        .flatMap(WayCosts::length);
  }

  private static Optional<Metres> length(DepthOfField depth) {
    return depth.far().map(far -> new Metres(far.value() - depth.near().value()));
  }

  private Optional<String> noise(Stops noisier) {
    if (Math.abs(noisier.value()) < TOLD) {
      return Optional.empty();
    }
    String size = words.stops(noisier.abs().value());
    return Optional.of(
        words.say(noisier.value() > 0 ? "reacting.cost.noisier" : "reacting.cost.cleaner", size));
  }

  private Optional<String> recycle(Way way) {
    Optional<PowerFigures.Pace> was = before.power().pace();
    Optional<PowerFigures.Pace> is = way.figures().power().pace();
    if (was.isEmpty() || is.isEmpty() || !slower(was.get(), is.get())) {
      return Optional.empty();
    }
    return Optional.of(
        words.say(
            "reacting.cost.recycle",
            name(is.get().slowest()),
            words.fixed(is.get().betweenFrames().value(), 1),
            words.fixed(was.get().betweenFrames().value(), 1)));
  }

  private static boolean slower(PowerFigures.Pace was, PowerFigures.Pace is) {
    double now = is.betweenFrames().value();
    return now >= 0.2 && now > was.betweenFrames().value() * TOLD_RATIO;
  }

  private Optional<String> pace(Way way) {
    return keepsPace(before) && isSlow(way.figures())
        ? Optional.of(words.say("reacting.cost.pace"))
        : Optional.empty();
  }

  private static boolean keepsPace(Figures figures) {
    return figures.power().wish().flatMap(PowerFigures.Wish::keepsPace).orElse(false);
  }

  private static boolean isSlow(Figures figures) {
    return !figures.power().wish().flatMap(PowerFigures.Wish::keepsPace).orElse(true);
  }

  private Optional<String> frames(Way way) {
    Optional<PowerFigures.Charge> was = before.power().charge();
    Optional<PowerFigures.Charge> is = way.figures().power().charge();
    if (was.isEmpty() || is.isEmpty() || is.get().frames() * TOLD_RATIO > was.get().frames()) {
      return Optional.empty();
    }
    return Optional.of(
        words.say(
            "reacting.cost.frames",
            name(is.get().first()),
            words.about(is.get().frames()),
            words.about(was.get().frames())));
  }

  private static boolean isComputed(Figures figures, LightId id) {
    return figures.get(id).level().map(Level::known).filter(k -> k == Known.COMPUTED).isPresent();
  }

  private String name(LightId id) {
    return words.light(setup.numbersInBuildOrder().getOrDefault(id, 0), before.get(id).light());
  }
}
