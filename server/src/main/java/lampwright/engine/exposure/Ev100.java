package lampwright.engine.exposure;

import lampwright.engine.unit.BaseTwo;
import lampwright.engine.unit.Bounds;
import lampwright.engine.unit.Lux;
import lampwright.engine.unit.Stops;

/**
 * An exposure value at ISO 100: the level of a scene, or the level that settings suit. One more is
 * twice the light of a scene, and half the exposure of a camera.
 *
 * @param value a finite number, within 200 of zero (moonlight is -3, bright snow 16)
 */
public record Ev100(double value) implements Comparable<Ev100> {

  /** Checks the bound. */
  public Ev100 {
    Bounds.requireBetween("EV100", value, "", -200, 200);
    value = value + 0.0; // no negative zero
  }

  /** Returns an exposure value. */
  public static Ev100 of(double value) {
    return new Ev100(value);
  }

  /**
   * Returns the level of an illuminance, {@code log2(100 E / C)}.
   *
   * @param light above 0
   */
  public static Ev100 ofLux(Lux light, MeterConstant constant) {
    Bounds.requirePositive("Illuminance", light.value(), "lx");
    return new Ev100(BaseTwo.log(100 * light.value() / constant.luxSeconds()));
  }

  /** Returns the illuminance, {@code E = C 2^EV100 / 100}: 2.5 lx at 0 and C 250. */
  public Lux toLux(MeterConstant constant) {
    return new Lux(constant.luxSeconds() * BaseTwo.power(value) / 100);
  }

  /** Returns this level changed by so many stops. */
  public Ev100 plus(Stops stops) {
    return new Ev100(value + stops.value());
  }

  /** Returns by how many stops this level is above the other. */
  public Stops minus(Ev100 other) {
    return new Stops(value - other.value);
  }

  @Override
  public int compareTo(Ev100 other) {
    return Double.compare(value, other.value);
  }

  @Override
  public String toString() {
    return "EV100 " + Bounds.rounded(value, 2);
  }
}
