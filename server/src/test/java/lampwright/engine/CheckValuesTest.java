package lampwright.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.util.HashMap;
import java.util.HashSet;
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
 * Runs every entry of check-values.json whose formula the engine has. Each entry carries its
 * source, which is printed in the test's name, and its tolerance, which is absolute and in the unit
 * of the expected value; texts must match exactly.
 */
final class CheckValuesTest {

  /** Formulas that come with the engine issue; nothing else may be left out. */
  private static final Set<String> KEPT_FOR_THE_ENGINE_ISSUE =
      Set.of(
          "lobe.m",
          "lobe.intensity",
          "lobe.flux",
          "lobe.full_angle",
          "lobe.enclosed_fraction",
          "lobe.same_flux_gain_stops",
          "grid.cutoff_full_angle",
          "ies.candela",
          "ies.zonal_flux",
          "ies.lux_horizontal",
          "sun.julian_day",
          "sun.zenith",
          "sun.azimuth",
          "sun.declination_topocentric",
          "sun.elevation",
          "sun.usno_program_lux",
          "sun.usno_program_azimuth",
          "sun.clear_sky_lux",
          "sun.clear_sky_ev100",
          "sun.relative_azimuth",
          "sun.angle_to_axis",
          "sun.phase",
          "sun.shadow_length_m",
          "energy.battery_flashes",
          "energy.recharge_watts",
          "energy.mains_current_a",
          "energy.generator_va",
          "energy.average_heat_w",
          "energy.capacitor_j",
          "wind.drag_n",
          "wind.moment_nm",
          "wind.tip_radius_m",
          "wind.mass_needed_kg",
          "wind.tip_speed_m_s",
          "wind.beaufort_speed_m_s",
          "wind.beaufort_number",
          "colour.linear_to_srgb",
          "colour.srgb_to_linear",
          "colour.relative_luminance",
          "colour.grey_lstar",
          "colour.lab_l",
          "colour.lab_a",
          "colour.lab_b",
          "colour.oklab_l",
          "colour.oklab_a",
          "colour.oklab_b",
          "colour.ciede2000",
          "tone.mean_lstar",
          "tone.sd_lstar",
          "tone.low_key_share");

  @TestFactory
  Stream<DynamicTest> theEngineAgreesWith() throws IOException {
    Map<String, Function<CheckInputs, Object>> formulas = formulas();
    return entries().stream()
        .filter(entry -> formulas.containsKey(formulaOf(entry)))
        .map(
            entry ->
                DynamicTest.dynamicTest(
                    nameOf(entry),
                    () -> check(entry, Objects.requireNonNull(formulas.get(formulaOf(entry))))));
  }

  @Test
  void everyEntryIsRunOrListedAsKept() throws IOException {
    Set<String> unknown = new TreeSet<>();
    Set<String> kept = new HashSet<>();
    Set<String> run = new HashSet<>();
    Map<String, Function<CheckInputs, Object>> formulas = formulas();
    for (JsonNode entry : entries()) {
      String formula = formulaOf(entry);
      if (formulas.containsKey(formula)) {
        run.add(formula);
      } else if (KEPT_FOR_THE_ENGINE_ISSUE.contains(formula)) {
        kept.add(formula);
      } else {
        unknown.add(formula);
      }
    }
    assertEquals(Set.of(), unknown, "neither run nor kept");
    assertEquals(KEPT_FOR_THE_ENGINE_ISSUE, kept, "kept but without an entry");
    assertEquals(formulas.keySet(), run, "formulas without an entry");
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
