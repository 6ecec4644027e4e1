package lampwright.engine.exposure;

import lampwright.engine.unit.BaseTwo;
import lampwright.engine.unit.Bounds;
import lampwright.engine.unit.CandelasPerSquareMetre;

/**
 * The calibration constant K of a reflected-light meter: {@code N^2 / t = L S / K}. ISO 2720:1974
 * allows 10.6 to 13.4; 14 is in use as well (source iso-2720, quoted).
 *
 * @param candelaSecondsPerSquareMetre K in cd·s/m², above 0
 */
public record ReflectedConstant(double candelaSecondsPerSquareMetre) {

  /** The usual constant. */
  public static final ReflectedConstant K = new ReflectedConstant(12.5);

  /** Checks the bound. */
  public ReflectedConstant {
    Bounds.requirePositive("Meter constant K", candelaSecondsPerSquareMetre, "cd·s/m²");
  }

  /** Returns the luminance that an EV100 stands for, {@code L = K 2^EV100 / 100}. */
  public CandelasPerSquareMetre luminance(Ev100 level) {
    return new CandelasPerSquareMetre(
        candelaSecondsPerSquareMetre * BaseTwo.power(level.value()) / 100);
  }

  /** Returns the luminance that settings render as a middle tone, {@code L = K N^2 / (t S)}. */
  public CandelasPerSquareMetre luminance(ExposureSettings settings) {
    return luminance(settings.ev100());
  }

  /**
   * Returns the reflectance at which a reflected and an incident reading agree, {@code pi K / C}:
   * 0.157 for 12.5 and 250.
   */
  public double impliedReflectance(MeterConstant incident) {
    return Math.PI * candelaSecondsPerSquareMetre / incident.luxSeconds();
  }
}
