package lampwright.setup.figures;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import lampwright.document.Json;
import lampwright.engine.unit.LuxSeconds;
import lampwright.engine.unit.Stops;
import lampwright.setup.Documents;
import lampwright.setup.Light;
import lampwright.setup.LightId;
import lampwright.setup.SetupDocument;
import lampwright.setup.WorkedExamples;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Against section 17 of the reference, within the 1e-6 that it states, through JSON. */
class WorkedExamplesTest {

  private static final Figures DANCER = FiguresComputation.of(throughJson(WorkedExamples.dancer()));
  private static final Figures CELLIST =
      FiguresComputation.of(throughJson(WorkedExamples.cellist()));

  private static SetupDocument throughJson(SetupDocument setup) {
    return Documents.setup(Json.parse(Json.print(SetupDocument.FORM.write(setup))));
  }

  private static void same(String pointer, double value) {
    double expected = WorkedExamples.number(pointer);
    assertEquals(expected, value, 1e-6 * Math.abs(expected), pointer);
  }

  private static void same(double expected, double value) {
    assertEquals(expected, value, 1e-6 * Math.abs(expected));
  }

  @Test
  void theDancersSettingsAreThoseOfReference17a() {
    String results = "/example_1/results/kit_a";
    same(results + "/ev100_set", DANCER.ev100().value());
    same(results + "/h_set_lx_s", DANCER.shootingExposure().value());
    AmbientFigures ambient = DANCER.ambient().orElseThrow();
    same(results + "/ambient_lx_s", ambient.exposure().value());
    same(results + "/ambient_offset_stops", ambient.offset().value());
    assertEquals(List.of("/exposure/white_balance_k", "/ambient/temperature_k"), DANCER.needs());
  }

  @ParameterizedTest
  @ValueSource(strings = {"key", "fill", "rim_left", "rim_right", "hair", "background"})
  void theDancersHeadsAreThoseOfReference17a(String name) {
    String head = "/example_1/results/kit_a/heads/" + name;
    LightFigures figures = DANCER.get(new LightId(name.replace('_', '-')));
    Level level = figures.level().orElseThrow();
    same(head + "/distance_m", figures.distance().value());
    same(head + "/elevation_deg", figures.direction().elevation().value());
    same(head + "/cos_receiver", figures.atTarget().cosine());
    same(
        head + "/h_full_lx_s",
        figures.atTarget().atFullPower().value() / figures.atTarget().cosine());
    same(head + "/h_lx_s", level.exposure().value());
    same(head + "/fnumber_iso100", level.reading().value());
    same(head + "/energy_w_s", figures.energy().orElseThrow().value());
    Stops exact =
        figures
            .atTarget()
            .stopsDownFor(new LuxSeconds(WorkedExamples.number(head + "/h_wanted_lx_s")))
            .orElseThrow();
    assertEquals(WorkedExamples.number(head + "/stops_down_exact"), exact.value(), 1e-6);
    if (name.equals("background")) {
      // The reference measures from the camera axis, we from the line between wall and camera.
      double bearing = StrictMath.toDegrees(StrictMath.atan2(0.5, 16));
      assertEquals(-45 + bearing, figures.direction().azimuth().value(), 1e-6);
      assertEquals(Optional.empty(), figures.pattern());
    } else {
      same(head + "/azimuth_deg", figures.direction().azimuth().value());
      assertEquals(WorkedExamples.text(head + "/pattern"), figures.pattern().orElseThrow());
    }
  }

  @Test
  void theDancersSumIsThatOfReference17a() {
    String results = "/example_1/results/kit_a";
    assertEquals(2, DANCER.targets().size());
    TargetFigures chest = DANCER.targets().getFirst();
    same(results + "/facing_total_lx_s", chest.sum().total().value());
    same(results + "/facing_fnumber", chest.reading().value());
    same(results + "/facing_offset_stops", chest.offset().value());
    same(results + "/key_plus_fill_to_fill", chest.ratio().orElseThrow().litToShadow());
    List<Light> lights = WorkedExamples.dancer().lights();
    double energy = 0;
    for (Light light : lights) {
      energy +=
          WorkedExamples.number(
              results + "/heads/" + light.id().text().replace('-', '_') + "/energy_w_s");
    }
    same(energy, DANCER.energyPerFrame().orElseThrow().value());
  }

  @Test
  void theDancersBalanceIsThatOfReference17a() {
    String results = "/example_1/results/kit_a";
    FlashAgainstAmbient balance = DANCER.againstAmbient().orElseThrow();
    same(results + "/facing_flash_lx_s", balance.flash().value());
    same(results + "/ambient_lx", balance.ambient().value());
    same(results + "/flash_to_ambient_stops", balance.balance().value());
    TargetFigures chest = DANCER.targets().getFirst();
    same(results + "/ghost_fraction_facing", chest.sum().ambientShare());
  }

