package lampwright.setup.comparing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lampwright.document.Pointer;
import lampwright.document.Reading;
import lampwright.engine.unit.Stops;
import lampwright.language.Filling;
import lampwright.language.Said;
import lampwright.setup.Light;
import lampwright.setup.SetupDocument;
import lampwright.setup.figures.FiguresComputation;
import lampwright.setup.figures.Level;
import lampwright.setup.figures.LightFigures;

/**
 * The changes of one light that both documents have. To tell what each of them does to the level,
 * they are made one after the other upon the first document, and the figures computed at each step:
 * so that they add up. Where a step is no sound document, or its level is not known, or a reading
 * still says what it was, the sentence leaves the stops out.
 */
final class LightChanges {

  private final SetupDocument from;
  private final SetupDocument to;
  private final Light was;
  private final Pointer at;
  private final Map<String, Object> before;
  private final Map<String, Object> after;

  LightChanges(SetupDocument from, SetupDocument to, Light was, Light is, Pointer at) {
    this.from = from;
    this.to = to;
    this.was = was;
    this.at = at;
    this.before = Comparison.plain(was);
    this.after = Comparison.plain(is);
  }

  List<Change> list() {
    List<Change> changes = new ArrayList<>();
    Map<String, Object> step = new LinkedHashMap<>(before);
    Optional<LightFigures> figures = Optional.empty();
    for (String field : Light.FORM.fieldNames()) {
      Optional<Object> old = Optional.ofNullable(before.get(field));
      Optional<Object> now = Optional.ofNullable(after.get(field));
      if (old.equals(now)) {
        continue;
      }
      Optional<LightFigures> earlier = changes.isEmpty() ? figures(step) : figures;
      step.remove(field);
      now.ifPresent(value -> step.put(field, value));
      figures = figures(step);
      changes.add(
          new Change(
              at.field(field).text(),
              About.light(was),
              old,
              now,
              Phrases.unit(field),
              sentence(field, old, now, new Step(earlier, figures))));
    }
    return changes;
  }

  /** The light's figures where it is as a step says, by itself: its level is its own. */
  private Optional<LightFigures> figures(Map<String, Object> light) {
    Map<String, Object> setup = new LinkedHashMap<>(SetupDocument.FORM.writeObject(from));
    setup.put("lights", List.of(light));
    setup.remove("build_order");
    return switch (SetupDocument.FORM.read(setup)) {
      case Reading.Sound<SetupDocument>(SetupDocument sound) ->
          Optional.of(FiguresComputation.of(sound).get(was.id()));
      case Reading.Faulty<SetupDocument> _ -> Optional.empty();
    };
  }

  /** The light before and after one change. */
  private record Step(Optional<LightFigures> before, Optional<LightFigures> after) {

    Optional<Stops> stops() {
      Optional<Level> was = before.flatMap(LightFigures::level);
      return after
          .flatMap(LightFigures::level)
          .flatMap(is -> was.map(level -> is.exposure().stopsOver(level.exposure())));
    }

    boolean isWhole() {
      return before.isPresent() && after.isPresent();
    }

    LightFigures old() {
      return before.orElseThrow();
    }

    LightFigures now() {
      return after.orElseThrow();
    }
  }

  private Said sentence(String field, Optional<Object> old, Optional<Object> now, Step step) {
    Filling name = Phrases.name(was, from, to);
    Optional<Stops> stops = step.stops();
    return switch (field) {
      case "place" -> moved(name, step, stops);
      case "aim" -> Phrases.withStops(Said.of("comparing.aimed", name), stops);
      case "stops_down" -> Phrases.withStops(power(named(name, "power"), step, old, now), stops);
      case "head", "modifier" -> {
        Said exchanged = Phrases.withStops(exchanged(name, field, old, now), stops);
        yield field.equals("head") ? exchanged : withSize(exchanged, step);
      }
      case "reading" ->
          Phrases.withStops(
              Phrases.told(
                  named(name, field),
                  old.isPresent(),
                  old.flatMap(LightChanges::fNumber),
                  now.isPresent(),
                  now.flatMap(LightChanges::fNumber)),
              stops);
      case "heads", "pops" ->
          Phrases.withStops(Phrases.fromTo(named(name, field), orOne(old), orOne(now), ""), stops);
      default ->
          Phrases.withStops(
              Phrases.fromTo(named(name, field), old, now, Phrases.unit(field)), stops);
    };
  }

