package lampwright.setup.comparing;

import static lampwright.wording.WordsForTests.english;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import lampwright.document.Json;
import lampwright.setup.RandomDocuments;
import lampwright.setup.SetupDocument;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Nothing that differs is left unsaid, and nothing is said that does not differ. */
class ComparisonIsCompleteTest {

  private static final int PAIRS = 40;

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3})
  void whatIsListedLeadsFromOneDocumentToTheOther(long seed) {
    Random random = new Random(seed);
    for (int pair = 0; pair < PAIRS; pair++) {
      SetupDocument from = RandomDocuments.setup(random);
      SetupDocument other = RandomDocuments.setup(random);
      SetupDocument to = pair % 2 == 0 ? other : mixed(from, other, random);
      String where = "seed " + seed + ", pair " + pair;
      List<Change> changes = Comparison.of(from, to);
      Map<String, Object> wanted = SetupDocument.FORM.writeObject(to);
      assertEquals(normal(wanted), normal(applied(from, changes)), where);
      assertEquals(from.equals(to), changes.isEmpty(), where);
      for (Change change : changes) {
        assertFalse(change.before().equals(change.after()), where + change);
        assertFalse(english(change.sentence()).isBlank(), where + change);
      }
      assertEquals(List.of(), Comparison.of(from, from), where);
      assertEquals(List.of(), Comparison.of(to, to), where);
    }
  }

  /** The first document with some parts of the other, so that most stays the same. */
  private static SetupDocument mixed(SetupDocument from, SetupDocument other, Random random) {
    Map<String, Object> mixed = new LinkedHashMap<>(SetupDocument.FORM.writeObject(from));
    SetupDocument.FORM
        .writeObject(other)
        .forEach(
            (field, value) -> {
              if (!field.equals("build_order") && random.nextInt(3) == 0) {
                mixed.put(field, value);
              }
            });
    mixed.remove("build_order");
    if (mixed.get("lights") instanceof List<?> lights) {
      List<Object> turned = new ArrayList<>(lights);
      java.util.Collections.shuffle(turned, random);
      mixed.put("lights", turned);
    }
    return SetupDocument.FORM.read(mixed)
            instanceof lampwright.document.Reading.Sound<SetupDocument> sound
        ? sound.value()
        : other;
  }

  private static Object normal(Map<String, Object> document) {
    return Json.parse(Json.print(document));
  }

  private static Map<String, Object> applied(SetupDocument from, List<Change> changes) {
    Map<String, Object> document = new LinkedHashMap<>(SetupDocument.FORM.writeObject(from));
    Map<Object, Map<String, Object>> lights = new LinkedHashMap<>();
    for (Object light : (List<?>) list(document, "lights")) {
      Map<String, Object> copy = copy(light);
      lights.put(copy.get("id"), copy);
    }
    for (Change change : changes) {
      String[] steps = change.pointer().substring(1).split("/", -1);
      if (change.about().light().isPresent()) {
        String id = change.about().light().get().text();
        if (steps.length == 3) {
          put(lights.getOrDefault(id, Map.of()), steps[2], change);
        } else if (change.after().isPresent()) {
          lights.put(id, copy(change.after().get()));
        } else {
          lights.remove(id);
        }
      } else if (change.pointer().equals("/lights")) {
        Map<Object, Map<String, Object>> ordered = new LinkedHashMap<>();
        ((List<?>) change.after().orElseThrow())
            .forEach(id -> ordered.put(id, lights.getOrDefault(id, Map.of())));
        lights.clear();
        lights.putAll(ordered);
      } else if (steps.length == 1) {
        put(document, steps[0], change);
      } else if (steps.length == 2) {
        Map<String, Object> part = copy(document.getOrDefault(steps[0], Map.of()));
        put(part, steps[1], change);
        document.put(steps[0], part);
      } else {
        List<Object> items = new ArrayList<>((List<?>) list(document, steps[0]));
        Map<String, Object> item = copy(items.get(Integer.parseInt(steps[1])));
        put(item, steps[2], change);
        items.set(Integer.parseInt(steps[1]), item);
        document.put(steps[0], items);
      }
    }
    document.put("lights", List.copyOf(lights.values()));
    return document;
  }

  private static Object list(Map<String, Object> document, String field) {
    return document.getOrDefault(field, List.of());
  }

  private static Map<String, Object> copy(Object object) {
    Map<String, Object> copy = new LinkedHashMap<>();
    ((Map<?, ?>) object).forEach((key, value) -> copy.put(key.toString(), value));
    return copy;
  }

  private static void put(Map<String, Object> object, String field, Change change) {
    assertEquals(change.before().orElse("-"), object.getOrDefault(field, "-"), change.pointer());
    change.after().ifPresentOrElse(value -> object.put(field, value), () -> object.remove(field));
  }
}