  @Test
  void theDancersOpticsAreThoseOfReference17a() {
    String results = "/example_1/results/kit_a/optics";
    OpticsFigures optics = DANCER.optics().orElseThrow();
    same(results + "/diagonal_mm", optics.format().diagonal().value());
    same(results + "/crop_factor", optics.equivalents().getFirst().crop());
    same(results + "/equivalent_focal_diagonal_mm", optics.equivalents().get(0).focal().value());
    same(results + "/equivalent_focal_long_mm", optics.equivalents().get(1).focal().value());
    same(results + "/equivalent_focal_short_mm", optics.equivalents().get(2).focal().value());
    same(results + "/equivalent_fnumber_36x24", optics.equivalentFNumber().value());
    same(results + "/coc_mm", optics.hyperfocals().getFirst().circle().value());
    same(results + "/hyperfocal_m", optics.hyperfocals().getFirst().distance().value());
    same(results + "/pitch_um", optics.pixelPitch().orElseThrow().value());
    same(results + "/airy_um_550nm", optics.airyDisc().value());
    OpticsFigures.Focused focused = optics.focused().orElseThrow();
    same(results + "/near_m", focused.depths().getFirst().near().value());
    same(results + "/far_m", focused.depths().getFirst().far().orElseThrow().value());
    same(results + "/field_width_m", focused.fieldWidth().value());
    same(results + "/field_height_m", focused.fieldHeight().value());
    same(results + "/magnification", focused.magnification());
  }

  @Test
  void theDancersMovementIsThatOfReference17a() {
    String results = "/example_1/results/kit_a/motion";
    MovementFigures movement = DANCER.movements().getFirst();
    same(results + "/body_image_speed_mm_s", movement.motion().speed().value());
    same(
        results + "/body_blur_flash_px",
        movement.flashes().getFirst().tenthTime().pixels().orElseThrow());
    same(results + "/body_blur_ambient_px", movement.ambient().pixels().orElseThrow());
  }

  @Test
  void theDancersPaceAndShutterAreThoseOfReference17a() {
    String results = "/example_1/results/kit_a";
    PowerFigures.Pace pace = DANCER.power().pace().orElseThrow();
    assertEquals(new LightId("key"), pace.slowest());
    same(results + "/slowest_recycle_s", pace.betweenFrames().value());
    same(results + "/max_rate_hz", pace.framesPerSecond());
    same(
        results + "/heads/key/flashes_per_battery", DANCER.power().charge().orElseThrow().frames());
    for (LightFigures light : DANCER.lights()) {
      assertEquals(Optional.of(Stops.ZERO), light.shutter().orElseThrow().wholeFrame());
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"key", "fill"})
  void theCellistsMeteredHeadsAreThoseOfReference17b(String name) {
    String head = "/example_2/results/kit_a/" + name;
    LightFigures figures = CELLIST.get(new LightId(name));
    Level level = figures.level().orElseThrow();
    same(head + "/distance_m", figures.distance().value());
    same(head + "/azimuth_deg", figures.direction().azimuth().value());
    same(head + "/elevation_deg", figures.direction().elevation().value());
    same(head + "/h_full_lx_s", figures.atTarget().atFullPower().value());
    same(head + "/inverse_square_error_stops", figures.atTarget().inverseSquareError().value());
    same(head + "/h_lx_s", level.exposure().value());
    same(head + "/fnumber_iso100", level.reading().value());
    same(head + "/energy_w_s", figures.energy().orElseThrow().value());
    assertEquals(WorkedExamples.text(head + "/pattern"), figures.pattern().orElseThrow());
  }

  @Test
  void theCellistsWallIsThatOfReference17b() {
    String wall = "/example_2/results/kit_a/wall";
    LightFigures figures = CELLIST.get(new LightId("wall"));
    same(wall + "/distance_m", figures.distance().value());
    same(wall + "/cos_incidence", figures.atTarget().cosine());
    same(wall + "/h_full_lx_s", figures.atTarget().atFullPower().value());
    same(wall + "/h_lx_s", figures.level().orElseThrow().exposure().value());
    same(wall + "/energy_w_s", figures.energy().orElseThrow().value());
    same(
        wall + "/gelled_cct_k",
        CELLIST.colour().lights().get(2).colour().temperature().orElseThrow().value());
  }

  @Test
  void theCellistsSumIsThatOfReference17b() {
    String results = "/example_2/results/kit_a";
    same(results + "/h_set_lx_s", CELLIST.shootingExposure().value());
    same(results + "/energy_per_exposure_w_s", CELLIST.energyPerFrame().orElseThrow().value());
    AmbientFigures ambient = CELLIST.ambient().orElseThrow();
    same(results + "/ambient_lx_s", ambient.exposure().value());
    same(results + "/ambient_offset_stops", ambient.offset().value());
    TargetFigures face = CELLIST.targets().getFirst();
    same(results + "/facing_total_lx_s", face.sum().total().value());
    same(results + "/facing_fnumber", face.reading().value());
    same(results + "/facing_offset_stops", face.offset().value());
    same(results + "/ratio_key_plus_fill_to_fill", face.ratio().orElseThrow().litToShadow());
  }
}
