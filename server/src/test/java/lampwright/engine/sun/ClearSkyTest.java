package lampwright.engine.sun;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import lampwright.engine.exposure.Ev100;
import lampwright.engine.exposure.MeterConstant;
import lampwright.engine.unit.Degrees;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class ClearSkyTest {

  /** REFERENCE 10, table of the circular's formula; rounded there to four digits or less. */
  @ParameterizedTest
  @CsvSource({
    "60,102957",
    "45,80044",
    "30,51321",
    "20,30598",
    "15,20467",
    "10,11231",
    "7,6637",
    "5,4252",
    "4,3317",
    "3,2557",
    "2,1950",
    "1,1430",
    "0,984",
    "-0.834,438",
    "-2,169",
    "-3,66.4",
    "-4,24.4",
    "-6,2.99",
    "-8,0.345",
    "-10,0.0389"
  })
  void thePublishedFormComesOutAsTabulated(double elevation, double lux) {
    assertEquals(lux, ClearSky.published(new Degrees(elevation)).horizontal().value(), 0.004 * lux);
  }

  @Test
  void bothFormsAreOneOutsideOfTheTaper() {
    for (double elevation = -90; elevation <= 90; elevation += 0.25) {
      if (elevation <= -2 || elevation >= 0) {
        Degrees at = new Degrees(elevation);
        assertEquals(ClearSky.published(at), ClearSky.smooth(at));
      }
    }
  }

  /** AMS Glossary of Meteorology, civil twilight: 585 to 410 lx at sunset (as quoted). */
  @Test
  void theSmoothFormGivesTheLightOfSunset() {
    double lux = ClearSky.smooth(SunPhase.GOLDEN_SUN_UP.lowest()).horizontal().value();
    assertTrue(lux > 410 && lux < 585, "lux " + lux);
  }

  /** A step shows as more than a tenth of a stop in a hundredth of a degree. */
  @Test
  void theSmoothFormRisesWithTheSunAndHasNoStep() {
    double before = level(-90);
    for (int step = 1; step <= 18_000; step++) {
      double elevation = -90 + step / 100.0;
      double now = level(elevation);
      if (elevation > -60) {
        assertTrue(now > before, "falls at " + elevation);
      }
      assertTrue(Math.abs(now - before) < 0.1, "step at " + elevation);
      before = now;
    }
  }

  @Test
  void theElevationOfALevelIsFoundAgain() {
    for (double elevation = -9.9; elevation < 90; elevation += 0.37) {
      Degrees found =
          ClearSky.elevationOf(new Ev100(level(elevation)), MeterConstant.FLAT).orElseThrow();
      assertEquals(elevation, found.value(), elevation > 80 ? 1e-4 : 2e-6);
    }
    assertEquals(Optional.empty(), ClearSky.elevationOf(new Ev100(17), MeterConstant.FLAT));
    assertEquals(Optional.empty(), ClearSky.elevationOf(new Ev100(-8), MeterConstant.FLAT));
  }

  @Test
  void anUprightPlaneWithItsBackToTheSunHasHalfTheSkyOnly() {
    ClearSky sky = ClearSky.smooth(new Degrees(5));
    double back = sky.uprightRough(new Degrees(180)).value();
    double front = sky.uprightRough(new Degrees(0)).value();
    assertEquals(back, sky.uprightRough(new Degrees(-90)).value(), 1e-9);
    assertTrue(front > 5 * back, front + " against " + back);
    // A low sun lights what is upright more than the ground.
    assertTrue(front > sky.horizontal().value());
  }

  private static double level(double elevation) {
    return ClearSky.smooth(new Degrees(elevation)).ev100(MeterConstant.FLAT).value();
  }
}
