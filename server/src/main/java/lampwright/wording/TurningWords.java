package lampwright.wording;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import lampwright.engine.light.LightingRatio;
import lampwright.engine.unit.Stops;
import lampwright.setup.Burning;
import lampwright.setup.LightId;
import lampwright.setup.Role;
import lampwright.setup.without.Effect;
import lampwright.setup.without.FaceSides;
import lampwright.setup.without.LightByLight;
import lampwright.setup.without.MeterPlace;
import lampwright.setup.without.Shift;

/** Says what a light does: what goes with it when it is turned off, what comes with it. */
public final class TurningWords {

  /** Of the places where spill changes something so many are named, the most changed first. */
  private static final int MOST_PLACES = 4;

  private final LightByLight lights;
  private final Wording words;
  private final MeterWords meters;

  public TurningWords(LightByLight lights, Wording words) {
    this.lights = lights;
    this.words = words;
    this.meters = new MeterWords(words);
  }

  /**
   * What goes when one light of the whole setup is turned off, in paragraphs: at its own target, at
   * the face, elsewhere.
   */
  public List<String> without(LightId light) {
    return said(light, Burning.ALL, Burning.ALL.without(light));
  }

  /** What goes with the ambient. */
  public List<String> withoutAmbient() {
    List<String> said =
        paragraphs(effect(Optional.empty(), Burning.ALL, Burning.ALL.withoutAmbient()), false);
    return said.isEmpty() ? List.of(words.say("without.nothing.ambient")) : said;
  }

  /** What came with the last light of a stage; what the ambient alone gives. */
  public List<String> came(LightByLight.Stage stage) {
    return stage
        .came()
        .map(light -> said(light, stage.before(), stage.after()))
        .orElseGet(() -> ambientAlone(stage.after()));
  }

  private List<String> ambientAlone(Burning ambient) {
    return lights.face().map(FaceSides::face).or(() -> lights.own().stream().findFirst()).stream()
        .map(
            place ->
                words.say(
                    "without.ambientAlone",
                    meters.where(place.at()),
                    meters.level(place.level(ambient))))
        .toList();
  }

  private List<String> said(LightId light, Burning from, Burning to) {
    return lights.unknown().contains(light)
        ? List.of(words.say("without.unknown"))
        : paragraphs(effect(Optional.of(light), from, to), to.burns(light));
  }

  private Effect effect(Optional<LightId> light, Burning from, Burning to) {
    return Effect.of(lights, light, from, to, meters::shows);
  }

  private List<String> paragraphs(Effect effect, boolean comes) {
    return Stream.of(
            effect.own().map(own -> own(own, comes)).orElse(List.of()),
            lights.face().map(face -> sides(face, effect, comes)).orElse(List.of()),
            elsewhere(effect, comes))
        .filter(said -> !said.isEmpty())
        .map(said -> String.join(" ", said))
        .toList();
  }

  private List<String> own(Effect.Own own, boolean comes) {
    List<String> said = new ArrayList<>();
    String where = meters.where(own.place().at());
    if (own.shows()) {
      said.add(
          words.say(
              comes ? "without.on.own" : "without.off.own",
              where,
              meters.level(own.shift().from()),
              meters.level(own.shift().to())));
      said.add(words.say("without.share", words.percent(own.share())));
    } else {
      said.add(words.say("without.same.own", where, meters.level(own.shift().to())));
    }
    if (own.edge()) {
      said.add(words.say("without.edge"));
    }
    return said;
  }

  private List<String> sides(FaceSides face, Effect effect, boolean comes) {
    List<String> said = new ArrayList<>();
    String where = meters.where(face.face().at());
    if (effect.shadow().isPresent() && effect.shadow().equals(effect.lit())) {
      said.add(side(comes ? "without.on.both" : "without.off.both", where, effect.shadow().get()));
    } else {
      effect
          .shadow()
          .map(shift -> side(comes ? "without.on.shadow" : "without.off.shadow", where, shift))
          .ifPresent(said::add);
      effect
          .lit()
          .map(shift -> side(comes ? "without.on.lit" : "without.off.lit", where, shift))
          .ifPresent(said::add);
    }
    if (effect.showsOnFace()) {
      apart(face, effect, comes).ifPresent(said::add);
    }
    ratio(face, effect, comes).ifPresent(said::add);
    return said;
  }

