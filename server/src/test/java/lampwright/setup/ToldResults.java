package lampwright.setup;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Supplier;

/** Which result of the worked examples (REFERENCE 17) stands where in the figures of a document. */
public final class ToldResults {

  private static final Map<String, Supplier<Object>> DOCUMENTS = documents();

  private static final List<String> LIGHTS =
      List.of("key", "fill", "rim_left", "rim_right", "hair", "background");

  private static final String DANCER =
      """
      kit_a/ev100_set ev100
      kit_a/h_set_lx_s shooting_exposure_lx_s
      kit_a/shutter_s flash_against_ambient/time_s
      kit_a/ambient_lx flash_against_ambient/ambient_lx
      kit_a/ambient_lx_s ambient/exposure_lx_s
      kit_a/ambient_offset_stops ambient/offset_stops
      kit_a/facing_parts_lx_s/key targets/0/shares/0/exposure_lx_s
      kit_a/facing_parts_lx_s/key targets/0/spill/reaches/0/exposure_lx_s
      kit_a/facing_parts_lx_s/fill targets/0/shares/1/exposure_lx_s
      kit_a/facing_parts_lx_s/fill targets/0/spill/reaches/1/exposure_lx_s
      kit_a/facing_parts_lx_s/rim_left targets/0/shares/2/exposure_lx_s
      kit_a/facing_parts_lx_s/rim_left targets/0/spill/reaches/2/exposure_lx_s
      kit_a/facing_parts_lx_s/rim_right targets/0/shares/3/exposure_lx_s
      kit_a/facing_parts_lx_s/rim_right targets/0/spill/reaches/3/exposure_lx_s
      kit_a/facing_parts_lx_s/hair targets/0/shares/4/exposure_lx_s
      kit_a/facing_parts_lx_s/hair targets/0/spill/reaches/4/exposure_lx_s
      kit_a/facing_flash_lx_s targets/0/flash_lx_s
      kit_a/facing_fnumber targets/0/f_number
      kit_a/facing_offset_stops targets/0/offset_stops
      kit_a/key_plus_fill_to_fill targets/0/key_and_fill_to_fill
      kit_a/flash_to_ambient_stops flash_against_ambient/flash_over_ambient_stops
      kit_a/flash_to_ambient_stops targets/0/flash_over_ambient_stops
      kit_a/ghost_fraction_facing targets/0/ambient_share
      kit_a/slowest_recycle_s power/pace/between_frames_s
      kit_a/max_rate_hz power/pace/frames_per_second
      kit_a/longest_cut_time_s movements/0/flashes/0/tenth_time/time_s
      kit_a/optics/diagonal_mm optics/diagonal_mm
      kit_a/optics/crop_factor optics/equivalents/0/crop
      kit_a/optics/equivalent_focal_diagonal_mm optics/equivalents/0/focal_length_mm
      kit_a/optics/equivalent_focal_long_mm optics/equivalents/1/focal_length_mm
      kit_a/optics/equivalent_focal_short_mm optics/equivalents/2/focal_length_mm
      kit_a/optics/coc_mm optics/depths/0/circle_mm
      kit_a/optics/hyperfocal_m optics/depths/0/hyperfocal_m
      kit_a/optics/near_m optics/depths/0/near_m
      kit_a/optics/far_m optics/depths/0/far_m
      kit_a/optics/field_width_m optics/focus/field_width_m
      kit_a/optics/field_height_m optics/focus/field_height_m
      kit_a/optics/magnification optics/focus/magnification
      kit_a/optics/pitch_um optics/pixel_pitch_um
      kit_a/optics/equivalent_fnumber_36x24 optics/equivalent_f_number
      kit_a/optics/airy_um_550nm optics/airy_disc_um
      kit_a/motion/body_image_speed_mm_s movements/0/image_speed_mm_per_s
      kit_a/motion/limb_image_speed_mm_s movements/1/image_speed_mm_per_s
      kit_a/motion/body_blur_flash_px movements/0/flashes/0/tenth_time/pixels
      kit_a/motion/limb_blur_flash_px movements/1/flashes/0/tenth_time/pixels
      kit_a/motion/body_blur_ambient_px movements/0/ambient/pixels
      kit_a/motion/limb_blur_ambient_px movements/1/ambient/pixels
      wind_key/drag_n winds/0/steady/force_n
      wind_key/moment_nm winds/0/steady/moment_nm
      wind_key/tip_radius_m winds/0/tipping_radius_m
      wind_key/total_mass_needed_kg winds/0/steady/mass_needed_kg
      wind_key/ballast_kg winds/0/steady/ballast_kg
      wind_key/tip_speed_unballasted_m_s winds/0/gust_at_which_it_goes_m_per_s
      wind_key/beaufort winds/0/beaufort
      sun/elevation_deg sun/position/elevation_deg
      sun/geometric_elevation_deg sun/position/geometric_elevation_deg
      sun/azimuth_deg sun/position/azimuth_deg
      sun/relative_azimuth_deg sun/relative_azimuth_deg
      sun/phase sun/position/phase
      sun/clear_sky_lux sun/clear_sky/lux
      sun/clear_sky_ev100 sun/clear_sky/ev100
      sun/shadow_of_1p7_m sun/shadow_m
      """;

