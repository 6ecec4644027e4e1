package lampwright.setup;

import static lampwright.document.Field.list;
import static lampwright.document.Field.optional;
import static lampwright.document.Field.required;

import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import lampwright.document.Field;
import lampwright.document.Form;
import lampwright.document.Forms;
import lampwright.document.ObjectForm;
import lampwright.document.Pointer;
import lampwright.document.Problems;

/**
 * One worked lighting setup, as one immutable state.
 *
 * <p>Axes are in metres as the camera sees it: x to the right, y away from the camera, z up; the
 * origin is the hit mark on the ground.
 *
 * @param intent what the picture should feel like, and why it is lit so
 */
public record SetupDocument(
    String title,
    Optional<String> intent,
    List<String> moods,
    Optional<String> genre,
    Optional<Occasion> occasion,
    ShootingExposure exposure,
    Optional<Camera> camera,
    List<Subject> subjects,
    List<Surface> surfaces,
    List<Light> lights,
    Optional<Ambient> ambient,
    Optional<Plan> plan,
    List<BuildStep> buildOrder,
    List<String> cautions,
    List<Outcome> outcome,
    List<String> retouchNotes) {

  private static final int LONGEST_TITLE = 160;

  private static final Field<SetupDocument, String> TITLE =
      required("title", titleForm(), SetupDocument::title, "What the setup is called.");
  private static final Field<SetupDocument, Optional<String>> INTENT =
      optional(
          "intent",
          SetupForms.paragraph(),
          SetupDocument::intent,
          "What the picture should feel like, and why it is lit so.");
  private static final Field<SetupDocument, List<String>> MOODS =
      list("moods", Forms.text(60), 20, SetupDocument::moods, "Mood words.");
  private static final Field<SetupDocument, Optional<String>> GENRE =
      optional("genre", Forms.text(60), SetupDocument::genre, "Portrait, dance, still life.");
  private static final Field<SetupDocument, Optional<Occasion>> OCCASION =
      optional("occasion", Occasion.FORM, SetupDocument::occasion, "When and where.");
  private static final Field<SetupDocument, ShootingExposure> EXPOSURE =
      required(
          "exposure", ShootingExposure.FORM, SetupDocument::exposure, "What it was shot with.");
  private static final Field<SetupDocument, Optional<Camera>> CAMERA =
      optional("camera", Camera.FORM, SetupDocument::camera, "The camera.");
  private static final Field<SetupDocument, List<Subject>> SUBJECTS =
      list("subjects", Subject.FORM, 30, SetupDocument::subjects, "Whom or what it is of.");
  private static final Field<SetupDocument, List<Surface>> SURFACES =
      list("surfaces", Surface.FORM, 30, SetupDocument::surfaces, "What is worth lighting.");
  private static final Field<SetupDocument, List<Light>> LIGHTS =
      required(
          "lights",
          Forms.list(Light.FORM, 1, SetupForms.MOST_LIGHTS),
          SetupDocument::lights,
          "The lights; at least one.");
  private static final Field<SetupDocument, Optional<Ambient>> AMBIENT =
      optional(
          "ambient", Ambient.FORM, SetupDocument::ambient, "The light that is not the heads'.");
  private static final Field<SetupDocument, Optional<Plan>> PLAN =
      optional("plan", Plan.FORM, SetupDocument::plan, "How fast and how many frames.");
  private static final Field<SetupDocument, List<BuildStep>> BUILD_ORDER =
      list(
          "build_order",
          BuildStep.FORM,
          2 * SetupForms.MOST_LIGHTS,
          SetupDocument::buildOrder,
          "The order in which the lights are set and metered.");
  private static final Field<SetupDocument, List<String>> CAUTIONS =
      list("cautions", SetupForms.paragraph(), 20, SetupDocument::cautions, "What can hurt.");
  private static final Field<SetupDocument, List<Outcome>> OUTCOME =
      list("outcome", Outcome.FORM, 40, SetupDocument::outcome, "How it came out.");
  private static final Field<SetupDocument, List<String>> RETOUCH =
      list(
          "retouch_notes",
          SetupForms.paragraph(),
          40,
          SetupDocument::retouchNotes,
          "What was meant and what was put right afterwards.");

  /** What a title may be. */
  public static Form<String> titleForm() {
    return Forms.text(LONGEST_TITLE);
  }

  /** The setup as a document. */
  public static final ObjectForm<SetupDocument> FORM =
      ObjectForm.<SetupDocument>of(
              "setup",
              "One worked lighting setup. Each light's id is its own, and outcome and"
                  + " build_order name only lights that are there, build_order each once.",
              values ->
                  new SetupDocument(
                      values.get(TITLE),
                      values.get(INTENT),
                      values.get(MOODS),
                      values.get(GENRE),
                      values.get(OCCASION),
                      values.get(EXPOSURE),
                      values.get(CAMERA),
                      values.get(SUBJECTS),
                      values.get(SURFACES),
                      values.get(LIGHTS),
                      values.get(AMBIENT),
                      values.get(PLAN),
                      values.get(BUILD_ORDER),
                      values.get(CAUTIONS),
                      values.get(OUTCOME),
                      values.get(RETOUCH)),
              List.of(
                  TITLE,
                  INTENT,
                  MOODS,
                  GENRE,
                  OCCASION,
                  EXPOSURE,
                  CAMERA,
                  SUBJECTS,
                  SURFACES,
                  LIGHTS,
                  AMBIENT,
                  PLAN,
                  BUILD_ORDER,
                  CAUTIONS,
                  OUTCOME,
                  RETOUCH))
          .checked(SetupDocument::check);

  private static void check(SetupDocument setup, Pointer at, Problems problems) {
    Set<LightId> ids = new HashSet<>();
    for (int i = 0; i < setup.lights.size(); i++) {
      LightId id = setup.lights.get(i).id();
      if (!ids.add(id)) {
        problems.add(
            at.field("lights").item(i).field("id"),
            "Id (\"" + id + "\") is another light's already. Maybe \"" + id + "-2\"?");
      }
    }
    Set<LightId> built = new HashSet<>();
    for (int i = 0; i < setup.buildOrder.size(); i++) {
      Pointer step = at.field("build_order").item(i).field("light");
      setup.buildOrder.get(i).light().ifPresent(id -> checkStep(id, ids, built, step, problems));
    }
    for (int i = 0; i < setup.outcome.size(); i++) {
      Pointer light = at.field("outcome").item(i).field("light");
      setup
          .outcome
          .get(i)
          .light()
          .filter(id -> !ids.contains(id))
          .ifPresent(
              id ->
                  problems.add(light, "Light (\"" + id + "\") is not one of this setup's lights."));
    }
  }

  private static void checkStep(
      LightId id, Set<LightId> ids, Set<LightId> built, Pointer step, Problems problems) {
    if (!ids.contains(id)) {
      problems.add(step, "Light (\"" + id + "\") is not one of this setup's lights.");
    } else if (!built.add(id)) {
      problems.add(step, "Light (\"" + id + "\") is built already in an earlier step.");
    }
  }

  /**
   * The lights in build order; those that it does not name come last, by their roles: so a setup
   * without one has the order that is proposed.
   */
  public List<Light> lightsInBuildOrder() {
    List<LightId> order = buildOrder.stream().flatMap(step -> step.light().stream()).toList();
    return lights.stream()
        .sorted(
            Comparator.<Light>comparingInt(
                    light -> order.contains(light.id()) ? order.indexOf(light.id()) : order.size())
                .thenComparing(Light::role))
        .toList();
  }

  /** The same setup by another title. */
  public SetupDocument withTitle(String other) {
    return new SetupDocument(
        other,
        intent,
        moods,
        genre,
        occasion,
        exposure,
        camera,
        subjects,
        surfaces,
        lights,
        ambient,
        plan,
        buildOrder,
        cautions,
        outcome,
        retouchNotes);
  }

  /** The same setup on another occasion. */
  public SetupDocument withOccasion(Optional<Occasion> other) {
    return new SetupDocument(
        title,
        intent,
        moods,
        genre,
        other,
        exposure,
        camera,
        subjects,
        surfaces,
        lights,
        ambient,
        plan,
        buildOrder,
        cautions,
        outcome,
        retouchNotes);
  }

  /** Each light's number, from 1: its place in the build order, which plans and tables show. */
  public Map<LightId, Integer> numbersInBuildOrder() {
    Map<LightId, Integer> numbers = new HashMap<>();
    for (Light light : lightsInBuildOrder()) {
      numbers.put(light.id(), numbers.size() + 1);
    }
    return Map.copyOf(numbers);
  }
}
