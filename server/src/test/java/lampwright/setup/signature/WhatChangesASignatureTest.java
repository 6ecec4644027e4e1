package lampwright.setup.signature;

import static lampwright.wording.WordsForTests.english;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.function.BiFunction;
import lampwright.Sweep;
import lampwright.document.Json;
import lampwright.document.Reading;
import lampwright.setup.DemoSeeds;
import lampwright.setup.Documents;
import lampwright.setup.RandomDocuments;
import lampwright.setup.SetupDocument;
import org.junit.jupiter.api.Test;

/** What must change a signature, and what must not, over the whole demo and random documents. */
class WhatChangesASignatureTest {

  private static final double CLOSE = 1e-3;

  private final DemoSeeds seeds = new DemoSeeds();

  @Test
  void everySetupOfTheDemoHasEachPartOrAReason() {
    seeds
        .setups()
        .forEach(
            (name, setup) -> {
              Signature signature = Signature.of(setup);
              for (PartName part : PartName.values()) {
                boolean there = signature.parts().stream().anyMatch(found -> found.part() == part);
                assertEquals(!there, signature.findMissing(part).isPresent(), name + " " + part);
              }
              signature
                  .parts()
                  .forEach(
                      part ->
                          assertTrue(
                              english(part.sentence()).matches("(?s)[A-Z0-9“].*\\."),
                              english(part.sentence())));
              signature
                  .missing()
                  .forEach(gap -> assertTrue(!gap.needs().isEmpty(), name + " " + gap));
            });
  }

  @Test
  void randomDocumentsHaveSignaturesThatAreReadAsTheyWereWritten() {
    for (int seed = 0; seed < Sweep.cases(150); seed++) {
      SetupDocument setup = RandomDocuments.setup(new Random(seed));
      Signature signature = Signature.of(setup);
      String stored = Json.print(Signature.FORM.write(signature));
      String where = "seed " + seed;
      assertEquals(new Reading.Sound<>(signature), Signature.FORM.read(Json.parse(stored)), where);
      assertEquals(signature, Signature.of(setup), where);
      for (PartName part : PartName.values()) {
        boolean there = signature.parts().stream().anyMatch(found -> found.part() == part);
        assertEquals(!there, signature.findMissing(part).isPresent(), where + " " + part);
      }
      signature.parts().forEach(part -> assertTrue(!english(part.sentence()).isEmpty(), where));
    }
  }

  /** As a mirror does it, without knowing where the sun was. */
  @Test
  void aMirroredSetupHasItsKeyOnTheOtherSideAndAllElseAsItWas() {
    seeds
        .setups()
        .forEach(
            (name, setup) -> {
              Object json = withoutSun(json(setup));
              Map<String, Object> expected = facts(json);
              flip(expected, "/key/azimuth_deg");
              flip(expected, "/key/face_yaw_deg");
              Object mirrored = everywhere(json, WhatChangesASignatureTest::mirrored);
              assertSame(expected, facts(mirrored), name);
            });
  }

  private static Object mirrored(String key, Object value) {
    boolean flips =
        key.equals("x_m") || key.equals("facing_deg") || key.equals("surface_facing_deg");
    return flips && value instanceof Double number ? (Object) (0 - number) : value;
  }

  private static void flip(Map<String, Object> facts, String pointer) {
    facts.computeIfPresent(
        pointer, (_, value) -> value instanceof Double d ? halfTurns(0 - d) : value);
  }

  /** Twice the heads are twice the light: a stop (common practice, no source). */
  @Test
  void twiceThePowerIsAStopOverTheAmbientAndTwiceTheEnergyAndNothingElse() {
    seeds
        .setups()
        .forEach(
            (name, setup) -> {
              Object json = json(setup);
              Object unread = everywhereWithout(json, "reading");
              Map<String, Object> expected = facts(unread);
              add(expected, "/balance/flash_over_ambient_stops", 1);
              add(expected, "/freezing/moving/flash_lead_stops", 1);
              expected.computeIfPresent(
                  "/energy/energy_ws", (_, value) -> value instanceof Double d ? 2 * d : value);
              Object doubled = unread;
              for (int i = 0; i < setup.lights().size(); i++) {
                doubled =
                    Documents.with(
                        doubled, "/lights/" + i + "/heads", 2.0 * setup.lights().get(i).heads());
              }
              assertSame(expected, facts(doubled), name);
            });
  }

  private static void add(Map<String, Object> facts, String pointer, double more) {
    facts.computeIfPresent(pointer, (_, value) -> value instanceof Double d ? d + more : value);
  }

