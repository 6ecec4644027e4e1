package lampwright.setup.signature;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import lampwright.engine.unit.LuxSeconds;
import lampwright.setup.LightId;
import lampwright.setup.Role;
import lampwright.setup.Target;
import lampwright.setup.figures.Figures;
import lampwright.setup.figures.Level;
import lampwright.setup.figures.LightFigures;
import lampwright.setup.figures.TargetFigures;

/**
 * The light that counts as the key: the first that is called so; else the one that gives most at
 * the first target that is no surface, toward the camera, and where all come from behind, the one
 * whose own reading is highest.
 *
 * @param byRole whether the setup calls it the key
 */
record ChosenKey(LightFigures light, boolean byRole) {

  private static final Comparator<LightFigures> BY_LEVEL =
      Comparator.comparingDouble(
          light -> light.level().map(Level::exposure).map(LuxSeconds::value).orElse(0.0));

  /** Empty where no light is called so and of none at a subject the strength is known. */
  static Optional<ChosenKey> find(Figures figures) {
    return figures.lights().stream()
        .filter(light -> light.light().role() == Role.KEY)
        .findFirst()
        .map(light -> new ChosenKey(light, true))
        .or(() -> strongest(figures).map(light -> new ChosenKey(light, false)));
  }

  private static Optional<LightFigures> strongest(Figures figures) {
    return figures.targets().stream()
        .filter(target -> !isSurface(target.target()))
        .findFirst()
        .flatMap(ChosenKey::giver)
        .map(figures::get)
        .or(
            () ->
                figures.lights().stream()
                    .filter(light -> !isSurface(light.light().target()))
                    .filter(light -> light.level().isPresent())
                    .max(BY_LEVEL));
  }

  private static Optional<LightId> giver(TargetFigures target) {
    return target.shares().stream()
        .filter(share -> share.exposure().value() > 0)
        .max(Comparator.comparingDouble(share -> share.exposure().value()))
        .map(TargetFigures.Share::light);
  }

  static boolean isSurface(Target target) {
    return target.held() == Target.Held.ON_SURFACE;
  }

  /** What the document would have to say for a key: a role, or how strong the lights are. */
  static List<String> needs(Figures figures) {
    List<String> strengths =
        figures.lights().stream().flatMap(light -> light.needs().stream()).toList();
    return strengths.isEmpty() ? List.of("/lights/0/role") : strengths;
  }
}
