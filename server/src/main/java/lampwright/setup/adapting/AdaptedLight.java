package lampwright.setup.adapting;

import java.util.List;
import java.util.Optional;
import lampwright.engine.power.PowerSetting;
import lampwright.engine.unit.Degrees;
import lampwright.engine.unit.Metres;
import lampwright.engine.unit.Seconds;
import lampwright.engine.unit.Stops;
import lampwright.engine.unit.WattSeconds;
import lampwright.gear.Gel;
import lampwright.gear.Head;
import lampwright.gear.Modifier;
import lampwright.gear.Stand;
import lampwright.language.Said;
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
   * @param heads how many of the head fire together
   * @param pops how often they fire for one picture
   * @param gels in front of each
   * @param stand of the kit that carries it; absent where the kit names none, or it needs none
   * @param distance from its face to its target
   * @param movedM by how many metres it stands farther from its target; minus is nearer
   * @param level to expect from the meter for this light alone
   * @param deviation of its offset in the picture from the setup's; minus is darker
   * @param angularSize how large its face looks from the target
   * @param softer by how many doublings that is larger than in the setup
   * @param edgeLoss what the shutter takes from the edge of the frame that is exposed first
   * @param energy for one picture, all heads and pops
   * @param recycle until it is ready for the next picture
   * @param flashesPerCharge pictures to a charge
   * @param missing what of the setup's light the kit has nothing for, in words
   */
  public record Made(
      Head head,
      Modifier modifier,
      int heads,
      int pops,
      List<Gel> gels,
      Optional<Stand> stand,
      Metres distance,
      double movedM,
      PowerSetting power,
      Level level,
      Stops deviation,
      Degrees angularSize,
      double softer,
      Stops edgeLoss,
      WattSeconds energy,
      Optional<Seconds> recycle,
      Optional<Double> flashesPerCharge,
      List<Said> missing) {

    public Made {
      gels = List.copyOf(gels);
      missing = List.copyOf(missing);
    }

    /** The power as the head's dial shows it. */
    public String powerShown() {
      return head.scale().show(power.set(), head.energy());
    }
  }
}
