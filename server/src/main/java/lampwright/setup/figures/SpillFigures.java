package lampwright.setup.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lampwright.engine.Known;
import lampwright.engine.Source;
import lampwright.engine.Working;
import lampwright.engine.exposure.ExposureSettings;
import lampwright.engine.exposure.MeterConstant;
import lampwright.engine.light.LightSum;
import lampwright.engine.unit.LuxSeconds;
import lampwright.engine.unit.Stops;
import lampwright.setup.LightId;

/**
 * Everything that reaches one target: also the light of heads that are for another. A light's
 * reading sets its strength; how it falls off and spreads from there is the model's word.
 *
 * @param reaches what each light gives here, in the document's order; lights whose strength is not
 *     known are left out
 * @param sums of all of it and the ambient
 */
public record SpillFigures(List<Reach> reaches, Sums sums) {

  /**
   * One light at the target.
   *
   * @param forIt whether it is meant for this target
   * @param exposure toward the camera, or on the surface; 0 for a light from behind
   */
  public record Reach(LightId light, boolean forIt, LuxSeconds exposure, Known known) {}

  /**
   * The same light as differently held meters take it.
   *
   * @param towardCamera flat, toward the camera; on a surface along it
   * @param towardKey flat, toward the first key light; absent without one, and on a surface
   * @param dome a dome toward the camera; absent on a surface
   */
  public record Sums(
      LightSum towardCamera,
      Optional<LightSum> towardKey,
      Optional<LightSum> dome,
      ExposureSettings settings) {

    /** Flat toward the camera, in stops from the shooting exposure; absent where it is dark. */
    public Optional<Stops> towardCameraOffset() {
      return offset(towardCamera, MeterConstant.FLAT);
    }

    /** Flat toward the key. */
    public Optional<Stops> towardKeyOffset() {
      return towardKey.flatMap(sum -> offset(sum, MeterConstant.FLAT));
    }

    /** By a dome, which is read with a constant of its own, {@link MeterConstant#DOME}. */
    public Optional<Stops> domeOffset() {
      return dome.flatMap(sum -> offset(sum, MeterConstant.DOME));
    }

    private Optional<Stops> offset(LightSum sum, MeterConstant constant) {
      return sum.total().value() > 0
          ? Optional.of(sum.offset(settings, constant))
          : Optional.empty();
    }
  }

  public SpillFigures {
    reaches = List.copyOf(reaches);
  }

  /** A light in stops from the shooting exposure; absent where it does not get here. */
  public Optional<Stops> fromShooting(Reach reach) {
    return reach.exposure().value() > 0
        ? Optional.of(sums.settings().offsetOf(reach.exposure(), MeterConstant.FLAT))
        : Optional.empty();
  }

  /** A light's share of all that reaches the target, ambient included, 0 to 1. */
  public double share(Reach reach) {
    double total = sums.towardCamera().total().value();
    return total == 0 ? 0 : reach.exposure().value() / total;
  }

  /** The steps to the level of everything that reaches the target; absent where it is dark. */
  public Optional<Working> working() {
    return sums.towardCameraOffset()
        .map(
            offset -> {
              List<Working> parts = new ArrayList<>();
              for (Reach reach : reaches) {
                parts.add(
                    Working.given(
                        reach.light().text(), reach.exposure().value(), "lx·s", reach.known()));
              }
              parts.add(
                  Working.given(
                      "ambient", sums.towardCamera().ambient().value(), "lx·s", Known.COMPUTED));
              return Working.of(
                  "level of everything that reaches the target",
                  offset.value(),
                  "stops",
                  "log2(H / H_shooting)",
                  Source.DERIVED,
                  LightSum.working("all the light there", parts),
                  sums.settings().requiredExposureWorking(MeterConstant.FLAT));
            });
  }
}