  private static final String PLAN =
      """
      PLAN/ev100_set ev100
      PLAN/h_set_lx_s shooting_exposure_lx_s
      PLAN/ambient_offset_stops ambient/offset_stops
      PLAN/facing_flash_lx_s targets/0/flash_lx_s
      PLAN/facing_offset_stops targets/0/offset_stops
      PLAN/near_m optics/depths/0/near_m
      PLAN/far_m optics/depths/0/far_m
      kit_b/pitch_um optics/pixel_pitch_um
      kit_b/field_width_m optics/focus/field_width_m
      kit_b/field_height_m optics/focus/field_height_m
      """;

  private static final String CELLIST =
      """
      kit_a/h_set_lx_s shooting_exposure_lx_s
      kit_a/facing_key_lx_s targets/0/shares/0/exposure_lx_s
      kit_a/facing_fill_lx_s targets/0/shares/1/exposure_lx_s
      kit_a/ambient_lx_s ambient/exposure_lx_s
      kit_a/ambient_lx_s targets/0/ambient_lx_s
      kit_a/facing_fnumber targets/0/f_number
      kit_a/facing_offset_stops targets/0/offset_stops
      kit_a/ratio_key_plus_fill_to_fill targets/0/key_and_fill_to_fill
      kit_a/ambient_offset_stops ambient/offset_stops
      kit_a/ambient_apparent_k_at_wb_5500 colour/ambient/temperature_k
      kit_a/ambient_minus_flash_mired colour/ambient/from_white_balance_mired
      kit_a/wall/gelled_cct_k colour/lights/2/colour/temperature_k
      kit_a/energy_per_exposure_w_s energy_per_frame_ws
      kit_a/slowest_recycle_s power/pace/between_frames_s
      kit_a/recharge_watts_peak power/mains/charging_w
      kit_a/with_modelling_w power/mains/total_w
      kit_a/mains_current_a power/mains/current_a
      kit_a/generator_va power/mains/generator_va
      kit_a/average_watts_at_interval power/mains/average_w
      kit_a/near_m optics/depths/0/near_m
      kit_a/far_m optics/depths/0/far_m
      kit_a/field_height_m optics/focus/field_height_m
      kit_a/field_width_m optics/focus/field_width_m
      """;

  private static final String CELLIST_B =
      """
      kit_b/crop_factor optics/equivalents/0/crop
      kit_b/h_set_lx_s shooting_exposure_lx_s
      kit_b/wall/gelled_cct_k colour/lights/2/colour/temperature_k
      """;

  private ToldResults() {}

  /**
   * A result and where the figures tell it.
   *
   * @param result its pointer in the worked examples
   * @param figure its pointer in the figures' JSON
   */
  public record Pair(String result, String figure) {

    /** As the reference states it: the sun 0.01 degree, what hangs on it 1 %, all else 1e-6. */
    public double tolerance(double expected) {
      if (!result.contains("/sun/")) {
        // Results that ought to be 0 are rounding in the reference.
        return Math.max(1e-12, 1e-6 * Math.abs(expected));
      }
      // One per cent of light is 0.0144 stop.
      return result.endsWith("_deg")
          ? 0.01
          : result.endsWith("ev100") ? 0.0144 : 0.01 * Math.abs(expected);
    }
  }

  private static Map<String, Supplier<Object>> documents() {
    Map<String, Supplier<Object>> documents = new LinkedHashMap<>();
    documents.put("dancer", WholeExamples::dancer);
    documents.put("dancer with full key", WholeExamples::dancerWithFullKey);
    for (String plan : WholeExamples.PLANS) {
      documents.put(plan, () -> WholeExamples.dancerByKitB(plan));
    }
    documents.put("cellist", WholeExamples::cellist);
    documents.put("cellist dragged", WholeExamples::cellistDragged);
    documents.put("cellist at hand", WholeExamples::cellistAtHand);
    documents.put("cellist by kit B", WholeExamples::cellistByKitB);
    return documents;
  }

  /** The documents' names. */
  public static List<String> names() {
    return List.copyOf(DOCUMENTS.keySet());
  }

  /** A document as JSON. */
  public static Object document(String name) {
    return Objects.requireNonNull(DOCUMENTS.get(name), name).get();
  }

