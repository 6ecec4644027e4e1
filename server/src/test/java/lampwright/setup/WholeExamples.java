package lampwright.setup;

import java.util.List;
import java.util.Map;
import lampwright.document.Json;

/**
 * The worked examples of the reference (section 17) with everything that a document can express:
 * the sun, the wind, the mains, the body and the lens.
 */
public final class WholeExamples {

  private WholeExamples() {}

  private static Object with(Object document, Object... pointersAndValues) {
    Object changed = document;
    for (int i = 0; i < pointersAndValues.length; i += 2) {
      changed = Documents.with(changed, (String) pointersAndValues[i], pointersAndValues[i + 1]);
    }
    return changed;
  }

  private static double example1(String pointer) {
    return WorkedExamples.number("/example_1" + pointer);
  }

  private static double example2(String pointer) {
    return WorkedExamples.number("/example_2" + pointer);
  }

  /**
   * 17a with sun and wind. The reference reckons with a steady wind, we with gusts over the mean:
   * so the mean here is the reference's wind over the gust factor.
   *
   * @param gustFactor ours
   */
  public static Object dancer(double gustFactor) {
    double bearing =
        example1("/results/sun/azimuth_deg") - example1("/results/sun/relative_azimuth_deg");
    return with(
        Json.parse(Json.print(SetupDocument.FORM.write(WorkedExamples.dancer()))),
        "/occasion",
        Map.of(
            "place",
            Map.of(
                "name", "slipway",
                "latitude_deg", example1("/inputs/sun/latitude_deg"),
                "longitude_deg", example1("/inputs/sun/longitude_east_deg")),
            "date",
            "2025-09-12",
            "time",
            "19:13",
            "utc_offset",
            "+01:00",
            "wind_m_per_s",
            example1("/inputs/wind/wind_m_s") / gustFactor),
        "/camera/bearing_deg",
        bearing,
        "/subjects/0/height_m",
        1.7,
        "/lights/0/stand",
        Map.of(
            "name",
            "stand",
            "highest_m",
            4.0,
            "leg_radius_m",
            example1("/inputs/wind/leg_radius_m"),
            "weight_kg",
            example1("/inputs/wind/stand_and_head_kg")));
  }

  /** 17b with body and lens, the mains and the pace. */
  public static Object cellist() {
    Object document = Json.parse(Json.print(SetupDocument.FORM.write(WorkedExamples.cellist())));
    String in = "/inputs/kit_a/camera";
    document =
        with(
            document,
            "/exposure/white_balance_k",
            example2(in + "/white_balance_k"),
            "/ambient/temperature_k",
            example2("/inputs/ambient/cct_k"),
            "/camera/body",
            Map.of(
                "name", "body",
                "width_mm", example2(in + "/sensor_mm/0"),
                "height_mm", example2(in + "/sensor_mm/1"),
                "pixels_wide", example2(in + "/pixels/0"),
                "sync", "1/200"),
            "/camera/lens",
            Map.of("name", "lens", "focal_length_mm", example2(in + "/focal_mm")),
            "/camera/focus_distance_m",
            3.2,
            "/plan",
            Map.of(
                "seconds_between_frames", example2("/inputs/mains/interval_s"),
                "mains_volts", example2("/inputs/mains/volts"),
                "power_factor", example2("/inputs/mains/power_factor")));
    for (int i : List.of(0, 1, 2)) {
      document =
          with(
              document,
              "/lights/" + i + "/head/recycle_s",
              example2("/inputs/mains/recycle_full_s"),
              "/lights/" + i + "/head/modelling_w",
              example2("/inputs/mains/modelling_w"));
    }
    return document;
  }
}
