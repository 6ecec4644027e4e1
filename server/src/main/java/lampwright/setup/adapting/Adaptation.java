package lampwright.setup.adapting;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lampwright.engine.exposure.ExposureSettings;
import lampwright.engine.unit.Stops;
import lampwright.gear.Body;
import lampwright.gear.Lens;
import lampwright.language.Said;
import lampwright.setup.SetupDocument;
import lampwright.setup.figures.Figures;

/**
 * A setup recomputed for a kit.
 *
 * @param document a complete setup that could be saved
 * @param figures of that document
 * @param settings of the camera
 * @param neutralDensity the filter that the settings use, if any
 * @param ambientOffset of the adaptation, where the ambient is known
 * @param ambientChange of that offset against the setup's
 * @param depthChange aperture against the one that would keep the setup's depth of field, in stops
 *     of aperture; plus is deeper
 * @param framingChange of the picture's size on the subject against the setup's, as a share: 0.04
 *     shows 4 % more; absent where a focal length is not known
 * @param lights in the setup's order
 * @param losses what is lost, in words
 * @param cost in the units of {@link Weights}; the least is the best
 * @param costs the same by matter, those that cost something
 * @param carried what heads, modifiers, gels, stands and camera weigh
 * @param betterIn what this one is noticeably better in than the best; empty for the best
 * @param changes every dial, head and place to touch against the setup as it stood, in words
 * @param remedies what would help where a light falls short, smallest change first
 * @param leftOut what was not taken into account, in words
 */
public record Adaptation(
    SetupDocument document,
    Figures figures,
    ExposureSettings settings,
    Optional<Body> body,
    Optional<Lens> lens,
    Optional<String> neutralDensity,
    Optional<Stops> ambientOffset,
    Optional<Stops> ambientChange,
    Stops depthChange,
    Optional<Double> framingChange,
    List<AdaptedLight> lights,
    List<Said> losses,
    double cost,
    Map<Matter, Double> costs,
    Carried carried,
    List<Matter> betterIn,
    List<Said> changes,
    List<Remedy> remedies,
    List<Said> leftOut) {

  /**
   * What must be carried.
   *
   * @param kg of all pieces whose weight is known
   * @param withoutWeight the pieces whose weight is not known
   */
  public record Carried(double kg, List<String> withoutWeight) {
    public Carried {
      withoutWeight = List.copyOf(withoutWeight);
    }
  }

  public Adaptation {
    lights = List.copyOf(lights);
    losses = List.copyOf(losses);
    costs = Collections.unmodifiableMap(new EnumMap<>(costs));
    betterIn = List.copyOf(betterIn);
    changes = List.copyOf(changes);
    remedies = List.copyOf(remedies);
    leftOut = List.copyOf(leftOut);
  }
}
