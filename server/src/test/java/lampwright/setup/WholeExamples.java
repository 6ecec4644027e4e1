package lampwright.setup;

import java.util.List;
import java.util.Map;

/**
 * The worked examples of the reference (section 17) with all that a document can say of them:
 * occasion, stand and mains too, and the pictures by the other kit as documents of their own.
 */
public final class WholeExamples {

  /** The four pictures that kit B can make of the dancer. */
  public static final List<String> PLANS =
      List.of(
          "plan_1_keep_ambient_stop_down",
          "plan_2_keep_ambient_and_dof_with_nd",
          "plan_3_accept_brighter_ambient",
          "plan_4_long_burst_1_500");

  private static final List<String> LIGHTS =
      List.of("key", "fill", "rim_left", "rim_right", "hair", "background");

  private static final String DANCER = "/example_1/inputs";

  private WholeExamples() {}

  private static double number(String pointer) {
    return WorkedExamples.number(pointer);
  }

  private static Object json(SetupDocument setup) {
    return SetupDocument.FORM.write(setup);
  }

  /** 17a by kit A: sun, wind, and the dancer's limbs as a second subject. */
  public static Object dancer() {
    Object setup = json(WorkedExamples.dancer());
    setup =
        Documents.with(
            setup,
            "/occasion",
            Map.of(
                "place",
                Map.of(
                    "name",
                    "the slipway",
                    "indoors",
                    false,
                    "latitude_deg",
                    number(DANCER + "/sun/latitude_deg"),
                    "longitude_deg",
                    number(DANCER + "/sun/longitude_east_deg")),
                "date",
                "2025-09-12",
                "time",
                "19:13",
                "utc_offset",
                "+01:00",
                "wind_m_per_s",
                number(DANCER + "/wind/wind_m_s")));
    setup = Documents.with(setup, "/camera/bearing_deg", 240.0);
    setup = Documents.with(setup, "/subjects/0/height_m", 1.7);
    setup =
        Documents.with(
            setup,
            "/subjects/1",
            Map.of(
                "name",
                "limb",
                "place",
                Map.of("x_m", 0.0, "y_m", 0.0, "z_m", 0.0),
                "speed_m_per_s",
                number(DANCER + "/motion/limb_speed_m_s")));
    // The reference weighs stand and head together.
    return Documents.with(
        setup,
        "/lights/0/stand",
        Map.of(
            "name", "tall stand",
            "highest_m", 4.0,
            "weight_kg", number(DANCER + "/wind/stand_and_head_kg"),
            "legs", number(DANCER + "/wind/legs"),
            "leg_radius_m", number(DANCER + "/wind/leg_radius_m")));
  }

  /** 17a by kit A with the key at full power, where the leaf shutter clips it. */
  public static Object dancerWithFullKey() {
    return Documents.with(dancer(), "/lights/0/stops_down", 0.0);
  }

  /** 17a by kit B, after one of {@link #PLANS}. */
  public static Object dancerByKitB(String plan) {
    String results = "/example_1/results/kit_b/" + plan;
    Object setup = json(WorkedExamples.dancer());
    Map<String, Object> kit = WorkedExamples.dancerKitB();
    for (int i = 0; i < LIGHTS.size(); i++) {
      String light = "/lights/" + i;
      Object head = WorkedExamples.dancerHead("kit_b", 0.1);
      if (plan.contains("long_burst")) {
        head = Documents.with(head, "/long_burst_efficiency", 0.8);
      }
      setup = Documents.with(setup, light + "/head", head);
      setup =
          Documents.with(
              setup, light + "/modifier", Documents.at(kit, "/modifiers/" + i + "/modifier"));
      setup =
          Documents.with(
              setup,
              light + "/stops_down",
              number(results + "/heads/" + LIGHTS.get(i) + "/stops_down_set"));
    }
    setup =
        Documents.with(
            setup,
            "/camera/body",
            Map.of(
                "name",
                "small body",
                "width_mm",
                36.0,
                "height_mm",
                24.0,
                "pixels_wide",
                number(DANCER + "/kit_b/camera/pixels/0"),
                "sync",
                "1/200",
                "curtain_travel_ms",
                number(DANCER + "/kit_b/camera/traverse_s") * 1_000));
    setup =
        Documents.with(
            setup,
            "/camera/lens",
            Map.of("name", "fifty", "focal_length_mm", 50.0, "widest_f_number", 1.8));
    return Documents.with(
        setup,
        "/exposure",
        Map.of(
            "f_number",
            Double.parseDouble(WorkedExamples.text(results + "/f_number_mark")),
            "time",
            plan.contains("1_500") ? "1/500" : "1/200",
            "iso",
            plan.contains("with_nd") ? 125.0 : 100.0,
            "neutral_density_stops",
            number(results + "/nd_stops")));
  }

