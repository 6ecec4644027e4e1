package lampwright.setup.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lampwright.engine.Known;
import lampwright.engine.light.Point;
import lampwright.engine.light.UnitVector;
import lampwright.engine.unit.LuxSeconds;
import lampwright.setup.Light;
import lampwright.setup.LightId;
import lampwright.setup.SetupDocument;
import lampwright.setup.Target;

/**
 * A flat meter that is held wherever one likes in a setup, and what each light gives it in the
 * picture, less what the shutter takes. As everywhere in the figures a light's reading sets its
 * strength, the model carries it from there, and nothing throws a shadow.
 */
public final class FlatMeter {

  private final SetupDocument setup;
  private final List<ShiningLight> lights;

  private FlatMeter(SetupDocument setup, List<ShiningLight> lights) {
    this.setup = setup;
    this.lights = lights;
  }

  /** A meter in a setup, whose figures these are. */
  public static FlatMeter of(SetupDocument setup, Figures figures) {
    LightComputation computation = new LightComputation(setup);
    return new FlatMeter(
        setup,
        figures.lights().stream()
            .map(light -> ShiningLight.of(light, computation.placed(light.light())))
            .filter(ShiningLight::isKnown)
            .toList());
  }

  /**
   * What it gets of each light while it is held at a light's target as that light alone is metered,
   * in the document's order; lights whose strength is not known are left out.
   */
  public List<SpillFigures.Reach> heldFor(Light own) {
    Point at = own.target().at();
    UnitVector normal =
        switch (own.target().held()) {
          case TOWARD_LIGHT -> UnitVector.between(at, own.place());
          case TOWARD_CAMERA -> LightComputation.towardCamera(setup, at);
          case ON_SURFACE -> LightComputation.surfaceNormal(own.target());
        };
    boolean turnedToIt = own.target().held() == Target.Held.TOWARD_LIGHT;
    return reaches(at, normal, turnedToIt ? Optional.of(own.id()) : Optional.empty());
  }

  /** The same while it is held toward the camera at any point. */
  public List<SpillFigures.Reach> towardCamera(Point at) {
    return reaches(at, LightComputation.towardCamera(setup, at), Optional.empty());
  }

  /** The light that the meter is turned to counts as its reading says it. */
  private List<SpillFigures.Reach> reaches(
      Point at, UnitVector normal, Optional<LightId> turnedTo) {
    List<SpillFigures.Reach> reaches = new ArrayList<>(lights.size());
    for (ShiningLight light : lights) {
      LightFigures figures = light.figures();
      LightId id = figures.light().id();
      boolean isOwn = turnedTo.filter(id::equals).isPresent();
      LuxSeconds modelled = new LuxSeconds(light.flat(at, normal));
      reaches.add(
          new SpillFigures.Reach(
              id,
              isOwn,
              isOwn ? figures.inPicture().orElse(modelled) : modelled,
              isOwn ? figures.level().map(Level::known).orElse(Known.COMPUTED) : Known.COMPUTED));
    }
    return reaches;
  }
}
