package lampwright.wording;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import lampwright.engine.light.LightingRatio;
import lampwright.engine.unit.Stops;
import lampwright.setup.Burning;
import lampwright.setup.Light;
import lampwright.setup.LightId;
import lampwright.setup.Role;
import lampwright.setup.Target;
import lampwright.setup.without.FaceSides;
import lampwright.setup.without.LightByLight;
import lampwright.setup.without.MeterPlace;
import lampwright.setup.without.Metered;
import lampwright.setup.without.Shift;

/** Says what a light does: what goes with it when it is turned off, what comes with it. */
public final class TurningWords {

  /** Of the places where spill changes something so many are named, the most changed first. */
  private static final int MOST_PLACES = 4;

  /** Targets nearer to each other than this are one, in metres, as in the figures. */
  private static final double SAME_PLACE_M = 0.05;

  private final LightByLight lights;
  private final Wording words;

  public TurningWords(LightByLight lights, Wording words) {
    this.lights = lights;
    this.words = words;
  }

  /** Whether a light goes or comes; the sentences of each stand under its own keys. */
  private enum Way {
    OFF,
    ON
  }

  /**
   * What goes when one light of the whole setup is turned off, in paragraphs: at its own target, at
   * the face, elsewhere.
   */
  public List<String> without(LightId light) {
    return turned(Way.OFF, light, Burning.ALL, Burning.ALL.without(light));
  }

  /** What goes with the ambient. */
  public List<String> withoutAmbient() {
    Burning without = Burning.ALL.withoutAmbient();
    return paragraphs(
        sides(Way.OFF, Burning.ALL, without, true),
        elsewhere(Way.OFF, Optional.empty(), Burning.ALL, without));
  }

  /** What came with the last light of a stage; what the ambient alone gives. */
  public List<String> came(LightByLight.Stage stage) {
    if (stage.came().isPresent()) {
      return turned(Way.ON, stage.came().get(), stage.before(), stage.after());
    }
    return lights
        .face()
        .map(face -> face.face())
        .or(() -> lights.own().stream().findFirst())
        .map(
            place ->
                List.of(
                    words.say(
                        "without.ambientAlone",
                        where(place.at()),
                        level(place.level(stage.after())))))
        .orElse(List.of());
  }

  private List<String> turned(Way way, LightId id, Burning from, Burning to) {
    Optional<MeterPlace> own = lights.own(id);
    if (own.isEmpty() || !(own.get().at() instanceof Metered.ForLight(Light light))) {
      return List.of(words.say("without.unknown"));
    }
    return paragraphs(
        own(way, own.get(), light, from, to),
        sides(way, from, to, !isOnFace(light) || isTurnedToIt(light)),
        elsewhere(way, Optional.of(light), from, to));
  }

  @SafeVarargs
  private static List<String> paragraphs(List<String>... sentences) {
    return Stream.of(sentences)
        .filter(said -> !said.isEmpty())
        .map(said -> String.join(" ", said))
        .toList();
  }

  private List<String> own(Way way, MeterPlace own, Light light, Burning from, Burning to) {
    List<String> said = new ArrayList<>();
    Shift shift = own.shift(from, to);
    said.add(
        shows(shift)
            ? words.say(
                way == Way.OFF ? "without.off.own" : "without.on.own",
                where(own.at()),
                level(shift.from()),
                level(shift.to()))
            : words.say("without.same.own", where(own.at()), level(shift.to())));
    double share = own.share(light.id(), way == Way.OFF ? from : to);
    if (share > 0 && shows(shift)) {
      said.add(words.say("without.share", words.percent(share)));
    }
    if (isBehind(light)) {
      said.add(words.say("without.behind"));
    }
    return said;
  }

  /** Asks whether a meter toward the camera at its own target gets nothing of it. */
  private boolean isBehind(Light light) {
    return light.target().held() == Target.Held.TOWARD_LIGHT
        && atTarget(light).filter(place -> place.of(light.id()).value() == 0).isPresent();
  }

