package lampwright.engine.unit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Random;
import java.util.function.DoubleFunction;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

final class UnitsTest {

  private static final long SEED = 20261124;

  static Stream<Arguments> amounts() {
    return Stream.<DoubleFunction<Object>>of(
            Lux::new,
            LuxSeconds::new,
            CandelaSeconds::new,
            CandelasPerSquareMetre::new,
            Metres::new,
            Millimetres::new,
            Micrometres::new,
            MetresPerSecond::new,
            MillimetresPerSecond::new,
            Seconds::new,
            WattSeconds::new,
            Watts::new,
            WattHours::new,
            VoltAmperes::new,
            Volts::new,
            Amperes::new,
            Microfarads::new,
            SquareMetres::new,
            Kilograms::new,
            Newtons::new,
            NewtonMetres::new)
        .map(make -> Arguments.of(make, make.apply(1.5)));
  }

  @ParameterizedTest
  @MethodSource("amounts")
  void amountsAreZeroOrMoreAndSayWhatIsWrong(DoubleFunction<Object> make, Object example) {
    assertTrue(make.apply(0).toString().startsWith("0 "), "zero is allowed");
    IllegalArgumentException refusal =
        assertThrows(IllegalArgumentException.class, () -> make.apply(-1));
    assertTrue(
        refusal.toString().matches(".*: [A-Z].* \\(-1 .+\\) must be 0 or more\\."),
        refusal::toString);
    assertThrows(IllegalArgumentException.class, () -> make.apply(Double.NaN));
    assertThrows(IllegalArgumentException.class, () -> make.apply(Double.POSITIVE_INFINITY));
    assertTrue(example.toString().startsWith("1.5 "), example.toString());
  }

  @Test
  void doublingTheEnergyIsOneStop() {
    WattSeconds full = new WattSeconds(400);
    assertEquals(200, full.down(Stops.ONE).value());
    assertEquals(1, Stops.ofRatio(2).value());
  }

  @Test
  void stopsComeBackFromTheirFactor() {
    Random random = new Random(SEED);
    for (int i = 0; i < 10_000; i++) {
      double value = random.nextDouble(-40, 40);
      assertEquals(value, Stops.ofRatio(new Stops(value).toFactor()).value(), 1e-13);
    }
  }

  @Test
  void lightsAddAsLightInAnyOrder() {
    Random random = new Random(SEED);
    for (int i = 0; i < 10_000; i++) {
      List<Stops> lights = random.doubles(1 + i % 6, -20, 20).mapToObj(Stops::new).toList();
      double sum = Stops.sumOfLight(lights).value();
      double plain =
          Math.log(lights.stream().mapToDouble(s -> Math.pow(2, s.value())).sum()) / Math.log(2);
      assertEquals(plain, sum, 1e-12, "seed " + SEED + ", " + lights);
      assertEquals(sum, Stops.sumOfLight(lights.reversed()).value(), 1e-12);
      double strongest = lights.stream().mapToDouble(Stops::value).max().orElseThrow();
      assertTrue(sum >= strongest, "more light is never darker");
    }
  }

  @Test
  void oneLightAloneStaysExactlyItself() {
    assertEquals(new Stops(-7.3), Stops.sumOfLight(List.of(new Stops(-7.3))));
  }

  @Test
  void veryUnequalLightsDoNotOverflow() {
    assertEquals(900, Stops.sumOfLight(List.of(new Stops(900), new Stops(-900))).value());
  }

  @Test
  void errorsAddInQuadrature() {
    assertEquals(0.5, Stops.inQuadrature(List.of(new Stops(0.3), new Stops(-0.4))).value(), 1e-15);
    assertEquals(Stops.ZERO, Stops.inQuadrature(List.of()));
  }

  @Test
  void stopsAreWrittenWithTheirSign() {
    assertEquals("+0.3 stop", new Stops(1.0 / 3).toSignedText());
    assertEquals("−2.0 stops", new Stops(-2).toSignedText());
    assertEquals("±0.0 stop", new Stops(0.04).toSignedText());
    assertEquals("0.3333 stops", Stops.THIRD.toString());
    assertEquals("0 stops", new Stops(-0.0).toString());
  }

