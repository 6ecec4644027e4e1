package lampwright.engine.light;

import java.util.ArrayList;
import java.util.List;
import lampwright.engine.Source;
import lampwright.engine.Working;
import lampwright.engine.exposure.ExposureSettings;
import lampwright.engine.exposure.FNumber;
import lampwright.engine.exposure.MeterConstant;
import lampwright.engine.unit.Bounds;
import lampwright.engine.unit.LuxSeconds;
import lampwright.engine.unit.Stops;

/**
 * Everything that reaches one receiver: the heads and the ambient. Light adds as exposure, never as
 * f-numbers or stops. Holds for a sensor that does not clip, one point and one orientation.
 *
 * @param flash the sum of the heads
 * @param ambient the ambient light while the shutter is open
 */
public record LightSum(LuxSeconds flash, LuxSeconds ambient) {

  /** Returns the sum of some heads, each already times its receiver's cosine, and the ambient. */
  public static LightSum of(List<LuxSeconds> heads, LuxSeconds ambient) {
    return new LightSum(LuxSeconds.sum(heads), ambient);
  }

  /** Returns flash and ambient together. */
  public LuxSeconds total() {
    return flash.plus(ambient);
  }

  /**
   * Returns by how many stops the flash is above the ambient; both above 0.
   *
   * @see lampwright.engine.exposure.Ambient for what changes it
   */
  public Stops flashOverAmbient() {
    return flash.stopsOver(ambient);
  }

  /**
   * Returns the ambient's share of the light on a subject, 0 to 1: how strong the ghost of a moving
   * one is. 0 where there is no light at all.
   */
  public double ambientShare() {
    double total = total().value();
    return total == 0 ? 0 : ambient.value() / total;
  }

  /** Returns what a meter at the camera's speed reads, all together. */
  public FNumber reading(ExposureSettings settings, MeterConstant constant) {
    return FNumber.ofExposure(total(), settings.iso(), constant);
  }

  /** Returns by how many stops all together is above what the settings ask for. */
  public Stops offset(ExposureSettings settings, MeterConstant constant) {
    return settings.offsetOf(total(), constant);
  }

  /**
   * Returns the steps to a sum.
   *
   * @param parts the exposures that are added, in lux seconds
   */
  public static Working working(String quantity, List<Working> parts) {
    double sum = 0;
    for (Working part : parts) {
      if (!part.unit().equals("lx·s")) {
        throw new IllegalArgumentException(
            Bounds.subject(part.quantity(), part.value(), part.unit())
                + " must be in lx·s to be added.");
      }
      sum += part.value();
    }
    return new Working(quantity, sum, "lx·s", "Σ H", Source.DERIVED, new ArrayList<>(parts));
  }
}