  private Optional<MeterPlace> atTarget(Light light) {
    return lights.targets().stream().filter(place -> isFor(light, place)).findFirst();
  }

  private static boolean isFor(Light light, MeterPlace place) {
    return place.reaches().stream()
        .anyMatch(reach -> reach.light().equals(light.id()) && reach.forIt());
  }

  private boolean isOnFace(Light light) {
    return lights.face().filter(face -> isFor(light, face.face())).isPresent();
  }

  private static boolean isTurnedToIt(Light light) {
    return light.target().held() == Target.Held.TOWARD_LIGHT;
  }

  private List<String> sides(Way way, Burning from, Burning to, boolean withLit) {
    List<String> said = new ArrayList<>();
    if (lights.face().isEmpty()) {
      return said;
    }
    FaceSides sides = lights.face().get();
    String where = where(sides.face().at());
    Shift shadow = sides.shadowShift(from, to);
    Shift lit = sides.litShift(from, to);
    if (shows(shadow)) {
      said.add(
          words.say(
              way == Way.OFF ? "without.off.shadow" : "without.on.shadow",
              where,
              level(shadow.from()),
              level(shadow.to())));
    }
    if (withLit && shows(lit)) {
      said.add(
          words.say(
              way == Way.OFF ? "without.off.lit" : "without.on.lit",
              where,
              level(lit.from()),
              level(lit.to())));
    }
    if (shows(shadow) || shows(lit)) {
      addApart(said, way, sides, from, to);
    }
    return said;
  }

  private void addApart(List<String> said, Way way, FaceSides sides, Burning from, Burning to) {
    Optional<String> before = sides.apart(from).map(this::size);
    Optional<String> after = sides.apart(to).map(this::size);
    if (way == Way.OFF && !keyBurns(sides, to) && keyBurns(sides, from)) {
      said.add(words.say("without.off.alike"));
    } else if (before.isPresent() && after.isPresent() && !before.equals(after)) {
      said.add(
          words.say(
              way == Way.OFF ? "without.off.apart" : "without.on.apart",
              before.get(),
              after.get()));
    }
    Optional<String> ratio = sides.ratio(from).map(this::ratio);
    Optional<String> then = sides.ratio(to).map(this::ratio);
    if (ratio.isPresent() && then.isEmpty()) {
      said.add(words.say("without.off.noRatio", ratio.get()));
    } else if (ratio.isEmpty() && then.isPresent()) {
      said.add(words.say("without.on.firstRatio", then.get()));
    } else if (ratio.isPresent() && !ratio.equals(then)) {
      said.add(
          words.say(
              way == Way.OFF ? "without.off.ratio" : "without.on.ratio",
              ratio.get(),
              then.orElse("")));
    }
  }

  private static boolean keyBurns(FaceSides sides, Burning burning) {
    return sides.roles().entrySet().stream()
        .anyMatch(light -> light.getValue() == Role.KEY && burning.burns(light.getKey()));
  }

  /**
   * What changes where the light is not for, the most changed first; and plainly, what does not.
   */
  private List<String> elsewhere(Way way, Optional<Light> turned, Burning from, Burning to) {
    boolean faceShows =
        lights
            .face()
            .filter(face -> shows(face.litShift(from, to)) || shows(face.shadowShift(from, to)))
            .isPresent();
    List<MeterPlace> changed =
        Stream.concat(lights.own().stream(), lights.subjects().stream())
            .filter(place -> turned.filter(light -> isAtTargetOf(light, place)).isEmpty())
            .filter(place -> !faceShows || !isAtFace(place))
            .filter(place -> shows(place.shift(from, to)))
            .sorted(
                Comparator.comparingDouble((MeterPlace place) -> size(place.shift(from, to)))
                    .reversed())
            .toList();
    List<String> said = new ArrayList<>();
    if (!changed.isEmpty()) {
      said.add(
          words.say(
              way == Way.OFF ? "without.off.elsewhere" : "without.on.elsewhere",
              named(changed, from, to)));
    }
    turned.ifPresent(light -> said.addAll(nothing(light, faceShows, changed)));
    return said;
  }

