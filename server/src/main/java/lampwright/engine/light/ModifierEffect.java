package lampwright.engine.light;

import lampwright.engine.beam.Even;
import lampwright.engine.beam.Lobe;
import lampwright.engine.beam.Spread;
import lampwright.engine.exposure.FNumber;
import lampwright.engine.unit.Bounds;
import lampwright.engine.unit.Metres;
import lampwright.engine.unit.Stops;

/**
 * What a modifier makes of a head's light on its axis.
 *
 * @param face the shape that then shines
 * @param spread how the face spreads its light over the directions
 * @param loss stops below the standard reflector on the same head at the reference distance, plus
 *     for less light; a narrow reflector has a negative loss
 * @param lossReferenceDistance where that loss was measured, above 0. A loss quoted at 1 m is not
 *     the loss at 3 m for a big box, so the distance belongs to it
 */
public record ModifierEffect(
    EmittingFace face, Spread spread, Stops loss, Metres lossReferenceDistance) {

  /** The distance at which losses are usually quoted (source trade-practice). */
  public static final Metres USUAL_REFERENCE = new Metres(2);

  /** Checks the distance. */
  public ModifierEffect {
    Bounds.requirePositive("Reference distance", lossReferenceDistance.value(), "m");
  }

  /**
   * Returns a modifier whose spread is the usual one of its face: a point is a standard reflector,
   * anything larger an evenly bright face.
   */
  public static ModifierEffect of(EmittingFace face, Stops loss, Metres lossReferenceDistance) {
    Spread usual =
        face instanceof EmittingFace.PointSource
            ? Lobe.ofBeam(Lobe.STANDARD_REFLECTOR)
            : new Even();
    return new ModifierEffect(face, usual, loss, lossReferenceDistance);
  }

  /** Returns the standard reflector itself: a small source without loss. */
  public static ModifierEffect standardReflector() {
    return of(new EmittingFace.PointSource(), Stops.ZERO, USUAL_REFERENCE);
  }

  /** Returns a modifier whose light was metered with the head, so that no loss is to be added. */
  public static ModifierEffect ofFace(EmittingFace face) {
    return of(face, Stops.ZERO, USUAL_REFERENCE);
  }

  /** Returns the loss of a modifier from two readings at one place, {@code 2 log2(Nref/N)}. */
  public static Stops lossFromReadings(FNumber standardReflector, FNumber withModifier) {
    return standardReflector.stopsAbove(withModifier);
  }

  /**
   * Returns the geometry factor straight before the face in 1/m2: the exposure there, facing the
   * face, is the far-away intensity on the axis times it (see {@link PlacedSource}).
   *
   * @param distance from the face, above 0
   */
  public double geometryOnAxis(Metres distance) {
    return PlacedSource.geometryOnAxis(face, spread, distance);
  }

  /** Returns the modifier's source, standing somewhere. */
  public PlacedSource placed(Pose pose) {
    return new PlacedSource(face, spread, pose);
  }

  /** Returns a copy with more loss: a grid, a second diffuser. */
  public ModifierEffect withMoreLoss(Stops more) {
    return new ModifierEffect(face, spread, loss.plus(more), lossReferenceDistance);
  }
}
