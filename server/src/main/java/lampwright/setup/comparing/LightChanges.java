package lampwright.setup.comparing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import lampwright.document.Pointer;
import lampwright.document.Reading;
import lampwright.engine.unit.Stops;
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

  private String sentence(String field, Optional<Object> old, Optional<Object> now, Step step) {
    String name = Phrases.name(was, from, to);
    String stops = Phrases.signed(step.stops());
    String told = Phrases.fromTo(old, now, Phrases.unit(field));
    return switch (field) {
      case "place" -> name + moved(step, stops);
      case "aim" -> name + ": aimed elsewhere" + stops;
      case "target" -> name + ": target" + told + stops;
      case "stops_down" -> name + ": power" + power(step, told) + stops;
      case "head" -> name + exchanged("head", old, now) + stops;
      case "modifier" -> name + exchanged("modifier", old, now) + stops + size(step);
      case "reading" -> name + ": reading" + reading(old, now) + stops;
      case "heads", "pops" ->
          name + ": " + field + Phrases.fromTo(orOne(old), orOne(now), "") + stops;
      default -> name + ": " + Phrases.words(field) + told + stops;
    };
  }

  /** What heads and pops are where nothing is written. */
  private static Optional<Object> orOne(Optional<Object> written) {
    return Optional.of(written.orElse(1.0));
  }

  private static String exchanged(String what, Optional<Object> old, Optional<Object> now) {
    String was = old.map(value -> Phrases.value(value, "")).orElse("");
    String is = now.map(value -> Phrases.value(value, "")).orElse("");
    if (was.isEmpty()) {
      return ": " + is + " put on";
    }
    if (is.isEmpty()) {
      return ": " + was + " taken off";
    }
    return was.equals(is)
        ? ": " + what + " " + was + " told otherwise"
        : ": " + was + " exchanged for " + is;
  }

  private static String moved(Step step, String stops) {
    if (!step.isWhole()) {
      return " moved";
    }
    Light old = step.old().light();
    Light now = step.now().light();
    List<String> ways = new ArrayList<>();
    way(ways, step.now().distance().value() - step.old().distance().value(), "further", "closer");
    way(ways, now.place().z() - old.place().z(), "higher", "lower");
    if (ways.isEmpty()) {
      double across =
          StrictMath.hypot(now.place().x() - old.place().x(), now.place().y() - old.place().y());
      ways.add(
          across >= 0.05
              ? Phrases.tenths(across) + " m across"
              : "by less than a tenth of a metre");
    }
    return " moved "
        + String.join(", ", ways)
        + (stops.isEmpty() ? "" : stops + " " + now.target().where());
  }

  private static void way(List<String> ways, double byM, String more, String less) {
    if (Math.abs(byM) >= 0.05) {
      ways.add(Phrases.tenths(Math.abs(byM)) + " m " + (byM > 0 ? more : less));
    }
  }

  private static String power(Step step, String told) {
    if (!step.isWhole()) {
      return told;
    }
    Optional<String> old = power(step.old().light());
    Optional<String> now = power(step.now().light());
    return old.isPresent() && now.isPresent()
        ? " from " + old.get() + " to " + now.get()
        : now.map(shown -> " now told: " + shown).orElse(" no longer told");
  }

  private static Optional<String> power(Light light) {
    return light.stopsDown().map(down -> light.head().scale().show(down, light.head().energy()));
  }

  private static String size(Step step) {
    if (!step.isWhole()) {
      return "";
    }
    String was = degrees(step.old());
    String is = degrees(step.now());
    return was.equals(is) ? "" : ", its face looks " + is + " wide instead of " + was;
  }

  private static String degrees(LightFigures figures) {
    return String.format(Locale.ROOT, "%.0f°", figures.angularSize().value());
  }

  private static String reading(Optional<Object> old, Optional<Object> now) {
    return Phrases.fromTo(old.map(LightChanges::fNumber), now.map(LightChanges::fNumber), "");
  }

  private static Object fNumber(Object reading) {
    if (!(reading instanceof Map<?, ?> map) || !(map.get("f_number") instanceof Number mark)) {
      return "";
    }
    String tenths =
        map.get("tenths") instanceof Number more && more.intValue() > 0
            ? " + 0." + more.intValue()
            : "";
    return "f/" + Phrases.number(mark.doubleValue()) + tenths;
  }
}
