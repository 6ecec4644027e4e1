package lampwright.web;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.net.http.HttpResponse;
import java.util.List;
import java.util.Map;
import lampwright.TestHouse;
import lampwright.Told;
import lampwright.Visitor;
import lampwright.document.Json;
import lampwright.setup.WholeExamples;
import lampwright.setup.WorkedExamples;
import lampwright.setup.figures.WindFigures;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.extension.RegisterExtension;

/**
 * Section 17 of the reference end to end: both documents are posted, and each result that a
 * document can express is compared, within the 1e-6 that the reference states.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class WorkedExamplesOverRestTest {

  private static final String FIGURES = "/api/studios/demo/figures";
  private static final String DANCER = "/example_1/results/kit_a";
  private static final String CELLIST = "/example_2/results/kit_a";

  @RegisterExtension static final TestHouse house = TestHouse.withDemo();

  private Object dancer = Map.of();
  private Object cellist = Map.of();

  @BeforeAll
  void bothArePosted() {
    Visitor reader = house.withToken("reader@demo.example");
    dancer = posted(reader, WholeExamples.dancer(WindFigures.GUST_FACTOR));
    cellist = posted(reader, WholeExamples.cellist());
  }

  /** The answer, which must be as the API describes it. */
  private static Object posted(Visitor reader, Object document) {
    HttpResponse<String> answer = reader.post(FIGURES + "?workings=true", Json.print(document));
    assertEquals(200, answer.statusCode(), answer.body());
    Described described = new Described(house.visitor().get("/api/openapi.json").body());
    assertEquals("", described.faultsBy("Figures", answer.body()));
    return Visitor.object(answer);
  }

  private static void same(String pointer, Object json, Object... path) {
    within(1e-6 * Math.abs(WorkedExamples.number(pointer)), pointer, json, path);
  }

  private static void within(double tolerance, String pointer, Object json, Object... path) {
    assertEquals(WorkedExamples.number(pointer), Told.number(json, path), tolerance, pointer);
  }

  @Test
  void theDancersExposureAndSum() {
    same(DANCER + "/ev100_set", dancer, "ev100");
    same(DANCER + "/h_set_lx_s", dancer, "shooting_exposure_lx_s");
    same(DANCER + "/ambient_lx_s", dancer, "ambient", "exposure_lx_s");
    same(DANCER + "/ambient_offset_stops", dancer, "ambient", "offset_stops");
    same(DANCER + "/ambient_lx", dancer, "flash_against_ambient", "ambient_lx");
    same(DANCER + "/shutter_s", dancer, "flash_against_ambient", "time_s");
    Object chest = Told.at(dancer, "targets", 0);
    same(DANCER + "/facing_flash_lx_s", chest, "flash_lx_s");
    same(DANCER + "/facing_fnumber", chest, "f_number");
    same(DANCER + "/facing_offset_stops", chest, "offset_stops");
    same(DANCER + "/key_plus_fill_to_fill", chest, "key_and_fill_to_fill");
    same(DANCER + "/flash_to_ambient_stops", chest, "flash_over_ambient_stops");
    same(DANCER + "/ghost_fraction_facing", chest, "ambient_share");
    List<String> lights = List.of("key", "fill", "rim_left", "rim_right", "hair");
    for (int i = 0; i < lights.size(); i++) {
      String part = DANCER + "/facing_parts_lx_s/" + lights.get(i);
      within(1e-6 * 20, part, chest, "shares", i, "exposure_lx_s");
      within(1e-6 * 20, part, chest, "spill", "reaches", i, "exposure_lx_s");
    }
  }

  @Test
  void theDancersHeads() {
    List<String> lights = List.of("key", "fill", "rim_left", "rim_right", "hair", "background");
    for (int i = 0; i < lights.size(); i++) {
      String head = DANCER + "/heads/" + lights.get(i);
      Object light = Told.at(dancer, "lights", i);
      same(head + "/distance_m", light, "distance_m");
      same(head + "/elevation_deg", light, "elevation_deg");
      same(head + "/h_lx_s", light, "level", "exposure_lx_s");
      same(head + "/fnumber_iso100", light, "level", "f_number");
      same(head + "/energy_w_s", light, "energy_ws");
      within(1e-6, head + "/inverse_square_error_stops", light, "inverse_square_error_stops");
      Object power = Told.at(dancer, "power", "lights", i);
      same(head + "/recycle_s", power, "recycle_s");
      same(head + "/flashes_per_battery", power, "frames_per_charge");
      same(head + "/t01_s", dancer, "movements", 0, "flashes", i, "tenth_time", "time_s");
      if (!lights.get(i).equals("background")) {
        same(head + "/azimuth_deg", light, "azimuth_deg");
        assertEquals(WorkedExamples.text(head + "/pattern"), Told.at(light, "pattern"));
      }
    }
    same(DANCER + "/slowest_recycle_s", dancer, "power", "pace", "between_frames_s");
    same(DANCER + "/max_rate_hz", dancer, "power", "pace", "frames_per_second");
  }

  @Test
  void theDancersOptics() {
    Object optics = Told.at(dancer, "optics");
    same(DANCER + "/optics/diagonal_mm", optics, "diagonal_mm");
    same(DANCER + "/optics/crop_factor", optics, "equivalents", 0, "crop");
    same(DANCER + "/optics/equivalent_focal_long_mm", optics, "equivalents", 1, "focal_length_mm");
    same(DANCER + "/optics/equivalent_focal_short_mm", optics, "equivalents", 2, "focal_length_mm");
    same(DANCER + "/optics/equivalent_fnumber_36x24", optics, "equivalent_f_number");
    same(DANCER + "/optics/coc_mm", optics, "depths", 0, "circle_mm");
    same(DANCER + "/optics/hyperfocal_m", optics, "depths", 0, "hyperfocal_m");
    same(DANCER + "/optics/near_m", optics, "depths", 0, "near_m");
    same(DANCER + "/optics/far_m", optics, "depths", 0, "far_m");
    same(DANCER + "/optics/field_width_m", optics, "focus", "field_width_m");
    same(DANCER + "/optics/field_height_m", optics, "focus", "field_height_m");
    same(DANCER + "/optics/magnification", optics, "focus", "magnification");
    same(DANCER + "/optics/pitch_um", optics, "pixel_pitch_um");
    same(DANCER + "/optics/airy_um_550nm", optics, "airy_disc_um");
  }

  /** The sun within 0.01 degree; clear sky and shadow, which follow from it, within 1 percent. */
  @Test
  void theDancersSun() {
    String results = "/example_1/results/sun";
    Object sun = Told.at(dancer, "sun");
    within(0.01, results + "/elevation_deg", sun, "position", "elevation_deg");
    within(0.01, results + "/geometric_elevation_deg", sun, "position", "geometric_elevation_deg");
    within(0.01, results + "/azimuth_deg", sun, "position", "azimuth_deg");
    within(0.01, results + "/relative_azimuth_deg", sun, "relative_azimuth_deg");
    assertEquals(WorkedExamples.text(results + "/phase"), Told.at(sun, "position", "phase"));
    double lux = WorkedExamples.number(results + "/clear_sky_lux");
    within(0.01 * lux, results + "/clear_sky_lux", sun, "clear_sky", "lux");
    within(0.0144, results + "/clear_sky_ev100", sun, "clear_sky", "ev100");
    double shadow = WorkedExamples.number(results + "/shadow_of_1p7_m");
    within(0.01 * shadow, results + "/shadow_of_1p7_m", sun, "shadow_m");
  }

  @Test
  void theDancersWind() {
    String results = "/example_1/results/wind_key";
    Object wind = Told.at(dancer, "winds", 0);
    same(results + "/drag_n", wind, "force_n");
    same(results + "/moment_nm", wind, "moment_nm");
    same(results + "/ballast_kg", wind, "ballast_kg");
    assertEquals(
        WorkedExamples.number(results + "/tip_speed_unballasted_m_s"),
        WindFigures.GUST_FACTOR * Told.number(wind, "speed_at_which_it_goes_m_per_s"),
        1e-6 * 3);
  }

  @Test
  void theCellistsHeads() {
    for (int i = 0; i < 2; i++) {
      String head = CELLIST + "/" + List.of("key", "fill").get(i);
      Object light = Told.at(cellist, "lights", i);
      same(head + "/distance_m", light, "distance_m");
      same(head + "/azimuth_deg", light, "azimuth_deg");
      same(head + "/elevation_deg", light, "elevation_deg");
      same(head + "/h_full_lx_s", light, "exposure_at_full_power_lx_s");
      same(head + "/inverse_square_error_stops", light, "inverse_square_error_stops");
      same(head + "/h_lx_s", light, "level", "exposure_lx_s");
      same(head + "/fnumber_iso100", light, "level", "f_number");
      same(head + "/energy_w_s", light, "energy_ws");
      assertEquals(WorkedExamples.text(head + "/pattern"), Told.at(light, "pattern"));
    }
    Object wall = Told.at(cellist, "lights", 2);
    same(CELLIST + "/wall/distance_m", wall, "distance_m");
    same(CELLIST + "/wall/h_full_lx_s", wall, "exposure_at_full_power_lx_s");
    same(CELLIST + "/wall/h_lx_s", wall, "level", "exposure_lx_s");
    same(CELLIST + "/wall/energy_w_s", wall, "energy_ws");
  }

  @Test
  void theCellistsSumAndOptics() {
    Object face = Told.at(cellist, "targets", 0);
    same(CELLIST + "/facing_key_lx_s", face, "shares", 0, "exposure_lx_s");
    same(CELLIST + "/facing_fill_lx_s", face, "shares", 1, "exposure_lx_s");
    same(CELLIST + "/ambient_lx_s", face, "ambient_lx_s");
    same(CELLIST + "/facing_fnumber", face, "f_number");
    same(CELLIST + "/facing_offset_stops", face, "offset_stops");
    same(CELLIST + "/ratio_key_plus_fill_to_fill", face, "key_and_fill_to_fill");
    same(CELLIST + "/ambient_offset_stops", cellist, "ambient", "offset_stops");
    same(CELLIST + "/near_m", cellist, "optics", "depths", 0, "near_m");
    same(CELLIST + "/far_m", cellist, "optics", "depths", 0, "far_m");
    same(CELLIST + "/field_width_m", cellist, "optics", "focus", "field_width_m");
    same(CELLIST + "/field_height_m", cellist, "optics", "focus", "field_height_m");
  }

  @Test
  void theCellistsMains() {
    Object power = Told.at(cellist, "power");
    same(CELLIST + "/energy_per_exposure_w_s", power, "energy_per_frame_ws");
    same(CELLIST + "/slowest_recycle_s", power, "pace", "between_frames_s");
    same(CELLIST + "/recharge_watts_peak", power, "mains", "charging_w");
    same(CELLIST + "/mains_current_a", power, "mains", "current_a");
    same(CELLIST + "/generator_va", power, "mains", "generator_va");
  }
}