  /** 17b by kit A: camera, mains and colour. */
  public static Object cellist() {
    String in = "/example_2/inputs";
    Object setup = json(WorkedExamples.cellist());
    for (int i = 0; i < 3; i++) {
      String head = "/lights/" + i + "/head";
      setup = Documents.with(setup, head + "/recycle_s", number(in + "/mains/recycle_full_s"));
      setup = Documents.with(setup, head + "/modelling_w", number(in + "/mains/modelling_w"));
      setup =
          Documents.with(setup, head + "/temperature_k", number(in + "/kit_a/wall/flash_cct_k"));
    }
    setup =
        Documents.with(
            setup,
            "/camera/body",
            Map.of(
                "name",
                "body",
                "width_mm",
                36.0,
                "height_mm",
                24.0,
                "pixels_wide",
                number(in + "/kit_a/camera/pixels/0"),
                "sync",
                "1/160"));
    setup =
        Documents.with(
            setup, "/camera/lens", Map.of("name", "short tele", "focal_length_mm", 85.0));
    // The reference focuses on the plane of the face, not along the way to it.
    setup = Documents.with(setup, "/camera/focus_distance_m", 3.2);
    setup =
        Documents.with(
            setup, "/exposure/white_balance_k", number(in + "/kit_a/camera/white_balance_k"));
    setup = Documents.with(setup, "/ambient/temperature_k", number(in + "/ambient/cct_k"));
    return Documents.with(
        setup,
        "/plan",
        Map.of(
            "seconds_between_frames", number(in + "/mains/interval_s"),
            "mains_volts", number(in + "/mains/volts"),
            "power_factor", number(in + "/mains/power_factor")));
  }

  /** 17b by kit A with the shutter dragged for the room. */
  public static Object cellistDragged() {
    return Documents.with(cellist(), "/exposure/time", "0.4");
  }

  /** 17b by kit A with the key, aimed as before, read at the hand. */
  public static Object cellistAtHand() {
    String in = "/example_2/inputs";
    Object setup =
        Documents.with(cellist(), "/lights/0/aim", Documents.at(cellist(), "/lights/0/target/at"));
    return Documents.with(
        setup,
        "/lights/0/target",
        Map.of(
            "name",
            "hand",
            "at",
            Map.of(
                "x_m", number(in + "/hand_m/0"),
                "y_m", number(in + "/hand_m/1"),
                "z_m", number(in + "/hand_m/2"))));
  }

  /** 17b by kit B at the aperture that keeps the depth of field. */
  public static Object cellistByKitB() {
    Object setup = json(WorkedExamples.cellist());
    Map<String, Object> key = WorkedExamples.cellistLight("kit_b", "key", rectangle("key"));
    Map<String, Object> fill = WorkedExamples.cellistLight("kit_b", "fill", rectangle("fill"));
    setup =
        Documents.with(setup, "/lights", List.of(key, fill, WorkedExamples.cellistWall("kit_b")));
    setup =
        Documents.with(
            setup,
            "/camera/body",
            Map.of(
                "name", "back",
                "width_mm", number("/example_2/inputs/kit_b/camera/sensor_mm/0"),
                "height_mm", number("/example_2/inputs/kit_b/camera/sensor_mm/1"),
                "shutter", "leaf",
                "sync", "1/500"));
    setup =
        Documents.with(
            setup, "/camera/lens", Map.of("name", "portrait lens", "focal_length_mm", 110.0));
    return Documents.with(setup, "/exposure/f_number", 10.0);
  }

  private static Map<String, Object> rectangle(String light) {
    String in = "/example_2/inputs/kit_b/" + light;
    return Map.of(
        "shape", "rectangle",
        "width_m", number(in + "/width_m"),
        "height_m", number(in + "/height_m"));
  }
}
