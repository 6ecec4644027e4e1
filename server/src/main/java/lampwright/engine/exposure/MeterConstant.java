package lampwright.engine.exposure;

import lampwright.engine.unit.Bounds;
import lampwright.engine.unit.Metres;
import lampwright.engine.unit.Stops;

/**
 * The calibration constant C of an incident meter: {@code N^2 = H S / C}. ISO 2720:1974 allows 240
 * to 400 for a flat receptor and 320 to 540 for a dome (source iso-2720, quoted). Keep it with each
 * reading: the same light reads 0.40 stop less at 330 than at 250.
 *
 * @param luxSeconds C in lux seconds, above 0
 */
public record MeterConstant(double luxSeconds) {

  /** The usual constant of a flat (cosine) receptor, and of every computation here unless said. */
  public static final MeterConstant FLAT = new MeterConstant(250);

  /** A usual constant of a dome (hemispherical) receptor. */
  public static final MeterConstant DOME = new MeterConstant(330);

  /** Checks the bound. */
  public MeterConstant {
    Bounds.requirePositive("Meter constant C", luxSeconds, "lx·s");
  }

  /** Returns a constant of so many lux seconds. */
  public static MeterConstant of(double luxSeconds) {
    return new MeterConstant(luxSeconds);
  }

  /**
   * Returns the constant behind {@code k} of {@code GN_ft^2 = k BCPS S}. An older formula with 0.05
   * means 215.3 lx·s, remembered and not confirmed.
   */
  public static MeterConstant ofFeetConstant(double k) {
    Bounds.requirePositive("Feet constant k", k, "");
    return new MeterConstant(1 / (k * Metres.PER_FOOT * Metres.PER_FOOT));
  }

  /** Returns {@code k} of {@code GN_ft^2 = k BCPS S}: 0.04306 for C 250. */
  public double toFeetConstant() {
    return 1 / (luxSeconds * Metres.PER_FOOT * Metres.PER_FOOT);
  }

  /** Returns by how many stops less the same light reads with this constant than with the other. */
  public Stops stopsOver(MeterConstant other) {
    return Stops.ofRatio(luxSeconds / other.luxSeconds);
  }

  @Override
  public String toString() {
    return "C " + Bounds.rounded(luxSeconds, 1) + " lx·s";
  }
}
