package lampwright.web.pages;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lampwright.drawing.Overlay;
import lampwright.drawing.StopRuler;
import lampwright.drawing.Svg;
import lampwright.setup.Light;
import lampwright.setup.LightId;
import lampwright.setup.SetupDocument;
import lampwright.setup.comparing.LightPairs;
import lampwright.setup.figures.Figures;
import lampwright.setup.figures.FiguresComputation;
import lampwright.wording.Figure;
import lampwright.wording.KeyFigures;
import lampwright.wording.LightRow;
import lampwright.wording.Wording;

/** Puts two setups side by side. */
final class BesideView {

  private final One first;
  private final One second;
  private final Wording words;

  /** One of the two, with what is known of how its light is. */
  record One(SetupDocument setup, Figures figures, SignaturePart signature) {

    One(SetupDocument setup, SignaturePart signature) {
      this(setup, FiguresComputation.of(setup), signature);
    }
  }

  BesideView(One first, One second, Wording words) {
    this.first = first;
    this.second = second;
    this.words = words;
  }

  List<BesidePage.Group> groups() {
    return Stream.of(
            new BesidePage.Group(
                words.say("pages.signature.title"), matters(facts(first), facts(second)), true),
            new BesidePage.Group(words.say("pages.beside.told"), told(), false))
        .filter(group -> !group.matters().isEmpty())
        .toList();
  }

  /** What the camera was set to, and how the light is. */
  private Map<String, String> facts(One one) {
    Map<String, String> facts = new LinkedHashMap<>();
    for (Figure figure : KeyFigures.exposure(one.setup().exposure(), words.notation())) {
      facts.put(Wording.capital(figure.name()), (figure.value() + " " + figure.unit()).strip());
    }
    one.signature().traits().stream()
        .filter(trait -> !trait.words().isEmpty())
        .forEach(trait -> facts.put(trait.name(), trait.words()));
    return facts;
  }

  /** What people wrote: not compared, only set side by side. */
  private List<BesidePage.Matter> told() {
    return Stream.of(
            matter("pages.beside.intent", setup -> setup.intent().orElse("")),
            matter("pages.beside.moods", setup -> String.join(" · ", setup.moods())),
            matter("pages.common.camera", setup -> SetupView.cameraNote(setup, words)))
        .flatMap(Optional::stream)
        .toList();
  }

  private Optional<BesidePage.Matter> matter(String key, Function<SetupDocument, String> says) {
    BesidePage.Matter matter =
        new BesidePage.Matter(
            words.say(key), says.apply(first.setup()), says.apply(second.setup()));
    return matter.first().isEmpty() && matter.second().isEmpty()
        ? Optional.empty()
        : Optional.of(matter);
  }

  private static List<BesidePage.Matter> matters(
      Map<String, String> one, Map<String, String> other) {
    Set<String> names = new LinkedHashSet<>(one.keySet());
    names.addAll(other.keySet());
    return names.stream()
        .map(
            name ->
                new BesidePage.Matter(
                    name, one.getOrDefault(name, ""), other.getOrDefault(name, "")))
        .toList();
  }

  List<BesidePage.Pair> lights() {
    Map<LightId, LightRow> rowsOfFirst = rows(first);
    Map<LightId, LightRow> rowsOfSecond = rows(second);
    List<BesidePage.Pair> pairs = new ArrayList<>();
    for (LightPairs.Pair pair : LightPairs.of(first.setup(), second.setup()).all()) {
      Optional<LightRow> one = pair.before().map(Light::id).map(rowsOfFirst::get);
      Optional<LightRow> other = pair.after().map(Light::id).map(rowsOfSecond::get);
      pairs.add(new BesidePage.Pair(one, other, ruler(one, other)));
    }
    return pairs;
  }

  private Map<LightId, LightRow> rows(One one) {
    return LightRow.all(one.setup(), one.figures(), words.notation()).stream()
        .collect(Collectors.toMap(LightRow::id, row -> row));
  }

  private Svg ruler(Optional<LightRow> one, Optional<LightRow> other) {
    StopRuler ruler =
        StopRuler.of(other.or(() -> one).map(LightRow::role).orElse(""), words.notation())
            .withNames(words.say("pages.beside.first"), words.say("pages.beside.second"));
    Optional<LightRow.OnRuler> dot = one.flatMap(LightRow::onRuler);
    Optional<LightRow.OnRuler> bar = other.flatMap(LightRow::onRuler);
    if (dot.isPresent()) {
      ruler = ruler.withDot(dot.get().fromShooting().value());
    }
    if (bar.isPresent()) {
      ruler = ruler.withBar(bar.get().fromShooting().value());
    }
    return ruler.svg();
  }

  DrawingView overlay() {
    return new DrawingView(
        Overlay.of(first.setup(), second.setup(), words.notation()),
        words.say("pages.beside.overlay"),
        Overlay.table(first.setup(), second.setup(), words.notation()));
  }
}
