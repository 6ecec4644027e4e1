package lampwright.setup.building;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import lampwright.engine.light.Point;
import lampwright.setup.SetupDocument;
import org.junit.jupiter.api.Test;

/** Where things stand, seen from the hit mark. */
class FromHitMarkTest {

  private static SetupDocument setup(Map<String, Object> camera, double facing) {
    return LitForTests.setup(
        Map.of(
            "camera",
            camera,
            "subjects",
            List.of(
                Map.of(
                    "name", "singer", "place", LitForTests.point(0, 0, 0), "facing_deg", facing))),
        LitForTests.light("key", 0, -3, "toward_light", 8));
  }

  private static Map<String, Object> from(double x, double y) {
    return Map.of("place", LitForTests.point(x, y, 1.5));
  }

  @Test
  void directionsGoClockwiseFromWhereTheCameraLooks() {
    SetupDocument setup = setup(from(0, -5), 0);
    assertEquals(0, FromHitMark.of(new Point(0, 3, 2), setup).direction().value(), 1e-9);
    assertEquals(90, FromHitMark.of(new Point(3, 0, 2), setup).direction().value(), 1e-9);
    assertEquals(180, FromHitMark.of(new Point(0, -3, 2), setup).direction().value(), 1e-9);
    assertEquals(225, FromHitMark.of(new Point(-2, -2, 2), setup).direction().value(), 1e-9);
  }

  @Test
  void aTapeOnTheGroundDoesNotKnowTheHeight() {
    assertEquals(
        5, FromHitMark.of(new Point(3, 4, 7), setup(from(0, -5), 0)).overGround().value(), 1e-9);
    assertTrue(FromHitMark.of(new Point(0, 0.02, 3), setup(from(0, -5), 0)).isOnTheMark());
  }

  @Test
  void aCameraThatLooksElsewhereTurnsTheAxis() {
    SetupDocument fromTheLeft = setup(from(-5, 0), 0);
    assertEquals(0, FromHitMark.of(new Point(3, 0, 2), fromTheLeft).direction().value(), 1e-9);
    assertEquals(90, FromHitMark.of(new Point(0, -3, 2), fromTheLeft).direction().value(), 1e-9);
  }

  @Test
  void withTheCamerasBearingTheyAreTrue() {
    SetupDocument south =
        setup(Map.of("place", LitForTests.point(0, -5, 1.5), "bearing_deg", 180.0), 0);
    assertEquals(270, FromHitMark.of(new Point(3, 0, 2), south).direction().value(), 1e-9);
    assertEquals(
        0, FromHitMark.faced(south.subjects().getFirst(), south).value(), 1e-9, "to the camera");
  }

  @Test
  void aFaceTurnsFromTheCameraToItsRight() {
    SetupDocument setup = setup(from(0, -5), 90);
    assertEquals(90, FromHitMark.faced(setup.subjects().getFirst(), setup).value(), 1e-9);
    SetupDocument left = setup(from(0, -5), -45);
    assertEquals(225, FromHitMark.faced(left.subjects().getFirst(), left).value(), 1e-9);
  }
}
