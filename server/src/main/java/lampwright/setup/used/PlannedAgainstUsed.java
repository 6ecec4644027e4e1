package lampwright.setup.used;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lampwright.engine.unit.Stops;
import lampwright.setup.Light;
import lampwright.setup.SetupDocument;
import lampwright.setup.ShootingExposure;
import lampwright.setup.figures.Figures;
import lampwright.setup.figures.FiguresComputation;

/**
 * A plan beside what was really used of it.
 *
 * @param planned what the camera was to be set to
 * @param used what it was set to
 * @param lights that both have, in the order in which they are built
 */
public record PlannedAgainstUsed(
    ShootingExposure planned, ShootingExposure used, List<ComparedLight> lights) {

  /** Copies the lights. */
  public PlannedAgainstUsed {
    lights = List.copyOf(lights);
  }

  /** Compares by the figures of both; deterministic. */
  public static PlannedAgainstUsed of(SetupDocument planned, SetupDocument used) {
    Figures were = FiguresComputation.of(planned);
    Figures are = FiguresComputation.of(used);
    List<ComparedLight> lights = new ArrayList<>();
    for (Light light : planned.lightsInBuildOrder()) {
      Optional<Light> same =
          used.lights().stream().filter(other -> other.id().equals(light.id())).findFirst();
      if (same.isPresent()) {
        lights.add(
            new ComparedLight(were.get(light.id()), are.get(light.id()), used.exposure().iso()));
      }
    }
    return new PlannedAgainstUsed(planned.exposure(), used.exposure(), lights);
  }

  /** What the other aperture does to the picture; plus is brighter, as with all of these. */
  public Stops apertureDifference() {
    return planned.fNumber().stopsAbove(used.fNumber());
  }

  /** What the other time does to all that shines longer than a flash. */
  public Stops timeDifference() {
    return used.time().stopsOver(planned.time());
  }

  /** What the other speed does to the picture. */
  public Stops isoDifference() {
    return used.iso().stopsOver(planned.iso());
  }

  /** What other grey filters do to the picture. */
  public Stops neutralDensityDifference() {
    return planned.neutralDensity().minus(used.neutralDensity());
  }

  /** What all of it does to flash: a flash has gone long before the shutter closes. */
  public Stops flashDifference() {
    return apertureDifference().plus(isoDifference()).plus(neutralDensityDifference());
  }

  /** What all of it does to the ambient. */
  public Stops ambientDifference() {
    return flashDifference().plus(timeDifference());
  }
}
