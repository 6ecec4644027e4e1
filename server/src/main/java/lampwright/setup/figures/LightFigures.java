package lampwright.setup.figures;

import java.util.List;
import java.util.Optional;
import lampwright.engine.light.Direction;
import lampwright.engine.light.EmittingFace;
import lampwright.engine.light.LightAtTarget;
import lampwright.engine.light.Point;
import lampwright.engine.light.Receptor;
import lampwright.engine.light.UnitVector;
import lampwright.engine.unit.Degrees;
import lampwright.engine.unit.LuxSeconds;
import lampwright.engine.unit.Metres;
import lampwright.engine.unit.Stops;
import lampwright.engine.unit.WattSeconds;
import lampwright.setup.Light;

/**
 * The figures of one light.
 *
 * @param distance from its face to its target
 * @param direction of the light as the target sees it, from the direction to the camera
 * @param pattern the trade's name for that direction against the subject's face, where there is one
 * @param angularSize how large its face looks from the target: the softness; 0 for a point
 * @param atTarget the light as the engine sees it
 * @param level what counts: the reading where there is one, else what was computed; absent where
 *     neither is known, or where the meter as it is held gets nothing from this light
 * @param computedMinusMetered where both are known
 * @param fromKey in stops from the first key light
 * @param shutter what the shutter takes from it; absent without a body
 * @param energy for one picture, all heads and pops; absent where the power is not known
 * @param needs what the document would have to say for the absent figures, as JSON Pointers
 */
public record LightFigures(
    Light light,
    Metres distance,
    Direction direction,
    Optional<String> pattern,
    Degrees angularSize,
    LightAtTarget atTarget,
    Optional<Level> level,
    Optional<Stops> computedMinusMetered,
    Optional<Stops> fromKey,
    Optional<ShutterEffect> shutter,
    Optional<WattSeconds> energy,
    List<String> needs) {

  /** A person's width where none is known: a judgement. */
  public static final Metres USUAL_WIDTH = new Metres(0.5);

  /** How far behind an edge a penumbra is told: from a nose to a cheek and back, a judgement. */
  public static final Metres USUAL_GAP = new Metres(0.1);

  /** What of its level reaches the sensor's whole frame: the level less the shutter's part. */
  public Optional<LuxSeconds> inPicture() {
    return level.map(
        l -> l.exposure().minus(shutter.map(ShutterEffect::wholeFrameOrNone).orElse(Stops.ZERO)));
  }

  /**
   * How wide the edge of a shadow is that falls so far behind what throws it; see {@link
   * EmittingFace#penumbra}.
   *
   * @param gap from the edge at the target to the surface behind it
   */
  public Metres penumbra(Metres gap) {
    return EmittingFace.penumbra(angularSize, gap);
  }

  /**
   * How much less light the far side of a subject gets than the near side, each pointed at the
   * light, over a width that lies level across the target; absent where the light is straight above
   * or below, nearer than the width, or does not get there.
   */
  public Optional<Stops> fallOffAcross(Metres width) {
    Point at = atTarget.at();
    Point from = atTarget.pose().place();
    double dx = from.x() - at.x();
    double dy = from.y() - at.y();
    double level = Math.sqrt(dx * dx + dy * dy);
    if (level < width.value()) {
      return Optional.empty();
    }
    UnitVector toLight = UnitVector.of(dx, dy, 0);
    LightAtTarget pointed = atTarget.withReceptor(new Receptor.TowardSource());
    double near = pointed.withPoint(at.moved(toLight, width.value() / 2)).geometry();
    double far = pointed.withPoint(at.moved(toLight, -width.value() / 2)).geometry();
    return near > 0 && far > 0 ? Optional.of(Stops.ofRatio(near / far)) : Optional.empty();
  }

  LightFigures withFromKey(Optional<Stops> stops) {
    return new LightFigures(
        light,
        distance,
        direction,
        pattern,
        angularSize,
        atTarget,
        level,
        computedMinusMetered,
        stops,
        shutter,
        energy,
        needs);
  }
}