  private static Filling named(Filling name, String field) {
    return Phrases.part("comparing.named", name, Phrases.field(field));
  }

  /** What heads and pops are where nothing is written. */
  private static Optional<Object> orOne(Optional<Object> written) {
    return Optional.of(written.orElse(1.0));
  }

  private static Said exchanged(
      Filling name, String what, Optional<Object> old, Optional<Object> now) {
    Optional<Filling> was = old.flatMap(value -> Phrases.value(value, ""));
    Optional<Filling> is = now.flatMap(value -> Phrases.value(value, ""));
    if (was.isEmpty()) {
      return Said.of("comparing.putOn", name, is.orElseGet(() -> Filling.text("")));
    }
    if (is.isEmpty()) {
      return Said.of("comparing.takenOff", name, was.get());
    }
    return was.equals(is)
        ? Said.of("comparing.toldOtherwise", name, Phrases.field(what), was.get())
        : Said.of("comparing.exchanged", name, was.get(), is.get());
  }

  private static Said moved(Filling name, Step step, Optional<Stops> stops) {
    if (!step.isWhole()) {
      return Said.of("comparing.moved", name);
    }
    Light old = step.old().light();
    Light now = step.now().light();
    List<Filling> ways = new ArrayList<>();
    way(ways, step.now().distance().value() - step.old().distance().value(), "further", "closer");
    way(ways, now.place().z() - old.place().z(), "higher", "lower");
    if (ways.isEmpty()) {
      double across =
          StrictMath.hypot(now.place().x() - old.place().x(), now.place().y() - old.place().y());
      ways.add(
          across >= 0.05
              ? Phrases.part("comparing.across", Filling.length(across, 1))
              : Phrases.part("comparing.hardly"));
    }
    Said moved = Said.of("comparing.movedBy", name, new Filling.Series(ways));
    return stops
        .filter(Phrases::shows)
        .map(
            by ->
                Said.of(
                    "comparing.byAt",
                    moved.asFilling(),
                    Phrases.signed(by),
                    new Filling.Where(now.target().where())))
        .orElse(moved);
  }

  private static void way(List<Filling> ways, double byM, String more, String less) {
    if (Math.abs(byM) >= 0.05) {
      ways.add(
          Phrases.part("comparing." + (byM > 0 ? more : less), Filling.length(Math.abs(byM), 1)));
    }
  }

  private static Said power(Filling what, Step step, Optional<Object> old, Optional<Object> now) {
    if (!step.isWhole()) {
      return Phrases.fromTo(what, old, now, "stops");
    }
    Optional<Filling> was = power(step.old().light());
    Optional<Filling> is = power(step.now().light());
    return was.isPresent() && is.isPresent()
        ? Said.of("comparing.fromTo", what, was.get(), is.get())
        : is.map(shown -> Said.of("comparing.added", what, shown))
            .orElseGet(() -> Said.of("comparing.toldNoMore", what));
  }

  private static Optional<Filling> power(Light light) {
    return light
        .stopsDown()
        .map(down -> Filling.shown(light.head().scale().show(down, light.head().energy())));
  }

  private static Said withSize(Said told, Step step) {
    if (!step.isWhole()) {
      return told;
    }
    double was = Math.rint(step.old().angularSize().value());
    double is = Math.rint(step.now().angularSize().value());
    return was == is
        ? told
        : Said.of(
            "comparing.looks", told.asFilling(), Filling.number(is, 0), Filling.number(was, 0));
  }

  private static Optional<Filling> fNumber(Object reading) {
    if (!(reading instanceof Map<?, ?> map) || !(map.get("f_number") instanceof Number mark)) {
      return Optional.empty();
    }
    String tenths =
        map.get("tenths") instanceof Number more && more.intValue() > 0
            ? " + 0." + more.intValue()
            : "";
    return Optional.of(Filling.shown("f/" + Phrases.number(mark.doubleValue()) + tenths));
  }
}
