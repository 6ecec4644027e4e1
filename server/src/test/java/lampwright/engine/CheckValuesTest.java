package lampwright.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * Runs every entry of check-values.json. Each entry carries its source, which is printed in the
 * test's name, and its tolerance, which is absolute and in the unit of the expected value; texts
 * must match exactly.
 */
final class CheckValuesTest {

  @TestFactory
  Stream<DynamicTest> theEngineAgreesWith() throws IOException {
    Map<String, Function<CheckInputs, Object>> formulas = formulas();
    return entries().stream()
        .map(
            entry ->
                DynamicTest.dynamicTest(
                    nameOf(entry),
                    () -> check(entry, Objects.requireNonNull(formulas.get(formulaOf(entry))))));
  }

  @Test
  void everyFormulaOfTheEntriesIsRun() throws IOException {
    Set<String> named = new TreeSet<>();
    for (JsonNode entry : entries()) {
      named.add(formulaOf(entry));
    }
    assertEquals(459, entries().size(), "entries of check-values.json");
    assertEquals(named, new TreeSet<>(formulas().keySet()));
  }

  private static void check(JsonNode entry, Function<CheckInputs, Object> formula) {
    CheckInputs inputs = new CheckInputs(entry.required("inputs"));
    Object actual = formula.apply(inputs);
    assertEquals(Set.of(), inputs.unread(), "inputs that the formula ignored");
    JsonNode expected = entry.required("expected");
    if (expected.isString()) {
      assertEquals(expected.stringValue(), actual);
      return;
    }
    double value = (Double) actual;
    double tolerance = entry.required("tolerance").doubleValue();
    assertTrue(
        Math.abs(value - expected.doubleValue()) <= tolerance,
        () -> "expected " + expected + " +- " + tolerance + ", was " + value);
  }

  private static String nameOf(JsonNode entry) {
    return entry.required("id").stringValue()
        + ": "
        + entry.required("quantity").stringValue()
        + " ["
        + entry.required("status").stringValue()
        + "; "
        + entry.required("source").stringValue()
        + "]";
  }

  /** The first two parts of an id. */
  private static String formulaOf(JsonNode entry) {
    String id = entry.required("id").stringValue();
    return id.substring(0, id.indexOf('.', id.indexOf('.') + 1));
  }

  private static Map<String, Function<CheckInputs, Object>> formulas() {
    Map<String, Function<CheckInputs, Object>> all = new HashMap<>(ExposureChecks.FORMULAS);
    all.putAll(LightChecks.FORMULAS);
    all.putAll(PowerChecks.FORMULAS);
    all.putAll(LensChecks.FORMULAS);
    all.putAll(MainsChecks.FORMULAS);
    all.putAll(WindChecks.FORMULAS);
    all.putAll(ColourChecks.FORMULAS);
    all.putAll(SunChecks.FORMULAS);
    all.putAll(BeamChecks.FORMULAS);
    return all;
  }

  private static List<JsonNode> entries() throws IOException {
    try (InputStream file =
        Objects.requireNonNull(
            CheckValuesTest.class.getResourceAsStream("/lampwright/reference/check-values.json"))) {
      return List.copyOf(JsonMapper.shared().readTree(file).valueStream().toList());
    }
  }
}
