package lampwright.setup.reacting;

import java.util.Optional;
import lampwright.engine.exposure.FNumber;
import lampwright.engine.exposure.Iso;
import lampwright.engine.exposure.ShutterTime;
import lampwright.engine.unit.Stops;
import lampwright.gear.Head;
import lampwright.setup.LightId;

/** One thing to do with one's hands. */
public sealed interface Turn {

  /** How many things a hand turns for it. */
  default int dials() {
    return 1;
  }

  /** The shutter time at the camera. */
  record Time(ShutterTime from, ShutterTime to) implements Turn {}

  /** The aperture at the camera. */
  record Aperture(FNumber from, FNumber to) implements Turn {}

  /** The speed at the camera. */
  record Speed(Iso from, Iso to) implements Turn {}

  /** The grey filters before the lens, by what they take: 0 is without any. */
  record Filter(Stops from, Stops to) implements Turn {}

  /**
   * The power of a light.
   *
   * @param heads that stand there, each with a dial of its own
   * @param from stops below full power
   * @param to stops below full power, a step of the head's dial
   */
  record Power(LightId light, Head head, int heads, Stops from, Stops to) implements Turn {

    @Override
    public int dials() {
      return heads;
    }
  }

  /**
   * A head is put in a dead one's place and its power set.
   *
   * @param light that lost its head
   * @param head that takes its place, behind the same modifier and gels
   * @param from the light that gives its head up; absent for a spare one
   * @param to stops below full power that it is set to
   */
  record Replacement(LightId light, Head head, Optional<LightId> from, Stops to) implements Turn {

    @Override
    public int dials() {
      return 2;
    }
  }
}
