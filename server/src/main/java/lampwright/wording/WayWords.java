package lampwright.wording;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import lampwright.engine.unit.Stops;
import lampwright.gear.Head;
import lampwright.setup.Light;
import lampwright.setup.LightId;
import lampwright.setup.SetupDocument;
import lampwright.setup.figures.AmbientFigures;
import lampwright.setup.figures.Figures;
import lampwright.setup.figures.LightFigures;
import lampwright.setup.figures.TargetFigures;
import lampwright.setup.reacting.Miss;
import lampwright.setup.reacting.Price;
import lampwright.setup.reacting.Turn;
import lampwright.setup.reacting.Way;

/**
 * Puts one way to react into words.
 *
 * @param setup as it was
 * @param before its figures
 */
record WayWords(SetupDocument setup, Figures before, Wording words) {

  private static final char NO_BREAK = '\u00a0';

  /** A change of a face's apparent size below this is not seen: a judgement, as a ratio. */
  private static final double SEEN_RATIO = 1.1;

  /** A target nearer than this to a light's own is the same, in metres. */
  private static final double SAME_PLACE_M = 0.05;

  /** The way as it is read. */
  ReactionLines.WayLines lines(Way way) {
    List<String> turns = way.turns().stream().map(this::turn).toList();
    return new ReactionLines.WayLines(
        words.count("reacting.dials", way.dials()),
        way.holdsAll(),
        turns,
        String.join(" ", then(way)),
        new WayCosts(setup, before, words).of(way));
  }

  private String turn(Turn turn) {
    return switch (turn) {
      case Turn.Time time ->
          words.say("reacting.turn.time", words.time(time.from()), words.time(time.to()));
      case Turn.Aperture aperture ->
          words.say(
              "reacting.turn.aperture",
              words.aperture(aperture.from()),
              words.aperture(aperture.to()));
      case Turn.Speed speed ->
          words.say("reacting.turn.iso", words.iso(speed.from()), words.iso(speed.to()));
      case Turn.Filter filter -> filter(filter);
      case Turn.Power power ->
          words.say(
              power.heads() > 1 ? "reacting.turn.powerEach" : "reacting.turn.power", parts(power));
      case Turn.Replacement of -> replacement(of);
    };
  }

  private Object[] parts(Turn.Power power) {
    String from = shown(power.head(), power.from());
    String to = shown(power.head(), power.to());
    return power.heads() > 1
        ? new Object[] {name(power.light()), from, to, power.heads()}
        : new Object[] {name(power.light()), from, to};
  }

  /** As the head shows it, in one piece: a line must not break before "− 0.3". */
  private String shown(Head head, Stops down) {
    return words.power(head, Optional.of(down)).replace(' ', NO_BREAK);
  }

  private String filter(Turn.Filter filter) {
    String from = words.stops(filter.from().value());
    String to = words.stops(filter.to().value());
    if (filter.to().value() == 0) {
      return words.say("reacting.turn.filterOff", from);
    }
    return filter.from().value() == 0
        ? words.say("reacting.turn.filterOn", to)
        : words.say("reacting.turn.filter", to, from);
  }

  private String replacement(Turn.Replacement of) {
    String light = name(of.light());
    String head = of.head().name();
    String power = shown(of.head(), of.to());
    return of.from()
        .map(donor -> words.say("reacting.turn.taken", light, name(donor), power))
        .orElseGet(() -> words.say("reacting.turn.spare", light, head, power));
  }

  /** What is off and what is out, nothing of what is as it was. */
  List<String> left(Way way) {
    List<String> said = new ArrayList<>();
    for (Miss miss : way.off()) {
      said.add(miss.light().map(id -> light(id, miss)).orElseGet(() -> ambient(miss, way)));
    }
    said.addAll(out(way));
    return said;
  }

