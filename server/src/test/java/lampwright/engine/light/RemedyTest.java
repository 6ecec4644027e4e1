package lampwright.engine.light;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import lampwright.engine.unit.Metres;
import lampwright.engine.unit.Stops;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** By hand, with the inverse square law; common practice, no source. */
class RemedyTest {

  private static final EmittingFace POINT = new EmittingFace.PointSource();

  private static Remedy remedy(double over, double fromM, double down, double step) {
    return Remedy.of(
        new Stops(over),
        POINT,
        new Metres(fromM),
        Optional.of(new Remedy.DialNow(new Stops(down), new Stops(8), new Stops(step))));
  }

  /** One stop is 1.414 in distance, two are 2, 0.7 are 1.275; rounded to 5 cm. */
  @ParameterizedTest
  @CsvSource({"-1,2,1.40", "1,2,2.85", "2,2,4.00", "-0.7,2,1.55", "-0.7,3,2.35", "-2,1,0.50"})
  void theDistanceFollowsTheInverseSquareToFiveCentimetres(double over, double from, double to) {
    assertEquals(to, remedy(over, from, 3, 0.1).distance().orElseThrow().value(), 1e-9);
  }

  @ParameterizedTest
  @CsvSource({"-1,3,0.1,2", "0.7,3,0.1,3.7", "-0.7,3,0.5,2.5", "-0.67,2,0.333333333,1.333333333"})
  void thePowerIsAStepThatTheDialHas(double over, double down, double step, double to) {
    assertEquals(to, remedy(over, 2, down, step).stopsDown().orElseThrow().value(), 1e-6);
  }

  @Test
  void aHeadAtItsEndIsNotTurnedFurther() {
    assertTrue(remedy(-0.7, 2, 0, 0.1).stopsDown().isEmpty());
    assertTrue(remedy(-0.7, 2, 0.3, 0.1).stopsDown().isEmpty(), "only half of what is missing");
    assertTrue(remedy(1, 2, 8, 0.1).stopsDown().isEmpty());
    assertTrue(
        Remedy.of(new Stops(1), POINT, new Metres(2), Optional.empty()).stopsDown().isEmpty());
  }

  @Test
  void aLightIsNotMovedOntoAFaceNorByLessThanAStandIs() {
    assertTrue(remedy(-2, 0.4, 3, 0.1).distance().isEmpty());
    assertTrue(remedy(-0.02, 0.6, 3, 0.1).distance().isEmpty());
  }

  /** A large face falls off more gently than a point when it is near, so it moves by more. */
  @Test
  void aLargeFaceMovesByMoreThanAPoint() {
    EmittingFace face = new EmittingFace.Disc(new Metres(0.75));
    Metres from = new Metres(1.5);
    Remedy large = Remedy.of(new Stops(-1), face, from, Optional.empty());
    assertTrue(large.distance().orElseThrow().value() < 1.5 / Math.sqrt(2));
  }
}
