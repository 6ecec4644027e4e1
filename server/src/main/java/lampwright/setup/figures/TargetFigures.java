package lampwright.setup.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lampwright.engine.Known;
import lampwright.engine.Working;
import lampwright.engine.exposure.FNumber;
import lampwright.engine.light.LightSum;
import lampwright.engine.light.LightingRatio;
import lampwright.engine.unit.LuxSeconds;
import lampwright.engine.unit.Stops;
import lampwright.setup.LightId;
import lampwright.setup.Target;

/**
 * All the light at one target together, as it reaches the sensor: less what the shutter takes.
 *
 * @param target as its first light names it
 * @param shares what each light that is for this target adds, in the document's order
 * @param sum flash and ambient, toward the camera, or on the surface where the target is one
 * @param reading what a meter would give for all of it at the shooting ISO
 * @param offset in stops from the shooting exposure
 * @param ratio key and fill together against fill, where the target has both
 * @param flashOverAmbient absent where one of them is missing
 * @param sums the same light as differently held meters take it
 * @param spill everything that reaches the target, also what is for another
 * @param uncertainty one standard deviation, from those of the parts by their shares
 */
public record TargetFigures(
    Target target,
    List<Share> shares,
    LightSum sum,
    FNumber reading,
    Stops offset,
    Optional<LightingRatio> ratio,
    Optional<Stops> flashOverAmbient,
    SpillFigures.Sums sums,
    SpillFigures spill,
    Stops uncertainty) {

  /**
   * What one light adds.
   *
   * @param exposure turned as the sum is; 0 for a light from behind or one that is not known
   */
  public record Share(LightId light, LuxSeconds exposure, Known known) {}

  public TargetFigures {
    shares = List.copyOf(shares);
  }

  /** The lights that are for this target. */
  public List<LightId> lights() {
    return shares.stream().map(Share::light).toList();
  }

  /** The contrast of the lit side against the fill alone, in stops. */
  public Optional<Stops> contrast() {
    return ratio.map(LightingRatio::contrast);
  }

  /** The steps to the sum. */
  public Working working() {
    List<Working> parts = new ArrayList<>();
    for (Share share : shares) {
      if (share.exposure().value() > 0) {
        parts.add(
            Working.given(share.light().text(), share.exposure().value(), "lx·s", share.known()));
      }
    }
    if (sum.ambient().value() > 0) {
      parts.add(Working.given("ambient", sum.ambient().value(), "lx·s", Known.COMPUTED));
    }
    return LightSum.working("all the light " + target.where(), parts);
  }
}
