package lampwright.setup;

import static lampwright.document.Field.optional;

import java.util.List;
import java.util.Optional;
import lampwright.document.Field;
import lampwright.document.ObjectForm;

/**
 * One step of the build order.
 *
 * @param light the light that is set and metered in this step; absent for a step without a light,
 *     such as reading the ambient
 */
public record BuildStep(Optional<LightId> light, Optional<String> what) {

  private static final Field<BuildStep, Optional<LightId>> LIGHT =
      optional("light", LightId.FORM, BuildStep::light, "The light that is set in this step.");
  private static final Field<BuildStep, Optional<String>> WHAT =
      optional("what", SetupForms.paragraph(), BuildStep::what, "What is done, and why now.");

  static final ObjectForm<BuildStep> FORM =
      ObjectForm.<BuildStep>of(
              "build_step",
              "One step of the build order: a light, words, or both.",
              values -> new BuildStep(values.get(LIGHT), values.get(WHAT)),
              List.of(LIGHT, WHAT))
          .checked(
              (step, at, problems) -> {
                if (step.light().isEmpty() && step.what().isEmpty()) {
                  problems.add(at, "A build step must name a light or say what is done.");
                }
              });
}
