package lampwright.setup.figures;

import static lampwright.wording.WordsForTests.english;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import lampwright.engine.Known;
import lampwright.setup.Documents;
import org.junit.jupiter.api.Test;

/** Movement along a path, depth of field, against section 9 of the reference and geometry. */
class MovementTest {

  private static Map<String, Object> point(double x, double y, double z) {
    return Map.of("x_m", x, "y_m", y, "z_m", z);
  }

  private static Map<String, Object> mark(double x, double y) {
    return Map.of("name", "mark", "at", point(x, y, 0));
  }

  /** 80 mm at f/2.8 on 53.4 by 40 mm, focused 7 m, the camera 7 m before the hit mark. */
  private static Object setup(List<Object> path, double speed) {
    Object json = Documents.resource("one-light.json");
    json = Documents.with(json, "/exposure/f_number", 2.8);
    json = Documents.with(json, "/lights/0/head/duration_t05_ms", 1.0);
    json = Documents.with(json, "/ambient", Map.of("ev100", 10.0));
    json =
        Documents.with(
            json,
            "/camera",
            Map.of(
                "body",
                Map.of(
                    "name",
                    "b",
                    "width_mm",
                    53.4,
                    "height_mm",
                    40.0,
                    "pixels_wide",
                    14204.0,
                    "sync",
                    "1/500",
                    "shutter",
                    "leaf"),
                "lens",
                Map.of("name", "l", "focal_length_mm", 80.0),
                "place",
                point(0, -7, 1.6),
                "aim",
                point(0, 0, 1.6),
                "focus_distance_m",
                7.0));
    return Documents.with(
        json,
        "/subjects",
        List.of(
            Map.of(
                "name", "runner", "place", point(0, 0, 0), "path", path, "speed_m_per_s", speed)));
  }

  private static MovementFigures movement(Object json) {
    return FiguresComputation.of(Documents.setup(json)).movements().getFirst();
  }

  /** m v sin(angle), m = f/(s-f): reference, section 9. */
  @Test
  void acrossThePictureThePathGivesMagnificationTimesSpeed() {
    MovementFigures movement = movement(setup(List.of(mark(-2, 0), mark(0, 0), mark(2, 0)), 3.2));
    assertTrue(movement.alongPath());
    assertEquals(80.0 / 6920 * 3200, movement.motion().speed().value(), 1e-9);
    assertEquals(0, movement.motion().approaching().value(), 1e-12);
  }

  @Test
  void atThirtyDegreesToTheAxisHalfOfItIsSeen() {
    double cosine = StrictMath.sqrt(3) / 2;
    MovementFigures movement = movement(setup(List.of(mark(-1, 2 * cosine), mark(0, 0)), 3.2));
    assertEquals(80.0 / 6920 * 3200 / 2, movement.motion().lateral().value(), 1e-9);
    assertEquals(movement.motion().lateral(), movement.motion().speed());
  }

  /** motion.time_in_dof_s.01: 0.32338827 s at 6 m/s, 80 mm f/2.8 at 7 m, c 0.04448 mm. */
  @Test
  void headOnItStaysSharpForAsLongAsTheDepthOfFieldIsDeep() {
    MovementFigures movement = movement(setup(List.of(mark(0, 10), mark(0, 0), mark(0, -5)), 6));
    MovementFigures.TimeInFocus inFocus = movement.inFocus().orElseThrow();
    assertEquals(0.32338827, inFocus.time().value(), 2e-6);
    assertEquals(List.of(false, false), List.of(inFocus.entersSharp(), inFocus.endsSharp()));
    assertEquals(0, movement.motion().speed().value(), 1e-12);
  }

  @Test
  void aPathThatEndsSharpSaysSo() {
    MovementFigures movement = movement(setup(List.of(mark(0, 10), mark(0, 0)), 6));
    MovementFigures.TimeInFocus inFocus = movement.inFocus().orElseThrow();
    assertTrue(inFocus.endsSharp());
    assertEquals((8.10213691 - 7) / 6, inFocus.time().value(), 1e-6);
  }

  /** The pixels of t0.1 = 3.32 t0.5 at full power, and no more than the shutter lets through. */
  @Test
  void aSlowFlashBlursNoLongerThanTheShutterIsOpen() {
    Object slow =
        Documents.with(
            Documents.with(setup(List.of(mark(-2, 0), mark(2, 0)), 3.2), "/exposure/time", "1/500"),
            "/lights/0/stops_down",
            0.0);
    MovementFigures movement = movement(slow);
    assertEquals(1.0 / 512, movement.flashes().getFirst().tenthTime().time().value(), 1e-12);
  }

  @Test
  void withoutACameraPlaceThePathIsTakenAsAcrossAndSaid() {
    Object json = Documents.without(setup(List.of(mark(-2, 0), mark(2, 0)), 3.2), "/camera/place");
    Figures figures = FiguresComputation.of(Documents.setup(json));
    assertEquals(1, figures.movements().getFirst().assumptions().size());
    assertTrue(figures.needs().contains("/camera/place"));
  }

  @Test
  void aFocusThatIsNotWrittenDownIsTheFirstTarget() {
    Object json = Documents.without(setup(List.of(), 3.2), "/camera/focus_distance_m");
    OpticsFigures.Focused focused =
        FiguresComputation.of(Documents.setup(json)).optics().orElseThrow().focused().orElseThrow();
    assertEquals(Known.COMPUTED, focused.known());
    assertEquals(7, focused.lens().focus().value(), 1e-12);
  }

  @Test
  void aPathWithoutASpeedNeedsOne() {
    Object json =
        Documents.without(
            setup(List.of(mark(-2, 0), mark(2, 0)), 3.2), "/subjects/0/speed_m_per_s");
    Figures figures = FiguresComputation.of(Documents.setup(json));
    assertEquals(List.of(), figures.movements());
    assertTrue(figures.needs().contains("/subjects/0/speed_m_per_s"));
  }

  /** Three stops and more hide most ghosts, by common practice, no source (reference, 9). */
  @Test
  void aGhostIsToldByTheAmbientsShare() {
    Object json = Documents.with(setup(List.of(), 1), "/ambient/ev100", 0.0);
    MovementFigures.Ghost ghost = movement(json).ghost().orElseThrow();
    assertTrue(ghost.ambientShare() < 0.11);
    assertEquals("Most ghosts are hidden.", english(ghost.inWords()));
    assertEquals(
        Optional.empty(), movement(Documents.without(setup(List.of(), 1), "/ambient")).ghost());
  }
}
