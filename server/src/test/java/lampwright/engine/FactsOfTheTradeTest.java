package lampwright.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import lampwright.engine.exposure.Ambient;
import lampwright.engine.exposure.Ev100;
import lampwright.engine.exposure.ExposureSettings;
import lampwright.engine.exposure.FNumber;
import lampwright.engine.exposure.Iso;
import lampwright.engine.exposure.MeterConstant;
import lampwright.engine.exposure.ShutterTime;
import lampwright.engine.exposure.Tolerance;
import lampwright.engine.light.LightSum;
import lampwright.engine.unit.LuxSeconds;
import lampwright.engine.unit.Stops;
import org.junit.jupiter.api.Test;

/** What every photographer knows must come out of the engine; common practice, no source. */
final class FactsOfTheTradeTest {

  private static final ExposureSettings SETTINGS =
      ExposureSettings.of(FNumber.parse("5.6"), ShutterTime.parse("1/125"), Iso.parse("100"));

  @Test
  void oneStopUnderTheAmbientMeansTheAmbientMetersElevenAtTwelve() {
    assertEquals(12, SETTINGS.ev100().value(), 1e-12);
    assertEquals(-1, new Ambient(new Ev100(11)).offset(SETTINGS).value(), 1e-12);
  }

  @Test
  void holdingTheAmbientUnderDarkensTheBackgroundAndLeavesWhatIsLit() {
    LuxSeconds correct = SETTINGS.requiredExposure(MeterConstant.FLAT);
    LuxSeconds ambient = new Ambient(new Ev100(11)).exposure(SETTINGS.time(), MeterConstant.FLAT);
    LightSum unlit = LightSum.of(List.of(), ambient);
    assertEquals(-1, unlit.offset(SETTINGS, MeterConstant.FLAT).value(), 1e-12);
    LightSum lit = LightSum.of(List.of(correct), ambient);
    // The lit target is set by its head, up to the ambient's share: log2(1 + 1/2).
    assertEquals(
        Stops.ofRatio(1.5).value(), lit.offset(SETTINGS, MeterConstant.FLAT).value(), 1e-12);
    ExposureSettings faster = SETTINGS.withTime(ShutterTime.parse("1/250"));
    LightSum held =
        LightSum.of(
            List.of(correct),
            new Ambient(new Ev100(11)).exposure(faster.time(), MeterConstant.FLAT));
    assertEquals(lit.flash(), held.flash());
    assertEquals(-1, held.ambient().stopsOver(ambient).value(), 1e-12);
  }

  @Test
  void twoEqualHeadsAreAStopMoreThreeAboutOnePointSix() {
    LuxSeconds one = new LuxSeconds(20);
    assertEquals(1, LuxSeconds.sum(List.of(one, one)).stopsOver(one).value(), 1e-12);
    assertEquals(1.58, LuxSeconds.sum(List.of(one, one, one)).stopsOver(one).value(), 0.005);
    FNumber eight = FNumber.parse("8");
    assertEquals("f/11", FNumber.ofTogether(List.of(eight, eight)).toString());
  }

  @Test
  void sunnySixteenIsAboutFifteen() {
    ExposureSettings sunny =
        ExposureSettings.of(FNumber.parse("16"), ShutterTime.parse("1/125"), Iso.parse("100"));
    assertEquals(15, sunny.ev100().value(), 1e-12);
  }

  @Test
  void defaultTolerancesAreAThirdAndATenth() {
    assertEquals(Stops.THIRD, Tolerance.VISIBLE_SIDE_BY_SIDE.toStops());
    assertEquals(Stops.TENTH, Tolerance.METER_REPEATABILITY.toStops());
  }
}