  /** What is told of a document. */
  public static List<Pair> pairs(String name) {
    List<Pair> pairs = new ArrayList<>();
    String one = "/example_1/results/";
    String two = "/example_2/results/";
    switch (name) {
      case "dancer" -> {
        add(pairs, one, DANCER);
        dancersHeads(pairs, one + "kit_a");
      }
      case "dancer with full key" ->
          add(
              pairs,
              one,
              "kit_a/leaf_clip_loss_full_power_stops lights/0/shutter/whole_frame_loss_stops");
      case "cellist" -> {
        add(pairs, two, CELLIST);
        cellistsHeads(pairs, two + "kit_a");
      }
      case "cellist dragged" -> {
        add(pairs, two, "kit_a/drag_offset_stops ambient/offset_stops");
        add(pairs, two, "kit_a/drag_ghost_fraction targets/0/ambient_share");
      }
      case "cellist at hand" -> add(pairs, two, "kit_a/hand_distance_m lights/0/distance_m");
      case "cellist by kit B" -> {
        add(pairs, two, CELLIST_B);
        cellistsHeads(pairs, two + "kit_b");
      }
      default -> plan(pairs, one, name);
    }
    return pairs;
  }

  private static void plan(List<Pair> pairs, String results, String plan) {
    add(pairs, results, PLAN.replace("PLAN/", "kit_b/" + plan + "/"));
    dancersHeads(pairs, results + "kit_b/" + plan);
    String number = plan.substring(0, "plan_1".length());
    for (int i = 0; i < LIGHTS.size(); i++) {
      String loss = "kit_b/sync_edge_loss_stops_" + number + "/" + LIGHTS.get(i);
      if (number.equals("plan_1") || number.equals("plan_3")) {
        add(pairs, results, loss + " lights/" + i + "/shutter/worst_edge_loss_stops");
      }
    }
    switch (number) {
      case "plan_1" -> add(pairs, results, "kit_b/body_blur_ambient_px movements/0/ambient/pixels");
      case "plan_4" ->
          add(
              pairs,
              results,
              "kit_b/" + plan + "/hss_loss_stops lights/0/shutter/whole_frame_loss_stops");
      default -> {}
    }
  }

  private static void add(List<Pair> pairs, String results, String lines) {
    for (String line : lines.lines().toList()) {
      String[] parts = line.split(" ", 2);
      pairs.add(new Pair(results + parts[0], "/" + parts[1]));
    }
  }

  private static void dancersHeads(List<Pair> pairs, String results) {
    for (int i = 0; i < LIGHTS.size(); i++) {
      String head = results + "/heads/" + LIGHTS.get(i) + "/";
      String light = "lights/" + i + "/";
      head(pairs, head, light);
      add(pairs, head, "elevation_deg " + light + "elevation_deg");
      add(pairs, head, "inverse_square_error_stops " + light + "inverse_square_error_stops");
      add(pairs, head, "recycle_s power/" + light + "recycle_s");
      if (endsBeforeTheShutter(results, head)) {
        add(pairs, head, "t01_s movements/0/flashes/" + i + "/tenth_time/time_s");
      }
      add(pairs, head, "flashes_per_battery power/" + light + "frames_per_charge");
      if (!results.contains("plan_2")) {
        add(pairs, head, "fnumber_iso100 " + light + "level/f_number");
      }
      if (!LIGHTS.get(i).equals("background")) {
        add(pairs, head, "azimuth_deg " + light + "azimuth_deg");
        add(pairs, head, "pattern " + light + "pattern");
        add(pairs, head, "h_full_lx_s " + light + "exposure_at_full_power_lx_s");
      }
    }
  }

  /** 1/200 is a little under 0.005 s. */
  private static boolean endsBeforeTheShutter(String results, String head) {
    return !results.contains("long_burst") && WorkedExamples.number(head + "t01_s") < 0.0045;
  }

  private static void cellistsHeads(List<Pair> pairs, String results) {
    for (int i = 0; i < 3; i++) {
      String name = List.of("key", "fill", "wall").get(i);
      String head = results + "/" + name + "/";
      String light = "lights/" + i + "/";
      head(pairs, head, light);
      add(pairs, head, "h_full_lx_s " + light + "exposure_at_full_power_lx_s");
      if (!name.equals("wall")) {
        add(pairs, head, "azimuth_deg " + light + "azimuth_deg");
        add(pairs, head, "elevation_deg " + light + "elevation_deg");
        add(pairs, head, "inverse_square_error_stops " + light + "inverse_square_error_stops");
        add(pairs, head, "fnumber_iso100 " + light + "level/f_number");
        add(pairs, head, "pattern " + light + "pattern");
      }
    }
  }

  private static void head(List<Pair> pairs, String head, String light) {
    add(pairs, head, "distance_m " + light + "distance_m");
    add(pairs, head, "h_lx_s " + light + "level/exposure_lx_s");
    add(pairs, head, "energy_w_s " + light + "energy_ws");
  }
}