  @Test
  void aSceneThatIsTurnedWholeKeepsItsSignature() {
    double degrees = 35;
    double cos = Math.cos(Math.toRadians(degrees));
    double sin = Math.sin(Math.toRadians(degrees));
    int turned = 0;
    for (Map.Entry<String, SetupDocument> each : seeds.setups().entrySet()) {
      if (each.getValue().camera().flatMap(camera -> camera.place()).isEmpty()) {
        continue;
      }
      turned++;
      Object json = withoutSun(json(each.getValue()));
      Object other =
          everywhere(
              turnedPoints(json, cos, sin),
              (key, value) ->
                  key.equals("surface_facing_deg") && value instanceof Double facing
                      ? (Object) halfTurns(facing + degrees)
                      : value);
      assertSame(facts(json), facts(other), each.getKey());
    }
    assertTrue(turned > 50, turned + " turned");
  }

  @Test
  void aCameraThatLooksAnotherWayChangesNothingButTheSun() {
    int withSun = 0;
    for (Map.Entry<String, SetupDocument> each : seeds.setups().entrySet()) {
      Object json = json(each.getValue());
      if (each.getValue().camera().flatMap(camera -> camera.bearing()).isEmpty()) {
        continue;
      }
      Map<String, Object> facts = facts(json);
      Map<String, Object> other = facts(Documents.with(json, "/camera/bearing_deg", 123.0));
      withSun += facts.containsKey("/sun/from_camera_deg") ? 1 : 0;
      facts.keySet().removeIf(pointer -> pointer.startsWith("/sun/"));
      other.keySet().removeIf(pointer -> pointer.startsWith("/sun/"));
      assertSame(facts, other, each.getKey());
    }
    assertTrue(withSun > 10, withSun + " with a sun");
  }

  private static double halfTurns(double degrees) {
    return degrees > 180 ? degrees - 360 : degrees <= -180 ? degrees + 360 : degrees;
  }

  private static Object turnedPoints(Object json, double cos, double sin) {
    if (json instanceof List<?> list) {
      return list.stream().map(item -> turnedPoints(item, cos, sin)).toList();
    }
    if (json instanceof Map<?, ?> object) {
      Map<String, Object> copy = new LinkedHashMap<>();
      object.forEach((key, value) -> copy.put((String) key, turnedPoints(value, cos, sin)));
      if (copy.get("x_m") instanceof Double x && copy.get("y_m") instanceof Double y) {
        copy.put("x_m", x * cos - y * sin);
        copy.put("y_m", x * sin + y * cos);
      }
      return copy;
    }
    return json;
  }

  private static Object withoutSun(Object json) {
    return everywhereWithout(json, "occasion");
  }

  private static Object everywhere(Object json, BiFunction<String, Object, Object> change) {
    if (json instanceof List<?> list) {
      return list.stream().map(item -> everywhere(item, change)).toList();
    }
    if (json instanceof Map<?, ?> object) {
      Map<String, Object> copy = new LinkedHashMap<>();
      object.forEach(
          (key, value) ->
              copy.put((String) key, change.apply((String) key, everywhere(value, change))));
      return copy;
    }
    return json;
  }

  private static Object everywhereWithout(Object json, String gone) {
    if (json instanceof List<?> list) {
      return list.stream().map(item -> everywhereWithout(item, gone)).toList();
    }
    if (json instanceof Map<?, ?> object) {
      Map<String, Object> copy = new LinkedHashMap<>();
      object.forEach(
          (key, value) -> {
            if (!key.equals(gone)) {
              copy.put((String) key, everywhereWithout(value, gone));
            }
          });
      return copy;
    }
    return json;
  }

  /** As it is read: with every number a double. */
  private static Object json(SetupDocument setup) {
    return Json.parse(Json.print(SetupDocument.FORM.write(setup)));
  }

  /** Everything that a signature says, by where it says it. */
  private static Map<String, Object> facts(Object setup) {
    Map<String, Object> facts = new TreeMap<>();
    Signature signature = Signature.of(Documents.setup(setup));
    collect(Json.parse(Json.print(Signature.FORM.write(signature))), "", facts);
    return facts;
  }

  private static void collect(Object json, String at, Map<String, Object> facts) {
    switch (json) {
      case Map<?, ?> object ->
          object.forEach((key, value) -> collect(value, at + "/" + key, facts));
      case List<?> list -> {
        for (int i = 0; i < list.size(); i++) {
          collect(list.get(i), at + "/" + i, facts);
        }
      }
      default -> facts.put(at, json);
    }
  }

  private static void assertSame(
      Map<String, Object> expected, Map<String, Object> actual, String name) {
    assertEquals(expected.keySet(), actual.keySet(), name);
    expected.forEach(
        (pointer, value) -> {
          if (value instanceof Double number && actual.get(pointer) instanceof Double other) {
            double scale = Math.max(1, Math.abs(number));
            assertEquals(number, other, CLOSE * scale, name + " " + pointer);
          } else {
            assertEquals(value, actual.get(pointer), name + " " + pointer);
          }
        });
  }
}
