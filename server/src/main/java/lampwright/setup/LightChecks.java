package lampwright.setup;

import lampwright.document.Pointer;
import lampwright.document.Problems;
import lampwright.engine.light.Point;

/** What the fields of a light must fulfil together. */
final class LightChecks {

  /** Nearer than this no model of ours holds and no meter fits in between. */
  private static final double NEAREST_M = 0.05;

  private LightChecks() {}

  private static boolean isNear(Point one, Point other) {
    return one.distanceTo(other).value() < NEAREST_M;
  }

  static void check(Light light, Pointer at, Problems problems) {
    if (light.stopsDown().isEmpty() && light.reading().isEmpty()) {
      problems.add(
          at.field("stops_down"),
          "Stops down is missing. A light needs its power or a reading. Maybe 2 stops, for 1/4?");
    }
    light
        .stopsDown()
        .filter(down -> down.value() > light.head().range().value() + 1e-9)
        .ifPresent(
            down ->
                problems.add(
                    at.field("stops_down"),
                    "Stops down ("
                        + down
                        + ") must be within the head's range of "
                        + light.head().range()
                        + "."));
    if (isNear(light.place(), light.target().at())) {
      problems.add(
          at.field("place"),
          "Place must be at least "
              + NEAREST_M
              + " m away from the target. Maybe one of them is meant elsewhere?");
    }
    if (light.aim().filter(aim -> isNear(light.place(), aim)).isPresent()) {
      problems.add(
          at.field("aim"),
          "Aim must be at least "
              + NEAREST_M
              + " m away from the light's own place. Maybe leave it out: it is the target then.");
    }
    boolean onSurface = light.target().held() == Target.Held.ON_SURFACE;
    if (onSurface && light.target().surfaceFacing().isEmpty()) {
      problems.add(
          at.field("target").field("surface_facing_deg"),
          "Surface facing is missing: the meter lies on a surface, so say where it faces. Maybe 0°,"
              + " toward the camera?");
    }
  }
}
