package lampwright.setup;

import java.util.Map;

/** Which results of the worked examples (REFERENCE 17) the figures of a document do not tell. */
public final class NotTold {

  /** Patterns of their pointers, and why. */
  public static final Map<String, String> REASONS =
      Map.of(
          ".*/(takeoff_m_s|air_time_s|window_within_5cm_of_apex_s)",
          "a document does not say how high somebody leaps",
          ".*/(h_wanted_lx_s|stops_down_exact|(worst_)?shortfall_stops|fnumber_keep.*|.*_mark"
              + "|equivalent_fnumber(_wanted)?|focal_(used|wanted)_mm|equivalent_focal_wanted_mm"
              + "|remedies_.*|.*_pops|iso_.*|key_distance_.*|extra_flash_stops"
              + "|shutter_change_stops|drag_shutter_exact_s|framing_change_.*"
              + "|equivalent_distance_.*)",
          "a wish, or what adapting changes",
          ".*/(wait_until_.*|sun_altitude_for_that_deg|minutes_to_wait_clear_sky)",
          "a search over time, which WorkedExampleOneSunTest checks",
          ".*/(body_blur_flash_px_plan_1|kit_b/plan_[124].*/heads/.*/t01_s)",
          "the reference lets the flash burn for all its t0.1, we end it with the shutter, with"
              + " which a long burst lasts",
          ".*/heads/background/h_full_lx_s",
          "the reference gives it square to the light, we on the wall: a test of its own",
          ".*/heads/background/(azimuth_deg|pattern)",
          "the reference measures it from the camera's axis, and a wall has no face",
          ".*/(t05_s|full_power_t01_s|power_fraction|volt_ratio|gel_loss_stops"
              + "|h_full_no_gel_normal_lx_s|h_full_inverse_square_lx_s|cos_(incidence|receiver)"
              + "|hss_ratio|facing_(key|fill)_(factor|cosine)|hand_vs_face_.*"
              + "|leaf_capture_full_power|facing_total_lx_s)",
          "a step on the way or a ratio of figures: WorkedExamplesTest and workings",
          ".*/(f_number|iso|nd_stops|shutter_s|stops_down_set|ambient_ev100)"
              + "|.*plan_2.*/fnumber_iso100",
          "what the document itself says, or at another ISO than its own");

  private NotTold() {}
}
