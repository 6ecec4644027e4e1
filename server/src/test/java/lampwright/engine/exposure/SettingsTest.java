package lampwright.engine.exposure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Random;
import lampwright.engine.unit.LuxSeconds;
import lampwright.engine.unit.Stops;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

final class SettingsTest {

  private static final long SEED = 20261124;

  @ParameterizedTest
  @CsvSource({
    "f/5.6, 5.656854249492381, f/5.6",
    "5.6, 5.656854249492381, f/5.6",
    "F/22, 22.627416997969522, f/22",
    "6.7, 6.727171322029716, f/6.7",
    "0.95, 0.95, f/0.95",
    "5.9, 5.9, f/5.9"
  })
  void aperturesAreReadToTheirExactValueAndWrittenBack(String text, double exact, String written) {
    assertEquals(exact, FNumber.parse(text).value(), 1e-14);
    assertEquals(written, FNumber.parse(text).toString());
  }

  @ParameterizedTest
  @CsvSource({
    "1/125, 0.0078125, 1/125 s",
    "1/125 s, 0.0078125, 1/125 s",
    "0.5, 0.5, 1/2 s",
    "30, 32, 30 s",
    "0.4, 0.3968502629920499, 0.4 s",
    "1/180, 0.005555555555555556, 1/180 s",
    "90, 90, 90 s"
  })
  void timesAreReadToTheirExactValueAndWrittenBack(String text, double exact, String written) {
    assertEquals(exact, ShutterTime.parse(text).seconds(), 1e-14);
    assertEquals(written, ShutterTime.parse(text).toString());
  }