  @Test
  void anglesTurnIntoHalfTurns() {
    assertEquals(180, new Degrees(-180).toHalfTurns().value());
    assertEquals(180, new Degrees(540).toHalfTurns().value());
    assertEquals(-170, new Degrees(190).toHalfTurns().value());
    assertEquals(10, new Degrees(-350).toHalfTurns().value());
    DoubleStream.iterate(-1000, d -> d < 1000, d -> d + 7.3)
        .forEach(
            d -> {
              double turned = new Degrees(d).toHalfTurns().value();
              assertTrue(turned > -180 && turned <= 180, d + " became " + turned);
              assertEquals(Math.sin(Math.toRadians(d)), Math.sin(Math.toRadians(turned)), 1e-12);
            });
  }

  @Test
  void anglesComeBackFromRadians() {
    for (double d = -720; d <= 720; d += 0.7) {
      assertEquals(d, Degrees.ofRadians(new Degrees(d).toRadians()).value(), 1e-12);
    }
  }

  @Test
  void miredsAddAndKelvinsComeBack() {
    assertEquals(3200, new Kelvin(3200).toMired().toKelvin().value(), 1e-9);
    assertEquals(
        3196.745, new Kelvin(5500).toMired().plus(new Mired(131)).toKelvin().value(), 1e-3);
    String message =
        assertThrows(IllegalArgumentException.class, () -> new Mired(-31).toKelvin()).getMessage();
    assertEquals(
        "Mired (-31 mired) must be more than 0 to be a colour temperature. Maybe a weaker blue"
            + " gel?",
        message);
  }

  @Test
  void footIsExact() {
    assertEquals(0.3048, Metres.ofFeet(1).value());
    assertEquals(1, new Metres(0.3048).toFeet());
  }

  @Test
  void exposuresCompareInStops() {
    LuxSeconds twenty = new LuxSeconds(20);
    assertEquals(2, twenty.stopsOver(new LuxSeconds(5)).value());
    assertEquals(20, new LuxSeconds(5).plus(new Stops(2)).value());
    assertEquals(5, twenty.minus(new Stops(2)).value());
    assertThrows(IllegalArgumentException.class, () -> twenty.stopsOver(LuxSeconds.NONE));
    assertEquals(LuxSeconds.NONE, LuxSeconds.sum(List.of()));
  }

  @Test
  void numbersInMessagesReadLikeTyped() {
    assertEquals("0", Bounds.plain(-0.0));
    assertEquals("12800", Bounds.plain(12800));
    assertEquals("0.5", Bounds.plain(0.5));
    assertEquals("7.5", Bounds.rounded(7.5, 3));
    assertEquals("100", Bounds.rounded(100, 2));
    assertEquals("0", Bounds.rounded(-0.0001, 2));
    assertEquals("5.0", Bounds.fixed(5, 1));
    assertFalse(Bounds.rounded(1e20, 2).contains("E"));
  }

  @Test
  void aWrittenNumberIsTheExactOneRoundedHalfUp() {
    Random dice = new Random(SEED);
    for (int i = 0; i < 200_000; i++) {
      int decimals = dice.nextInt(8);
      double scale = new BigDecimal(1).movePointRight(decimals).doubleValue();
      double half = (dice.nextInt(20_000) - 10_000 + 0.5) / scale;
      double near = half + dice.nextInt(-2, 3) * Math.ulp(half);
      double any = dice.nextGaussian() * StrictMath.pow(10, dice.nextInt(-8, 12));
      for (double value : new double[] {near, any}) {
        String exact =
            new BigDecimal(value).setScale(decimals, RoundingMode.HALF_UP).toPlainString();
        assertEquals(exact, Bounds.fixed(value, decimals), () -> value + ", seed " + SEED);
      }
    }
  }
}