  private String named(List<MeterPlace> changed, Burning from, Burning to) {
    Map<String, String> named = new LinkedHashMap<>();
    for (MeterPlace place : changed) {
      named.putIfAbsent(name(place.at()), changed(place, place.shift(from, to)));
    }
    List<String> first = new ArrayList<>(named.values().stream().limit(MOST_PLACES).toList());
    if (named.size() > MOST_PLACES) {
      first.add(words.count("without.more", named.size() - MOST_PLACES));
    }
    return String.join("; ", first);
  }

  /** Says plainly where nothing measurable changes, and what the light is for then. */
  private List<String> nothing(Light light, boolean faceShows, List<MeterPlace> changed) {
    Optional<FaceSides> still =
        lights
            .face()
            .filter(face -> !faceShows && !isFor(light, face.face()))
            .filter(_ -> changed.stream().noneMatch(this::isAtFace));
    if (still.isPresent()) {
      return List.of(
          words.say(
              changed.isEmpty() ? "without.nothing.atAll" : "without.nothing.atFace",
              Wording.capital(where(still.get().face().at())),
              light.target().name()));
    }
    boolean hasOthers = lights.own().stream().anyMatch(place -> !isAtTargetOf(light, place));
    return changed.isEmpty() && hasOthers
        ? List.of(words.say("without.nothing.elsewhere"))
        : List.of();
  }

  /** Asks whether a meter is at the target that a light is for. */
  private static boolean isAtTargetOf(Light light, MeterPlace place) {
    return place.at() instanceof Metered.ForLight(Light other)
        && other.target().at().distanceTo(light.target().at()).value() < SAME_PLACE_M;
  }

  private boolean isAtFace(MeterPlace place) {
    return place.at() instanceof Metered.ForLight(Light light) && isOnFace(light);
  }

  private String changed(MeterPlace place, Shift shift) {
    return words.say(
        "without.change",
        name(place.at()),
        shift
            .change()
            .map(change -> words.stops(Math.abs(change.value())))
            .orElseGet(() -> words.say("without.allOfIt")));
  }

  private static double size(Shift shift) {
    return shift.change().map(change -> Math.abs(change.value())).orElse(Double.MAX_VALUE);
  }

  /** Whether a meter would show it, and the person's fraction of a stop too. */
  public boolean shows(Shift shift) {
    return shift.isMeasurable() && !level(shift.from()).equals(level(shift.to()));
  }

  /** "1.3 stops under", "at the shooting exposure", "dark". */
  public String level(Optional<Stops> level) {
    if (level.isEmpty()) {
      return words.say("without.level.dark");
    }
    Stops stops = level.get();
    if (words.isNothing(stops)) {
      return words.say("without.level.at");
    }
    return words.say(
        stops.value() < 0 ? "without.level.under" : "without.level.over",
        words.stops(Math.abs(stops.value())));
  }

  private String size(Stops stops) {
    return words.stops(Math.abs(stops.value()));
  }

  /** "3.2 : 1". */
  public String ratio(LightingRatio ratio) {
    return words.fixed(ratio.litToShadow(), 1) + " : 1";
  }

  /** Where a meter is, to stand in a sentence: "at the face". */
  public String where(Metered at) {
    return switch (at) {
      case Metered.ForLight(Light light) -> words.where(light.target());
      case Metered.AtTarget(Target target) -> words.where(target);
      case Metered.AtSubject(var subject) -> words.say("without.atSubject", subject.name());
    };
  }

  /** What it is held at: "face". */
  public String name(Metered at) {
    return switch (at) {
      case Metered.ForLight(Light light) -> light.target().name();
      case Metered.AtTarget(Target target) -> target.name();
      case Metered.AtSubject(var subject) -> subject.name();
    };
  }
}