  @ParameterizedTest
  @CsvSource({
    "640, 634.9604207872798, ISO 640",
    "ISO 100, 100, ISO 100",
    "iso 51200, 51200, ISO 51200"
  })
  void speedsAreReadToTheirExactValueAndWrittenBack(String text, double exact, String written) {
    assertEquals(exact, Iso.parse(text).value(), 1e-10);
    assertEquals(written, Iso.parse(text).toString());
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "f/", "1/0", "-2", "0", "NaN", "1e3", "1/2/3", "f 8", "1d", "∞"})
  void nonsenseIsRefusedWithWhatToType(String text) {
    assertEquals(
        "Number ("
            + (text.startsWith("f/") ? text.substring(2) : text)
            + ") must be a number above 0 or a fraction. Maybe 5.6 or 1/125?",
        assertThrows(IllegalArgumentException.class, () -> FNumber.parse(text)).getMessage());
    assertThrows(IllegalArgumentException.class, () -> ShutterTime.parse(text));
    assertThrows(IllegalArgumentException.class, () -> Iso.parse(text));
  }

  /** A meter's display of "5.6 and 7" is 7.210; common practice, no source. */
  @Test
  void tenthsCloseTheMark() {
    assertEquals(7.210, FNumber.parse("5.6").withTenths(7).value(), 5e-4);
    assertEquals("f/5.6 + 0.7", FNumber.parse("5.6").withTenths(7).tenthsText());
    assertEquals("f/8", new FNumber(7.999).tenthsText());
  }

  @Test
  void settingsWithExactMarksGiveWholeLevels() {
    ExposureSettings settings =
        ExposureSettings.of(FNumber.parse("5.6"), ShutterTime.parse("1/125"), Iso.parse("100"));
    assertEquals(12, settings.ev100().value(), 1e-12);
    assertEquals("f/5.6, 1/125 s, ISO 100", settings.toString());
  }

  @Test
  void oneStopOfAnyControlIsOneStopOfLevel() {
    ExposureSettings settings =
        ExposureSettings.of(FNumber.parse("4"), ShutterTime.parse("1/60"), Iso.parse("200"));
    double level = settings.ev100().value();
    Stops one = Stops.ONE;
    assertEquals(
        level + 1, settings.withAperture(settings.aperture().closedBy(one)).ev100().value(), 1e-12);
    assertEquals(
        level + 1, settings.withTime(settings.time().plus(one.negated())).ev100().value(), 1e-12);
    assertEquals(
        level + 1, settings.withIso(settings.iso().plus(one.negated())).ev100().value(), 1e-12);
    assertEquals(level + 1, settings.withNeutralDensity(one).ev100().value(), 1e-12);
  }

  /** The identity that decides most conversions: only time changes flash against ambient. */
  @Test
  void balanceOfFlashAndAmbientHangsOnTheTimeAlone() {
    Random random = new Random(SEED);
    Ambient ambient = new Ambient(new Ev100(10));
    LuxSeconds flash = new LuxSeconds(20);
    for (int i = 0; i < 1000; i++) {
      ExposureSettings settings =
          new ExposureSettings(
              new FNumber(random.nextDouble(1, 30)),
              ShutterTime.parse("1/500"),
              new Iso(random.nextDouble(25, 6400)),
              new Stops(random.nextDouble(0, 6)));
      double balance =
          settings.offsetOf(flash, MeterConstant.FLAT).value() - ambient.offset(settings).value();
      assertEquals(2, balance, 1e-9, "seed " + SEED);
    }
  }

  @Test
  void apertureForALevelGivesThatLevel() {
    Random random = new Random(SEED);
    for (int i = 0; i < 1000; i++) {
      ExposureSettings settings =
          new ExposureSettings(
              new FNumber(random.nextDouble(1, 30)),
              new ShutterTime(random.nextDouble(1e-4, 10)),
              new Iso(random.nextDouble(25, 6400)),
              new Stops(random.nextDouble(0, 6)));
      Ev100 level = new Ev100(random.nextDouble(-5, 18));
      ExposureSettings fitted = settings.withAperture(settings.apertureFor(level));
      assertEquals(level.value(), fitted.ev100().value(), 1e-11);
    }
  }

  @Test
  void readingAndExposureAreTwoFacesOfOneThing() {
    LuxSeconds exposure = FNumber.parse("8").toExposure(Iso.parse("400"), MeterConstant.DOME);
    assertEquals(
        8, FNumber.ofExposure(exposure, Iso.parse("400"), MeterConstant.DOME).value(), 1e-12);
  }

  @Test
  void luxComesBackFromItsLevel() {
    for (double level = -6; level <= 18; level += 0.37) {
      double back =
          Ev100.ofLux(new Ev100(level).toLux(MeterConstant.DOME), MeterConstant.DOME).value();
      assertEquals(level, back, 1e-12);
    }
  }

  @Test
  void filtersOnlyTakeLight() {
    assertThrows(
        IllegalArgumentException.class,
        () ->
            new ExposureSettings(
                new FNumber(8), new ShutterTime(0.01), Iso.HUNDRED, new Stops(-1)));
    assertThrows(IllegalArgumentException.class, () -> NeutralDensity.ofFilterFactor(0.5));
    assertEquals(
        "Optical density (-1) must be 0 or more.",
        assertThrows(IllegalArgumentException.class, () -> NeutralDensity.ofOpticalDensity(-1))
            .getMessage());
  }

  @Test
  void workingsEndInTheSameNumbers() {
    ExposureSettings settings =
        new ExposureSettings(
            FNumber.parse("1.8"), ShutterTime.parse("1/200"), Iso.parse("125"), new Stops(3));
    Ambient ambient = new Ambient(new Ev100(10));
    assertEquals(ambient.offset(settings).value(), ambient.offsetWorking(settings).value());
    assertEquals(settings.ev100().value(), ambient.offsetWorking(settings).parts().get(1).value());
    assertEquals(
        settings.requiredExposure(MeterConstant.FLAT).value(),
        settings.requiredExposureWorking(MeterConstant.FLAT).value());
    assertEquals(
        ambient.exposure(settings.time(), MeterConstant.FLAT).value(),
        ambient.exposureWorking(settings.time(), MeterConstant.FLAT).value());
    assertEquals(
        List.of(
            "ambient offset = -2 stops, EV100 of the ambient − EV100 of the settings"
                + " [exposure-value]",
            "  ambient = 10 EV100 [given]"),
        ambient.offsetWorking(settings).toString().lines().limit(2).toList());
  }
}
