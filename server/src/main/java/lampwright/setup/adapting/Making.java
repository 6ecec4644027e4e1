package lampwright.setup.adapting;

import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import lampwright.engine.light.Point;
import lampwright.engine.match.Uses;
import lampwright.engine.unit.Metres;
import lampwright.gear.Gel;
import lampwright.gear.Head;
import lampwright.gear.Modifier;

/**
 * One way to make a light, whatever the camera is set to: all but the power.
 *
 * @param model index of the head in the kit as it is tonight
 * @param heads how many fire together
 * @param pops how often they fire for one picture
 * @param place where the face is
 * @param distance from there to the target
 * @param moved whether that is another place than the setup's
 * @param atFullStops what it gives at full power, all heads and pops, in stops above 1 lx·s
 * @param dial the powers it can be set to
 * @param costs that do not depend on the power
 * @param uses what it takes of the kit, but for a pack's energy
 * @param onPack the pack that feeds it, with what each power takes of it
 * @param seenBy cameras, by index, that would have it in the picture where it is moved to
 */
record Making(
    int model,
    Head head,
    Modifier modifier,
    List<Gel> gels,
    int heads,
    int pops,
    Point place,
    Metres distance,
    boolean moved,
    double atFullStops,
    Dial dial,
    Costs costs,
    Uses uses,
    Optional<OnPack> onPack,
    BitSet seenBy) {

  /**
   * What a making costs at any power, by matter, weighted.
   *
   * @param shape softness, kind and spread
   * @param colour gels that differ
   * @param carrying heads and modifiers
   * @param handling more heads, more pops, another place, dials to touch but for the power
   */
  record Costs(double shape, double colour, double carrying, double handling) {

    double sum() {
      return shape + colour + carrying + handling;
    }
  }

  /**
   * The pack that feeds it.
   *
   * @param index of the pack
   * @param usesOfStep what each power takes of the kit, the pack's energy included
   * @param costOfStep what each power costs because the pack takes time to recycle
   */
  record OnPack(int index, List<Uses> usesOfStep, List<Double> costOfStep) {

    OnPack {
      usesOfStep = List.copyOf(usesOfStep);
      costOfStep = List.copyOf(costOfStep);
    }
  }

  /** The same on a pack. */
  Making on(OnPack pack, Uses withPack) {
    return new Making(
        model,
        head,
        modifier,
        gels,
        heads,
        pops,
        place,
        distance,
        moved,
        atFullStops,
        dial,
        costs,
        withPack,
        Optional.of(pack),
        seenBy);
  }

  /** What it takes of the kit at a power. */
  Uses uses(int step) {
    return onPack.isPresent() ? onPack.get().usesOfStep().get(step) : uses;
  }
}
