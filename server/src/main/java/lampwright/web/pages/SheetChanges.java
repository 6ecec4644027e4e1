package lampwright.web.pages;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lampwright.engine.unit.Stops;
import lampwright.setup.Light;
import lampwright.setup.LightId;
import lampwright.setup.SetupDocument;
import lampwright.setup.reacting.Happening;
import lampwright.setup.reacting.Reactions;
import lampwright.wording.ReactionLines;
import lampwright.wording.Wording;

/**
 * What to change when the ambient falls or a head dies: of each the first way, in the fewest words.
 *
 * @param numbers of all the lights
 */
record SheetChanges(SetupDocument setup, Map<LightId, Integer> numbers, Wording words) {

  /** The ambient first, then each light in build order, those last for which nothing helps. */
  List<SheetPage.Change> all() {
    List<SheetPage.Change> changes = new ArrayList<>();
    if (setup.ambient().isPresent()) {
      for (int stops = 1; stops <= 2; stops++) {
        changes.add(
            change(
                words.count("sheet.changes.falls", stops),
                new Happening.AmbientFalls(new Stops(stops))));
      }
    }
    Map<String, List<String>> helpless = new LinkedHashMap<>();
    for (Light light : setup.lightsInBuildOrder()) {
      String name = words.light(numbers.getOrDefault(light.id(), 0), light);
      String key = light.heads() > 1 ? "sheet.changes.deadOf" : "sheet.changes.dead";
      SheetPage.Change change = change(words.say(key, name), new Happening.HeadDead(light.id()));
      if (change.turns().isEmpty()) {
        helpless.computeIfAbsent(change.then(), _ -> new ArrayList<>()).add(name);
      } else {
        changes.add(change);
      }
    }
    helpless.forEach(
        (then, names) ->
            changes.add(
                new SheetPage.Change(
                    words.say("sheet.changes.dead", String.join(", ", names)), "", then)));
    return changes;
  }

  private SheetPage.Change change(String when, Happening happening) {
    ReactionLines lines =
        ReactionLines.of(setup, Reactions.to(setup, happening), numbers, words.notation());
    return lines.ways().stream()
        .findFirst()
        .map(
            way ->
                new SheetPage.Change(
                    when,
                    String.join(", ", way.turns()) + ".",
                    Stream.concat(Stream.of(way.then()), way.costs().stream())
                        .filter(said -> !said.isEmpty())
                        .collect(Collectors.joining(" "))))
        .orElseGet(() -> new SheetPage.Change(when, "", lines.instead()));
  }
}