  private String side(String key, String where, Shift shift) {
    return words.say(key, where, meters.levelFrom(shift.from()), meters.levelTo(shift.to()));
  }

  private Optional<String> apart(FaceSides face, Effect effect, boolean comes) {
    Optional<Stops> before = face.apart(effect.from());
    Optional<Stops> after = face.apart(effect.to());
    if (keyBurns(face, effect.from()) && !keyBurns(face, effect.to())) {
      return Optional.of(words.say("without.off.alike"));
    }
    if (before.isEmpty() || after.isEmpty() || size(before.get()).equals(size(after.get()))) {
      return Optional.empty();
    }
    return Optional.of(
        !keyBurns(face, effect.from())
            ? words.say("without.on.parted", size(after.get()))
            : words.say(
                comes ? "without.on.apart" : "without.off.apart",
                size(before.get()),
                size(after.get())));
  }

  private static boolean keyBurns(FaceSides face, Burning burning) {
    return face.roles().entrySet().stream()
        .anyMatch(light -> light.getValue() == Role.KEY && burning.burns(light.getKey()));
  }

  private String size(Stops stops) {
    return words.stops(Math.abs(stops.value()));
  }

  private Optional<String> ratio(FaceSides face, Effect effect, boolean comes) {
    Optional<String> before = face.ratio(effect.from()).map(this::ratio);
    Optional<String> after = face.ratio(effect.to()).map(this::ratio);
    if (before.equals(after)) {
      return Optional.empty();
    }
    if (before.isEmpty()) {
      return after.map(now -> words.say("without.on.firstRatio", now));
    }
    return Optional.of(
        after.isEmpty()
            ? words.say("without.off.noRatio", before.get())
            : words.say(
                comes ? "without.on.ratio" : "without.off.ratio", before.get(), after.get()));
  }

  private String ratio(LightingRatio ratio) {
    return meters.ratio(ratio);
  }

  private List<String> elsewhere(Effect effect, boolean comes) {
    List<String> said = new ArrayList<>();
    if (!effect.elsewhere().isEmpty()) {
      String spills = comes ? "without.on.elsewhere" : "without.off.elsewhere";
      said.add(
          words.say(
              effect.own().isPresent() ? spills : "without.off.ambientElsewhere",
              named(effect.elsewhere())));
    }
    String isFor = effect.own().map(own -> own.light().target().name()).orElse("");
    String face =
        lights.face().map(FaceSides::face).map(MeterPlace::at).map(meters::where).orElse("");
    switch (effect.stays()) {
      case FACE_AND_ELSEWHERE ->
          said.add(words.say("without.nothing.atAll", Wording.capital(face), isFor));
      case FACE -> said.add(words.say("without.nothing.atFace", Wording.capital(face), isFor));
      case ELSEWHERE -> said.add(words.say("without.nothing.elsewhere"));
      case NOTHING -> {}
    }
    return said;
  }

  private String named(List<Effect.Elsewhere> changed) {
    List<String> named = new ArrayList<>();
    changed.stream()
        .limit(MOST_PLACES)
        .forEach(
            one ->
                named.add(
                    words.say(
                        "without.change",
                        meters.name(one.place().at()),
                        one.shift()
                            .change()
                            .map(this::size)
                            .orElseGet(() -> words.say("without.allOfIt")))));
    if (changed.size() > MOST_PLACES) {
      named.add(words.count("without.more", changed.size() - MOST_PLACES));
    }
    return String.join("; ", named);
  }
}
