package lampwright.setup.adapting;

import java.util.List;
import java.util.Optional;
import lampwright.engine.power.PowerSetting;
import lampwright.engine.unit.Degrees;
import lampwright.engine.unit.Seconds;
import lampwright.engine.unit.Stops;
import lampwright.engine.unit.WattSeconds;
import lampwright.gear.Head;
import lampwright.gear.Modifier;
import lampwright.setup.figures.Level;
import lampwright.setup.figures.LightFigures;

/**
 * One light of an adaptation.
 *
 * @param original what the setup's own light gives
 * @param made how the kit makes it; absent for a light that is given up
 */
public record AdaptedLight(LightFigures original, Optional<Made> made) {

  /**
   * How the kit makes a light.
   *
   * @param level to expect from the meter for this light alone
   * @param deviation of its offset from the setup's; minus is darker
   * @param angularSize how large its face looks from the target
   * @param missing what of the setup's light the kit has nothing for, in words
   * @param remedies what would help where it falls short, smallest change first, in words
   */
  public record Made(
      Head head,
      Modifier modifier,
      PowerSetting power,
      Level level,
      Stops deviation,
      Degrees angularSize,
      WattSeconds energy,
      Optional<Seconds> recycle,
      Optional<Double> flashesPerCharge,
      List<String> missing,
      List<String> remedies) {

    public Made {
      missing = List.copyOf(missing);
      remedies = List.copyOf(remedies);
    }

    /** The power as the head's dial shows it. */
    public String powerShown() {
      return head.scale().show(power.set(), head.energy());
    }
  }
}