  private List<String> then(Way way) {
    List<String> said = new ArrayList<>();
    List<String> lightsOff = new ArrayList<>();
    boolean allBack = true;
    boolean some = false;
    for (Miss miss : way.misses()) {
      if (miss.light().isEmpty()) {
        if (isOfInterest(miss, way)) {
          said.add(ambient(miss, way));
        }
      } else if (!miss.isHeld()) {
        lightsOff.add(light(miss.light().get(), miss));
      } else {
        some = true;
        allBack &= words.isNothing(miss.stops());
      }
    }
    said.addAll(lightsOff);
    said.addAll(out(way));
    boolean others = !lightsOff.isEmpty() || !way.givenUp().isEmpty();
    if (some && others) {
      said.add(words.say("reacting.then.othersNear"));
    } else if (some) {
      said.add(words.say(allBack ? "reacting.then.lightsBack" : "reacting.then.lightsNear"));
    }
    return said;
  }

  /** An ambient that nobody touched and nothing happened to is not worth a word. */
  private boolean isOfInterest(Miss miss, Way way) {
    Price price = way.price();
    boolean touched =
        price.longer().value() != 0 || price.deeper().value() != 0 || price.noisier().value() != 0;
    return touched || !words.isNothing(miss.stops());
  }

  private String ambient(Miss miss, Way way) {
    String at = way.figures().ambient().map(AmbientFigures::offset).map(words::signed).orElse("");
    String size = words.stops(Math.abs(miss.stops().value()));
    if (words.isNothing(miss.stops())) {
      return words.say("reacting.then.ambientBack", at);
    }
    if (miss.isHeld()) {
      return words.say("reacting.then.ambientNear", at);
    }
    return miss.stops().value() > 0
        ? words.say("reacting.then.ambientOver", at, size)
        : words.say("reacting.then.ambientUnder", at, size);
  }

  private String light(LightId id, Miss miss) {
    String size = words.stops(Math.abs(miss.stops().value()));
    return miss.stops().value() > 0
        ? words.say("reacting.then.over", name(id), size)
        : words.say("reacting.then.under", name(id), size);
  }

  /** The lights that are out, and what all the light at their targets is less by. */
  private List<String> out(Way way) {
    List<String> said = new ArrayList<>();
    Set<String> told = new HashSet<>();
    for (LightId id : way.givenUp()) {
      said.add(words.say("reacting.then.out", name(id)));
      Light light = before.get(id).light();
      sum(light, way).filter(told::add).ifPresent(said::add);
    }
    return said;
  }

  private Optional<String> sum(Light light, Way way) {
    return target(before, light)
        .flatMap(
            was ->
                target(way.figures(), light)
                    .map(is -> is.offset().minus(was.offset()))
                    .filter(change -> !words.isNothing(change))
                    .map(change -> sum(was, change)));
  }

  private String sum(TargetFigures target, Stops change) {
    return words.say(
        change.value() < 0 ? "reacting.then.sumDown" : "reacting.then.sumUp",
        words.where(target.target()),
        words.stops(change.abs().value()));
  }

  private static Optional<TargetFigures> target(Figures figures, Light light) {
    return figures.targets().stream()
        .filter(
            t ->
                t.target().held() == light.target().held()
                    && t.target().at().distanceTo(light.target().at()).value() < SAME_PLACE_M)
        .findFirst();
  }

  /** How much softer or harder a light is; absent where nobody sees it. */
  Optional<String> softness(LightId id, Way way) {
    double was = before.get(id).angularSize().value();
    Optional<LightFigures> now =
        way.figures().lights().stream().filter(f -> f.light().id().equals(id)).findFirst();
    double is = now.map(f -> f.angularSize().value()).orElse(was);
    if (was <= 0 || is <= 0 || (is / was < SEEN_RATIO && was / is < SEEN_RATIO)) {
      return Optional.empty();
    }
    return Optional.of(
        words.say(
            is > was ? "reacting.then.softer" : "reacting.then.harder",
            name(id),
            words.fixed(is / was, 1)));
  }

  private String name(LightId id) {
    return words.light(setup.numbersInBuildOrder().getOrDefault(id, 0), before.get(id).light());
  }
}
