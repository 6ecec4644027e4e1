package lampwright.engine.sun;

import java.util.Optional;
import lampwright.engine.Source;
import lampwright.engine.Working;
import lampwright.engine.exposure.Ev100;
import lampwright.engine.exposure.MeterConstant;
import lampwright.engine.unit.Bounds;
import lampwright.engine.unit.Degrees;
import lampwright.engine.unit.Lux;

/**
 * What sun and sky give under a clear sky, after US Naval Observatory Circular 171 (source
 * usno-circular-171). <strong>An estimate</strong>: real skies are within about a stop of it with
 * haze and thin cloud, more at twilight; a reading always wins. Below about -10 degrees street
 * light, moon and airglow are stronger than it.
 *
 * <p>The circular means the sun seen from the earth's centre; from a place it is at most 0.0025
 * degree lower, which is left out.
 *
 * @param elevation of the sun through the model's air, -90 to 90; made by {@link #smooth} or {@link
 *     #published}
 */
public record ClearSky(Degrees elevation) {

  /** Below this geometric elevation other lights are stronger than the model's sky. */
  public static final Degrees DARKEST = new Degrees(-10);

  /** Illuminance that the formula scales, lux. */
  private static final double FULL_LUX = 133_775;

  private static final double DIRECT_LOSS = 0.21;
  private static final double SKY_LOSS = 0.042;
  private static final double SKY_SHARE = 0.0289;

  /** Earth's radius over the height of the air. */
  private static final double AIR_RADII = 753.66156;

  private static final double DEGREES_PER_RADIAN = 57.29577951;

  /** Where the published formula switches refraction off. */
  private static final double SWITCH_DEG = -5.0 / 6;

  /** Where the smooth form has begun to and where it has done so. */
  private static final double TAPER_FROM_DEG = 0;

  private static final double TAPER_TO_DEG = -2;

  /** Half the width of the sun, degrees. */
  private static final double SUN_RADIUS_DEG = 0.2667;

  /** Checks the bound. */
  public ClearSky {
    Bounds.requireBetween("Elevation", elevation.value(), "°", -90, 90);
  }

  /**
   * Returns the sky as the circular prints it, with a step of 0.6 stop at -5/6 degree.
   *
   * @param geometricElevation -90 to 90
   */
  public static ClearSky published(Degrees geometricElevation) {
    double bare = bounded(geometricElevation);
    return through(bare, bare < SWITCH_DEG ? 0 : refraction(bare));
  }

  /**
   * Returns the sky with refraction faded out between 0 and -2 degrees instead of switched off; the
   * same as published outside. For figures and searches.
   *
   * @param geometricElevation -90 to 90
   */
  public static ClearSky smooth(Degrees geometricElevation) {
    double bare = bounded(geometricElevation);
    if (bare <= TAPER_TO_DEG) {
      return through(bare, 0);
    }
    double share = Math.min(1, (bare - TAPER_TO_DEG) / (TAPER_FROM_DEG - TAPER_TO_DEG));
    return through(bare, refraction(bare) * share * share * (3 - 2 * share));
  }

  private static double bounded(Degrees geometricElevation) {
    Bounds.requireBetween("Geometric elevation", geometricElevation.value(), "°", -90, 90);
    return geometricElevation.value();
  }

  /** Refraction is a hair below zero straight above, and never lifts the sun over the zenith. */
  private static ClearSky through(double bare, double lift) {
    return new ClearSky(new Degrees(Math.min(90, bare + lift)));
  }

  private static double refraction(double bare) {
    double angle = new Degrees(bare + 8.6 / (bare + 4.42)).toRadians();
    return 1 / (60 * StrictMath.tan(angle));
  }

  /** Returns what falls on a level plane. Never zero. */
  public Lux horizontal() {
    return new Lux(beamLux() * sine() + skyLux());
  }

  /** Returns the level of that for an incident meter held level. */
  public Ev100 ev100(MeterConstant constant) {
    return Ev100.ofLux(horizontal(), constant);
  }

  /**
   * Returns a <strong>rough</strong> estimate of what falls on an upright plane: the sun's beam by
   * the cosine, as much of it as is above the horizon, and half of the sky. That the formula's
   * first term is the sun and its second the sky is inferred, not stated by the circular.
   *
   * @param fromNormal the azimuth between sun and the way the plane faces; either sign
   */
  public Lux uprightRough(Degrees fromNormal) {
    double cosine = StrictMath.cos(elevation.toRadians()) * StrictMath.cos(fromNormal.toRadians());
    double risen = (elevation.value() + SUN_RADIUS_DEG) / (2 * SUN_RADIUS_DEG);
    double shining = Math.max(0, Math.min(1, risen));
    return new Lux(beamLux() * shining * Math.max(0, cosine) + skyLux() / 2);
  }

  private double sine() {
    return StrictMath.sin(elevation.toRadians());
  }

  /** Air masses to the sun. */
  private double airMasses() {
    double cosine = StrictMath.cos(elevation.toRadians());
    double inside = StrictMath.asin(AIR_RADII * cosine / (AIR_RADII + 1));
    return AIR_RADII * (StrictMath.cos(inside) - sine()) + StrictMath.cos(inside);
  }

  private double beamLux() {
    return FULL_LUX * StrictMath.exp(-DIRECT_LOSS * airMasses());
  }

  private double skyLux() {
    double height = 1 + (elevation.value() + 90) * sine() / DEGREES_PER_RADIAN;
    return FULL_LUX * SKY_SHARE * StrictMath.exp(-SKY_LOSS * airMasses()) * height;
  }

  /**
   * Returns the geometric elevation at which the smooth model gives a level, to a millionth of a
   * degree; none above what the sun at the zenith gives or below {@link #DARKEST}.
   */
  public static Optional<Degrees> elevationOf(Ev100 level, MeterConstant constant) {
    double low = DARKEST.value();
    double high = 90;
    if (level.value() > smooth(new Degrees(high)).ev100(constant).value()
        || level.value() < smooth(new Degrees(low)).ev100(constant).value()) {
      return Optional.empty();
    }
    // Rises all the way, so halving finds the only such elevation; 100 degrees / 2^27 < 1e-6.
    for (int step = 0; step < 27; step++) {
      double middle = (low + high) / 2;
      if (smooth(new Degrees(middle)).ev100(constant).value() < level.value()) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return Optional.of(new Degrees((low + high) / 2));
  }

  /** Returns the steps to the level. */
  public Working working(MeterConstant constant) {
    return Working.of(
        "clear sky on a level plane, an estimate",
        ev100(constant).value(),
        "EV100",
        "log2(100 E / C)",
        Source.EXPOSURE_VALUE,
        Working.of(
            "illuminance",
            horizontal().value(),
            "lx",
            "133775 (e^(−0.21 M) sin HA + 0.0289 e^(−0.042 M) (1 + (HA + 90) sin HA / 57.3))",
            Source.USNO_CIRCULAR_171,
            Working.of(
                "air masses M",
                airMasses(),
                "",
                "X (cos S − sin HA) + cos S, X = 753.66",
                Source.USNO_CIRCULAR_171),
            Working.of(
                "sun HA through the air",
                elevation.value(),
                "°",
                "h + 1 / (60 tan(h + 8.6 / (h + 4.42))), faded out from 0° to −2°",
                Source.USNO_CIRCULAR_171)),
        Working.given("meter constant", constant.luxSeconds(), "lx·s"));
  }
}
